import { magnitude, phaseDeg } from '../../numerics/complex.ts'
import type { CoilFinding } from '../assessment.ts'
import { curveOf, type Listening } from '../decide/reading.ts'
import { CAUTION } from '../parameters.ts'
import type { Piece } from '../piece/piece.ts'
import { positionOf } from '../piece/size-grid.ts'
import { type TargetShape, targetPolarizability } from '../piece/target.ts'
import type { TrailBuilder } from './trail-builder.ts'
import type { SceneIds } from './trail-scene.ts'

const SHAPE_FORMULA: Record<TargetShape['kind'], { formula: string; sources: readonly string[] }> = {
  sphere: {
    formula: '2πa³·[(2μr + 1)u − x²]/[(μr − 1)u + x²], u = x·coth x − 1, x = a√(iωμrμ0σ)',
    sources: ['wait-1951', 'landau-lifshitz-59', 'yamazaki-2002'],
  },
  wire: {
    formula: 'along: πa²l·[2μr·I1/(x·I0) − 1], of iron with demagnetisation; across: 2πa²l·(μr − F)/(μr + F)',
    sources: ['cylinder-bessel', 'osborn-1945'],
  },
  flake: {
    formula: 'face on: −(8/3)R³·iq/(1 + iq); in its plane: V·m/(1 + N·m), m = μr·tanh(x)/x − 1',
    sources: ['thin-sheet', 'osborn-1945'],
  },
}

/** Rows of one piece of metal: constants, answers, statistic, sizes. `shared`: threshold, spread, limit. */
export function pieceRows(
  trail: TrailBuilder,
  listen: Listening,
  ids: SceneIds,
  shared: readonly string[],
  piece: Piece,
  finding: CoilFinding,
): void {
  const { electrical, shape } = piece
  const own = `c${finding.contaminant}`
  const metal = [
    trail.add(
      `metal.${electrical.id}.conductivity`,
      `conductivity of ${electrical.id}`,
      'σ',
      electrical.conductivitySPerM,
      'S/m',
      'table value at 20 °C',
      [],
      electrical.sources,
    ),
    trail.add(
      `metal.${electrical.id}.permeability`,
      `relative permeability of ${electrical.id}`,
      'μr',
      electrical.relativePermeability,
      '',
      'table value',
      [],
      electrical.sources,
    ),
  ]
  const sizeMm = finding.expectedMm ?? finding.limitMm
  const orientation = finding.weakOrientation ?? 'along'
  const { formula, sources } = SHAPE_FORMULA[shape.kind]
  const answers = listen.hearing.frequenciesHz.flatMap((f, k) => {
    const alpha = targetPolarizability(shape, sizeMm, orientation, piece.metal, f)
    const khz = f / 1000
    const inputs = [...metal, ids.frequencies[k]!]
    return [
      trail.add(
        `${own}.alpha.${khz}`,
        `answer of a ${shape.kind} of ${sizeMm.toFixed(2)} mm at ${khz} kHz`,
        '|α|',
        magnitude(alpha),
        'm³',
        formula,
        inputs,
        sources,
      ),
      trail.add(
        `${own}.phase.${khz}`,
        `its phase at ${khz} kHz`,
        'arg α',
        phaseDeg(alpha),
        '°',
        '0° magnetic, −90° resistive, −180° perfect conductor',
        inputs,
        sources,
      ),
    ]
  })
  const weakShare = orientation === 'across' ? 0 : 1
  const statistic = curveOf({ ...listen, spread: 0 }, piece, weakShare)
  const d = trail.add(
    `${own}.statistic`,
    `signal over noise and clutter at ${sizeMm.toFixed(2)} mm`,
    'D',
    statistic.statisticAt(positionOf(sizeMm)),
    '',
    '√(s′C⁻¹s), s = (Re α, Im α) over the frequencies, C = noise + product + pack',
    [...answers, ...ids.noise, ...ids.background, ...(piece.inside ? ids.inside : [])],
    ['coil-residuals'],
  )
  const expected = trail.add(
    `${own}.expected`,
    'expected size',
    'd',
    finding.expectedMm,
    'mm',
    'last size where E_u[Φ(D(d·e^(−su)) − z)] reaches 0.90',
    [d, ...shared],
    ['coil-spread', 'coil-calibration'],
  )
  const best = trail.add(
    `${own}.best`,
    'best possible size',
    'd',
    finding.bestMm,
    'mm',
    'the same without food, pack and spread, at the best choice of frequencies',
    [...metal, ...ids.noise, shared[0]!],
    ['coil-calibration'],
  )
  trail.add(
    `${own}.cautious`,
    'safe to promise',
    'd',
    finding.cautiousMm,
    'mm',
    `the same with the conductivity at the top of its range, residuals × ${CAUTION.residual}, noise × ${CAUTION.noise}, worst orientation; not below the common-practice floor`,
    [expected, best, ...ids.background],
    ['coil-floor', 'coil-residuals'],
  )
}
