import { haltonPoint } from '../../numerics/halton.ts'

/** One draw of the stated assumptions: factors on the central values. */
export interface Variation {
  readonly textureScale: number
  readonly unevenness: number
  readonly dose: number
  readonly blur: number
  readonly signal: number
  readonly density: number
  readonly height: number
  /** 0 to 1: where in its own spread (which glass, which bone, which density) the contaminant lies. */
  readonly contaminant: number
}

/** The assumptions in the words of the page, in the order of the draw. */
export const ASSUMPTION_RANGES = [
  {
    key: 'textureScale',
    label: 'grain pattern stronger than hard spheres',
    range: 'factor 1 to 3 on its noise',
  },
  { key: 'unevenness', label: 'unevenness of food and glass', range: 'divided or multiplied by up to 1.5' },
  { key: 'dose', label: 'dose of the tube', range: '±25 %' },
  { key: 'blur', label: 'blur', range: '±20 %' },
  { key: 'signal', label: 'image evaluation', range: '0 to 20 % less signal' },
  { key: 'density', label: 'density of the food', range: '±2 %' },
  { key: 'height', label: 'depth of food in the beam', range: '±10 %' },
  { key: 'contaminant', label: "the contaminant's own spread", range: 'over its kind and density' },
] as const satisfies readonly { key: keyof Variation; label: string; range: string }[]

/** Number of draws and the primes of the Halton sequence, one per assumption. */
export const DRAWS = 64
const BASES = [2, 3, 5, 7, 11, 13, 17, 19]
/** The first points of the high bases lie on a line; they are skipped. */
const SKIPPED = 40

function variationAt(u: readonly number[]): Variation {
  const [texture, unevenness, dose, blur, signal, density, height, contaminant] = u as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ]
  return {
    textureScale: 3 ** texture,
    unevenness: 1.5 ** (2 * unevenness - 1),
    dose: 0.75 + 0.5 * dose,
    blur: 0.8 + 0.4 * blur,
    signal: 1 - 0.2 * signal,
    density: 0.98 + 0.04 * density,
    height: 0.9 + 0.2 * height,
    contaminant,
  }
}

/** Everything at its central value. */
export const AS_STATED: Variation = {
  textureScale: 1,
  unevenness: 1,
  dose: 1,
  blur: 1,
  signal: 1,
  density: 1,
  height: 1,
  contaminant: 0.5,
}

/** The fixed ensemble of draws. */
export const ENSEMBLE: readonly Variation[] = Array.from({ length: DRAWS }, (_, i) =>
  variationAt(haltonPoint(i + 1 + SKIPPED, BASES)),
)
