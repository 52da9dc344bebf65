import type { Calculation, Contaminant } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import type { XrayFinding } from '../assessment.ts'
import { detectability } from '../observer/detectability.ts'
import type { SeenPiece } from '../observer/scene.ts'
import { ASSUMPTION_RANGES, DRAWS } from '../observer/variation.ts'
import type { TrailInput } from './trail.ts'
import { attenuationEntry } from './trail-attenuation.ts'
import { entry, round } from './trail-entry.ts'

/** The trail of one contaminant's sizes. Returns the id a reader starts from. */
export function findingTrail(
  input: TrailInput,
  contaminant: Contaminant,
  object: SeenPiece,
  finding: Omit<XrayFinding, 'calculation'>,
  into: Map<string, Calculation>,
): string {
  const { prefix, scene } = input
  const p = `${prefix}.c${finding.contaminant}`
  const material = materials.get(contaminant.material)!
  const keV = scene.channels.meanEnergyKeV[0] ?? 50
  const mu = attenuationEntry(
    into,
    material.id,
    material.label,
    material.massFractions,
    material.densityGPerCm3,
    keV,
    [material.source],
  )
  const add = (...args: Parameters<typeof entry>) =>
    into.set(`${p}.${args[0]}`, { ...entry(...args), id: `${p}.${args[0]}` })
  add(
    'contrast',
    `contrast of ${material.label} against the food it replaces`,
    'Δμ/μ',
    finding.contrast,
    '',
    contaminant.placement === 'inside'
      ? '(μ_object − φ·μ_solid) / μ_solid, first channel'
      : 'μ_object / μ_solid, first channel (on the pack nothing is replaced)',
    [mu, `${prefix}.food-mu0`],
  )
  const at = finding.expectedMm ?? finding.limitMm
  const noise = scene.channels.meanEnergyKeV.map((_, c) => `${prefix}.noise${c}`)
  const texture = [`${prefix}.grain`, `${prefix}.unevenness`]
  add(
    'detectability',
    `detectability of ${material.label} at ${round(at, 3)} mm`,
    'd′',
    detectability(scene.observer, object, at),
    '',
    {
      wire: '√(ℓ·2∫ Sᵀ K⁻¹ S df), geometric mean over 0.2 in ln diameter',
      sphere: '√(∫ 2πf·Sᵀ K⁻¹ S df), geometric mean over 0.2 in ln diameter',
      flake: '√(∫ 2πf·Sᵀ K⁻¹ S df)',
    }[contaminant.shape],
    [`${p}.contrast`, ...noise, ...texture, `${prefix}.object-pixel`],
  )
  add(
    'threshold',
    `threshold of the filter for ${material.label} at ${round(at, 3)} mm`,
    'T',
    object.threshold(at),
    'standard deviations',
    'the larger of the threshold taught on clean packs and that of this filter',
    [`${prefix}.threshold`],
  )
  const common = [`${p}.detectability`, `${p}.threshold`, `${prefix}.constants`]
  const meaning = 'smallest size above which every size is found with this chance: Φ(d′ − T)'
  add('expected', 'expected size', 'd₉₀', finding.expectedMm, 'mm', `${meaning}, chance 0.90`, common)
  add('half', 'size found every second time', 'd₅₀', finding.halfMm, 'mm', `${meaning}, chance 0.50`, common)
  add(
    'sure',
    'size found 995 times in 1,000',
    'd₉₉.₅',
    finding.sureMm,
    'mm',
    `${meaning}, chance 0.995`,
    common,
  )
  add(
    'best',
    'best possible size',
    'd_best',
    finding.bestMm,
    'mm',
    'as the expected size, ideal observer: κ = 0, texture scale 1, a wire gathered over its whole length, each filter with its own threshold, smallest over the settings of the machine',
    [`${p}.contrast`, ...noise, ...texture, `${prefix}.z`],
  )
  add(
    'ranges',
    'assumptions drawn',
    '',
    ASSUMPTION_RANGES.map((r) => `${r.label}: ${r.range}`).join('; '),
    '',
    `${DRAWS} fixed Halton points over the stated ranges`,
  )
  add(
    'cautious',
    'safe to promise',
    'd_cautious',
    finding.cautiousMm,
    'mm',
    'larger of the expected size and the 0.90 quantile over the drawn assumptions',
    [`${p}.expected`, `${p}.ranges`],
  )
  return `${p}.expected`
}
