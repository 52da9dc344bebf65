import type { Contaminant, Point, XrayMachine } from '../contract/index.ts'
import { chosenStep, worstRatios } from './assess.ts'
import type { Refusal, XraySetting } from './assessment.ts'
import { buildOf } from './beam/exposure.ts'
import { settingAt, voltagesOf } from './beam/settings.ts'
import { bestAt, decideIn, lookAt, promisedAt } from './look.ts'
import { PRACTICE } from './observer/practice.ts'
import { looksLikeVoid, setScene } from './observer/scene.ts'
import { sizeIn } from './picture.ts'
import { materialAttenuation, packInBeam } from './places/pack-in-beam.ts'
import { settlingOf } from './places/settling.ts'
import { refusalsOf } from './refusals.ts'

/** Sizes of one contaminant at one machine, as the whole assessment gives them but without its trail. Sizes in mm. */
export interface QuickSizes {
  readonly refusals: readonly Refusal[]
  readonly setting: XraySetting
  readonly bestMm: number | null
  readonly expectedMm: number | null
  /** Null also where it was not asked for. */
  readonly cautiousMm: number | null
  /** Looks like a void in this food. */
  readonly looksLikeVoid: boolean
}

/**
 * The sizes of one contaminant, the tube voltage chosen for all contaminants of the brief as the assessment
 * chooses it. Made for curves: leaves out zones, other contaminants' best sizes, and, unless asked for, the
 * cautious size, which takes most of the time.
 */
export function quickSizes(
  machine: XrayMachine,
  point: Point,
  contaminants: readonly Contaminant[],
  wanted: number,
  withCautious: boolean,
): QuickSizes {
  const build = buildOf(machine)
  const pack = packInBeam(point, build)
  const contaminant = contaminants[wanted]!
  const steps: { setting: XraySetting; expectedMm: (number | null)[] }[] = []
  for (const kV of voltagesOf(machine)) {
    const setting = settingAt(machine, build, kV, point.speedMPerMin)
    const scene = setScene(build, point, pack, setting, PRACTICE)
    const last = steps.at(-1)?.expectedMm
    steps.push({ setting, expectedMm: contaminants.map((c, i) => sizeIn(scene, c, point, last?.[i])) })
  }
  const chosen = steps[chosenStep(worstRatios(steps, contaminants))]!
  const settling = settlingOf(point, contaminant)
  const look = lookAt(build, point, pack, chosen.setting)
  const deciding = decideIn(look, contaminant, settling, chosen.expectedMm[wanted]!)
  const { picture, expectedMm } = deciding.decides
  const settings = steps.map(({ setting }) => setting)
  const mu = materialAttenuation(contaminant.material)
  return {
    refusals: refusalsOf(machine, build, point),
    setting: chosen.setting,
    bestMm: picture && bestAt(look, deciding, deciding.decides, contaminant, point, settings),
    expectedMm,
    cautiousMm: withCautious ? promisedAt(deciding.decides, contaminant).cautiousMm : null,
    looksLikeVoid: picture !== null && looksLikeVoid(picture.scene, mu, contaminant.placement),
  }
}
