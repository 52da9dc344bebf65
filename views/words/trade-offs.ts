import type { InputId } from '../../src/trade-offs/input.ts'
import type { Gap } from '../../src/trade-offs/sizes-at.ts'
import { valueWords } from './size.ts'

/** An input as a curve's title has it, and what is held while it moves. */
export interface InputWords {
  readonly name: string
  readonly held: string
}

export const INPUT_WORDS: Readonly<Record<InputId, InputWords>> = {
  height: {
    name: 'height of the food',
    held: 'The belt keeps its speed, so less food passes when it is shallow.',
  },
  'depth-with-speed': {
    name: 'height, with speed to match (equal kg per hour)',
    held: 'Half as deep runs twice as fast: as many kg pass in an hour all along the curve.',
  },
  speed: { name: 'speed', held: 'Packs and kg per hour go with the speed.' },
  grain: { name: 'grain size', held: 'Fill fraction and height stay.' },
  packing: {
    name: 'fill fraction (share of the bed that is food)',
    held: 'Height and grain stay, so the weight moves.',
  },
  unevenness: {
    name: 'unevenness of the food',
    held: 'Thickness variation over 2 to 20 mm, root mean square.',
  },
  kV: {
    name: 'tube voltage',
    held: 'The voltage is held instead of chosen; the current follows from power, tube and detector.',
  },
  pixel: {
    name: 'pixel size',
    held: 'Tube, belt and blur in pixels stay: a small pixel sees finer but counts fewer x-rays.',
  },
  'false-rejects': {
    name: 'false rejects accepted',
    held: 'How many good packs in all may be thrown out; everything else stays.',
  },
  frequency: { name: 'frequency', held: 'One frequency alone, whatever the machine could run together.' },
  opening: { name: 'height of the opening', held: 'The width keeps its proportion to the height.' },
  conductivity: {
    name: 'conductivity of the food',
    held: 'Taken as measured, so without a range of its own.',
  },
  temperature: {
    name: 'temperature of the food',
    held: 'It moves the conductivity; frozen food hardly conducts.',
  },
}

/** Why there is no size, short enough to stand in a picture. */
export const GAP_WORDS: Readonly<Record<Gap, string>> = {
  'too-wide': 'food too wide',
  'too-high': 'food too high',
  'fan-too-wide': 'wider than the beam',
  'over-full': 'over-full',
  'looks-like-void': 'looks like a bubble',
  'not-a-metal': 'not a metal',
  'above-limit': 'beyond the model',
}

const oneIn = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 2 })

/** A value of an input with its unit, e.g. "45 mm" or "1 in 1,000". */
export function inputValueWords(input: InputId, unit: string, value: number): string {
  if (input === 'false-rejects') return `1 in ${oneIn.format(1 / value)}`
  return `${valueWords(Number(value.toPrecision(3)))} ${unit}`.trim()
}

/** Kinds of noise in the order they are stacked. */
export const NOISE_WORDS = {
  photon: 'too few x-rays',
  grain: 'grain pattern of the food',
  unevenness: 'unevenness of the food',
  electronics: 'electronics of the detector',
  packaging: 'uneven packaging wall',
} as const
