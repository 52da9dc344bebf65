import type { Point } from '../../contract/index.ts'
import { type FigureId, figures } from '../../reference/separation.ts'
import type { SettlingFluid } from '../density/settling.ts'
import { bulkDensityKgPerM3 } from '../layer-coverage.ts'
import { GRAVITY_M_PER_S2 } from '../physical-constants.ts'
import { asRange, type Trail } from '../trail.ts'

/** One end of what a piece may meet on its way to the magnet. */
export interface Surroundings {
  readonly layerM: number
  readonly timeS: number
  readonly lifts: boolean
  readonly resistancePa: number
  readonly liquid: SettlingFluid | null
}

/** The unfavourable and the favourable end, the calculations behind them, and the depth the brief speaks of. */
export interface SurroundingsRange {
  readonly worst: Surroundings
  readonly best: Surroundings
  readonly steps: readonly string[]
  readonly depthMm: number
  /** False: the food would clog a grate, so one bar or magnets at the wall are all there can be. */
  readonly grate: boolean
}

type Paste = 'liquid' | 'pieces-in-liquid' | 'solid' | 'inclusions'
const pasteOf = (point: Point): Paste | null => {
  const { structure } = point.product
  return structure === 'granular' || structure === 'powder' || structure === 'plates' ? null : structure
}

/**
 * What stands between piece and magnet at a point. On a belt the layer passes on one side of the magnet,
 * which must lift (worst) or not (best), through a bed at rest (worst) or shaken (best). In a stream the piece
 * is at most half the bore from one bar (worst), or half a gap of a grate (best; a paste would clog it). A falling
 * stream is drawn sideways, so nothing is lifted there.
 */
export function surroundingsOf(point: Point, trail: Trail): SurroundingsRange {
  const speedMPerS = point.speedMPerMin / 60
  const loose = point.stage === 'loose'
  const lengthId: FigureId = loose ? 'magnet-length-loose' : 'magnet-length-stream'
  const [shortest, longest] = figures[lengthId].range
  const times = [shortest / 1000 / speedMPerS, longest / 1000 / speedMPerS] as const
  const speedStep = trail.entered('speed', 'speed past the magnet', 'v', point.speedMPerMin, 'm/min')
  const timeStep = trail.add('time', {
    label: 'time beside the magnet',
    symbol: 't',
    value: asRange(times[0], times[1]),
    unit: 's',
    formula: 'L / v',
    inputs: [speedStep, trail.figure(lengthId)],
  })
  if (loose) {
    const depthStep = trail.entered('depth', 'depth of the layer', 'H', point.heightMm, 'mm')
    const bulk = bulkDensityKgPerM3(point)
    const weightPa = bulk * GRAVITY_M_PER_S2 * (point.heightMm / 1000)
    const [shaken, atRest] = figures['bed-resistance-loose'].range
    const loaded = pasteOf(point) === null
    const resistStep = trail.add('bed-resistance', {
      label: 'pressure of the bed against the piece',
      symbol: 'P',
      value: loaded ? asRange(shaken * weightPa, atRest * weightPa) : 0,
      unit: 'Pa',
      formula: loaded ? 'C · ρ_bulk · g · H' : 'the piece lies on the food, not in it',
      inputs: loaded ? [depthStep, trail.figure('bed-resistance-loose')] : [],
    })
    const layerM = point.heightMm / 1000
    return {
      worst: {
        layerM,
        timeS: times[0],
        lifts: true,
        resistancePa: loaded ? atRest * weightPa : 0,
        liquid: null,
      },
      best: {
        layerM,
        timeS: times[1],
        lifts: false,
        resistancePa: loaded ? shaken * weightPa : 0,
        liquid: null,
      },
      steps: [timeStep, depthStep, resistStep],
      depthMm: point.heightMm,
      grate: false,
    }
  }
  const boreMm = point.pipeDiameterMm ?? Math.min(point.heightMm, point.widthMm)
  const boreStep = trail.entered('bore', 'bore of the stream', 'D', boreMm, 'mm')
  const paste = point.stage === 'pumped' ? pasteOf(point) : null
  const halfGap = figures['magnet-half-gap'].value
  const grate = paste !== 'solid' && paste !== 'inclusions'
  const nearest = grate ? Math.min(halfGap, boreMm / 2) : boreMm / 2
  const steps = grate ? [timeStep, boreStep, trail.figure('magnet-half-gap')] : [timeStep, boreStep]
  const stress = paste ? figures[`yield-stress-${paste}`].range : ([0, 0] as const)
  const thick = paste ? figures[`viscosity-${paste}`].range : null
  if (paste)
    steps.push(
      trail.figure(`yield-stress-${paste}`),
      trail.figure(`viscosity-${paste}`),
      trail.figure('yield-factor'),
    )
  const liquid = (viscosityPaS: number | undefined): SettlingFluid | null =>
    viscosityPaS === undefined ? null : { densityKgPerM3: point.product.densityGPerCm3 * 1000, viscosityPaS }
  const factor = figures['yield-factor'].value
  return {
    worst: {
      layerM: boreMm / 2000,
      timeS: times[0],
      lifts: point.stage === 'pumped',
      resistancePa: factor * stress[1],
      liquid: liquid(thick?.[1]),
    },
    best: {
      layerM: nearest / 1000,
      timeS: times[1],
      lifts: false,
      resistancePa: factor * stress[0],
      liquid: liquid(thick?.[0]),
    },
    steps,
    depthMm: boreMm / 2,
    grate,
  }
}
