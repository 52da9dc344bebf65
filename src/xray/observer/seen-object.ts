import type { Shape } from '../../contract/index.ts'
import { binsBelow } from '../beam/energy-bins.ts'
import type { Channels } from '../detector/channels.ts'
import { DEGREE, FIT_MATRIX, FIT_PLACES } from './chord-basis.ts'

/** An object in the beam: what it changes per mm at the energies that reach each channel. */
export interface SeenObject {
  readonly shape: Shape
  readonly energies: readonly WeighedEnergies[]
  /** Food there is to displace along the beam, mm; without end where none is displaced. */
  readonly foodDepthMm: number
  /** Wires: length of the wire and length an image filter gathers along it, mm. */
  readonly lengthMm: number
  readonly gatheredMm: number
  /** Flakes: area of the face, mm². */
  readonly faceMm2: number
}

/** Energy by energy: object less the food it displaces and that food, 1/mm, and share in the channel's signal (together 1). */
interface WeighedEnergies {
  readonly deltaMuPerMm: readonly number[]
  readonly foodMuPerMm: readonly number[]
  readonly shares: readonly number[]
}

/** Food that an object inside displaces: its attenuation as packed, 1/mm per energy bin, and its depth, mm. */
export interface DisplacedFood {
  readonly muPerMm: Float64Array
  readonly depthMm: number
}

/** Neighbouring energy bins taken together, below and above 40 keV: μ hardly differs between them. */
const BINS_PER_ENERGY = 2
const BINS_PER_HIGH_ENERGY = 4
const HIGH_FROM_BIN = Math.ceil(binsBelow(40) / BINS_PER_ENERGY) * BINS_PER_ENERGY
/** What has a smaller share in the signal than this is left out. */
const SMALLEST_SHARE = 1e-7

/** An object of attenuation μ (1/mm per energy bin) as each channel weighs it; food null: nothing is displaced. */
export function seeObject(
  channels: Channels,
  muPerMm: Float64Array,
  food: DisplacedFood | null,
  shape: Shape,
  lengthMm: number,
  gatheredMm: number,
  faceMm2: number,
): SeenObject {
  return {
    shape,
    energies: groupsIn(channels).map((groups, c) =>
      weighed(channels.weights[c]!, groups, muPerMm, food && foodIn(channels, groups, c, food)),
    ),
    foodDepthMm: food?.depthMm ?? Number.POSITIVE_INFINITY,
    lengthMm,
    gatheredMm,
    faceMm2,
  }
}

/** Energy bins taken together in one channel: the first of each and the one behind it, and its share in the signal. */
interface Groups {
  readonly from: readonly number[]
  readonly to: readonly number[]
  readonly shares: readonly number[]
}
const grouped = new WeakMap<Channels, readonly Groups[]>()

function groupsIn(channels: Channels): readonly Groups[] {
  let groups = grouped.get(channels)
  if (!groups) {
    groups = channels.weights.map((w) => groupsOf(w, channels.bins))
    grouped.set(channels, groups)
  }
  return groups
}

function groupsOf(weights: Float64Array, bins: number): Groups {
  const starts: number[] = []
  const ends: number[] = []
  const shares: number[] = []
  for (let from = 0, to = 0; from < bins; from = to) {
    let share = 0
    to = Math.min(bins, from + (from < HIGH_FROM_BIN ? BINS_PER_ENERGY : BINS_PER_HIGH_ENERGY))
    for (let i = from; i < to; i++) share += weights[i]!
    if (share < SMALLEST_SHARE) continue
    starts.push(from)
    ends.push(to)
    shares.push(share)
  }
  return { from: starts, to: ends, shares }
}

/** μ as the groups of one channel weigh it. */
function inGroups(weights: Float64Array, { from, to, shares }: Groups, muPerMm: Float64Array): number[] {
  const along: number[] = []
  for (let g = 0; g < shares.length; g++) {
    let sum = 0
    for (let i = from[g]!; i < to[g]!; i++) sum += weights[i]! * muPerMm[i]!
    along.push(sum / shares[g]!)
  }
  return along
}

const foods = new WeakMap<Channels, { readonly food: DisplacedFood; readonly along: number[][] }>()

