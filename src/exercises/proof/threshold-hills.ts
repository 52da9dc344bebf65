import type { XrayMachine } from '../../contract/index.ts'
import { normalUpperQuantile, normalUpperTail } from '../../numerics/normal.ts'
import { buildOf } from '../../xray/beam/exposure.ts'
import { detectability } from '../../xray/observer/detectability.ts'
import { PRACTICE } from '../../xray/observer/practice.ts'
import { objectIn, positionsOf, setScene } from '../../xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../xray/places/pack-in-beam.ts'
import { once } from '../once.ts'
import { machineOf, type Practice, withXray } from '../practice.ts'

const PIECE_MM = 2.5
const practice: Practice = {
  product: { food: 'hazelnut' },
  point: { heightMm: 45, widthMm: 170, lengthMm: 220 },
  contaminants: [{ material: 'quartz' }],
}
const seen = withXray(practice)

export interface Hills {
  readonly pieceMm: number
  readonly positions: number
  /** How far the piece stands out of the noise, in units of the noise: d′. */
  readonly standsOut: number
}

/** One bag of nuts and one stone in it, as one x-ray machine reads them. */
export const hills = once((): Hills => {
  const { point, brief, assessment } = seen()
  const build = buildOf(machineOf('xray-single') as XrayMachine)
  const scene = setScene(build, point, packInBeam(point, build), assessment.setting, PRACTICE)
  const contaminant = brief.contaminants[0]!
  const object = objectIn(scene, contaminant, materialAttenuation(contaminant.material))
  return {
    pieceMm: PIECE_MM,
    positions: positionsOf(point, build),
    standsOut: detectability(scene.observer, object, PIECE_MM),
  }
})

/**
 * Density of the highest of N independent readings of a clean pack: N·φ(x)·(1 − Q(x))^(N − 1); its mean grows
 * with the number of places looked at, which is why a large pack needs a higher threshold.
 */
export function cleanDensity(x: number, positions: number): number {
  const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)
  return positions * density * Math.exp((positions - 1) * Math.log1p(-normalUpperTail(x)))
}

/** Density of the reading of a piece that stands out of the noise by so much. */
export function pieceDensity(x: number, standsOut: number): number {
  return Math.exp(-((x - standsOut) ** 2) / 2) / Math.sqrt(2 * Math.PI)
}

/** The threshold for a share of false rejects per pack, and the share of pieces it misses. */
export function thresholdFor(falseRejectsPerPack: number, { positions, standsOut }: Hills) {
  const threshold = normalUpperQuantile(falseRejectsPerPack / positions)
  return { threshold, missed: 1 - normalUpperTail(threshold - standsOut) }
}