/** The displaced food as one channel weighs it; the same for every object in a scene. */
function foodIn(channels: Channels, groups: Groups, channel: number, food: DisplacedFood): number[] {
  let kept = foods.get(channels)
  if (kept?.food !== food) {
    kept = { food, along: [] }
    foods.set(channels, kept)
  }
  kept.along[channel] ??= inGroups(channels.weights[channel]!, groups, food.muPerMm)
  return kept.along[channel]
}

function weighed(
  weights: Float64Array,
  groups: Groups,
  muPerMm: Float64Array,
  food: number[] | null,
): WeighedEnergies {
  const { shares } = groups
  const deltaMuPerMm = inGroups(weights, groups, muPerMm)
  if (food) for (let g = 0; g < shares.length; g++) deltaMuPerMm[g]! -= food[g]!
  return { deltaMuPerMm, foodMuPerMm: food ?? shares.map(() => 0), shares }
}

/**
 * Relative signal drop in a channel along a chord in mm: 1 − Σ share·exp(−(μ_object·chord − μ_food·displaced)),
 * displaced = min(chord, depth of the food): what reaches out of the food displaces nothing there.
 */
export function signalDrop(object: SeenObject, channel: number, chordMm: number): number {
  const { deltaMuPerMm, foodMuPerMm, shares } = object.energies[channel]!
  const outMm = Math.max(0, chordMm - object.foodDepthMm)
  let sum = 0
  for (let i = 0; i < shares.length; i++)
    sum -= shares[i]! * Math.expm1(-deltaMuPerMm[i]! * chordMm - foodMuPerMm[i]! * outMm)
  return sum
}

/** The places the signal is read at are these multiples of a step of 1/80 (see FIT_PLACES). */
const STEPS_PER_CHORD = 80

/**
 * Coefficients of u¹ … u⁷ of the signal drop of a round object, no larger than the food is deep, along the chords
 * u·size, channel after channel
 * from the start of `into`, times `scale`. One exponential per energy serves all seven places: their chords are
 * whole multiples of one step, so the rest are its powers.
 */
export function chordCoefficients(
  into: Float64Array,
  object: SeenObject,
  channels: number,
  sizeMm: number,
  scale: number,
): void {
  for (let c = 0; c < channels; c++) {
    const { deltaMuPerMm, shares } = object.energies[c]!
    let d79 = 0
    let d71 = 0
    let d57 = 0
    let d40 = 0
    let d23 = 0
    let d9 = 0
    let d1 = 0
    const step = -sizeMm / STEPS_PER_CHORD
    for (let i = 0; i < shares.length; i++) {
      const w = shares[i]!
      const e1 = Math.exp(deltaMuPerMm[i]! * step)
      const e2 = e1 * e1
      const e4 = e2 * e2
      const e8 = e4 * e4
      const e16 = e8 * e8
      const e7 = e4 * e2 * e1
      const e40 = e16 * e16 * e8
      const e57 = e40 * e16 * e1
      const e71 = e57 * e7 * e7
      d79 += w * (1 - e71 * e8)
      d71 += w * (1 - e71)
      d57 += w * (1 - e57)
      d40 += w * (1 - e40)
      d23 += w * (1 - e16 * e7)
      d9 += w * (1 - e8 * e1)
      d1 += w * (1 - e1)
    }
    const r0 = (scale * d79) / FIT_PLACES[0]
    const r1 = (scale * d71) / FIT_PLACES[1]
    const r2 = (scale * d57) / FIT_PLACES[2]
    const r3 = (scale * d40) / FIT_PLACES[3]
    const r4 = (scale * d23) / FIT_PLACES[4]
    const r5 = (scale * d9) / FIT_PLACES[5]
    const r6 = (scale * d1) / FIT_PLACES[6]
    for (let j = 0; j < DEGREE; j++) {
      const m = j * DEGREE
      into[c * DEGREE + j] =
        FIT_MATRIX[m]! * r0 +
        FIT_MATRIX[m + 1]! * r1 +
        FIT_MATRIX[m + 2]! * r2 +
        FIT_MATRIX[m + 3]! * r3 +
        FIT_MATRIX[m + 4]! * r4 +
        FIT_MATRIX[m + 5]! * r5 +
        FIT_MATRIX[m + 6]! * r6
    }
  }
}
