import { besselJ0, besselJ1 } from '../../numerics/bessel.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import type { Channels, PackInBeam } from '../detector/channels.ts'
import { type Imaging, invertSymmetric, type NoiseKind, noiseAt, noiseMatrix } from '../noise/noise.ts'
import { grainKnots, UNEVENNESS_LONGEST_MM } from '../noise/texture.ts'
import { chordBasis, DEGREE, STEPS_PER_UNIT, TABLE_END } from './chord-basis.ts'
import { onePower, twoPower } from './round-power.ts'
import { chordCoefficients, type SeenObject, signalDrop } from './seen-object.ts'

/**
 * Hotelling observer over the channels (Barrett & Myers 2004, Foundations of Image Science, ch. 13):
 * d′² = ∫ 2πf·Sᵀ K⁻¹ S df for spheres and flakes, ℓ·2∫ Sᵀ K⁻¹ S df for wires, up to the pixel's Nyquist
 * frequency. A filter gathers at least as much along a wire as the wire is thick. The noise is worked out once per image; each size then costs a few microseconds.
 */
export interface Observer {
  readonly channels: Channels
  readonly pack: PackInBeam
  readonly imaging: Imaging
  readonly frequencies: Float64Array
  /** Quadrature weight × MTF² at each frequency, × 2 for wires and × 2πf for spheres and flakes. */
  readonly lineWeights: Float64Array
  readonly areaWeights: Float64Array
  /** K⁻¹ at each frequency, count × count numbers each. */
  readonly inverse: Float64Array
  /** The same observer on finer frequencies, for large objects, whose transforms swing fast; made when asked for. */
  readonly finer: () => Observer
  /** The same on frequencies that resolve the shadow of one grain some way around it. */
  readonly overBed: () => Observer
  /** From which size on an object is large in that sense, mm, and how far its d′ may be off without. */
  readonly large: { readonly fromMm: number; readonly offBy: number }
}

/**
 * Above these sizes, mm, the usual frequencies are too coarse, and how far d′ may be off there (natural logarithm,
 * twice what was seen): at fine pixels and at others.
 */
const LARGE_AT_FINE_PIXELS = { fromMm: 8, offBy: 0.25 }
const LARGE_AT_OTHERS = { fromMm: 12, offBy: 0.05 }
const FINE_PIXEL_MM = 0.5
/** Points per swing of the largest objects' transforms, and besides, in a panel of the finer observer. */
const POINTS_PER_SWING = 3
const POINTS_BESIDES = 4
/** Points of a panel over the bed: at least, per unit of frequency and mm of grain, and per unit for what lies around. */
const POINTS_IN_BED = 3
const POINTS_PER_MM = 1.6
const POINTS_AROUND = 8
/** The larger node of the spread of the largest size spoken of, mm. */
const LARGEST_MM = 36

/** Quadrature points of a panel by its width in 1/mm: a narrow one holds no full swing of a transform. */
function pointsFor(widthPerMm: number): number {
  if (widthPerMm < 0.045) return 3
  return widthPerMm < 0.1 ? 5 : 8
}

function frequencyPanels(nyquist: number, grainMm: number): [number, number, number][] {
  const coarse = [0, 1 / UNEVENNESS_LONGEST_MM, 0.1, 0.17, 0.25, 0.37, 0.55, 0.8, 1.2, 1.8, 2.8]
  const knots = grainMm > 0 ? grainKnots.map((x) => x / grainMm) : []
  const inside = [...new Set([...coarse, ...knots])].filter((f) => f < nyquist).sort((a, b) => a - b)
  return inside.map((from, i) => {
    const to = inside[i + 1] ?? nyquist
    return [from, to, pointsFor(to - from)]
  })
}

/** Sets up the observer for one image: channels behind a pack, and how it is imaged. */
export function prepareObserver(channels: Channels, pack: PackInBeam, imaging: Imaging): Observer {
  return observerOn(frequencyPanels(1 / (2 * imaging.objectPixelMm), pack.grainMm), channels, pack, imaging)
}

function observerOn(
  panels: readonly [number, number, number][],
  channels: Channels,
  pack: PackInBeam,
  imaging: Imaging,
): Observer {
  const total = panels.reduce((sum, [, , n]) => sum + n, 0)
  const n = channels.count
  const frequencies = new Float64Array(total)
  const lineWeights = new Float64Array(total)
  const areaWeights = new Float64Array(total)
  const inverse = new Float64Array(total * n * n)
  const k = new Float64Array(n * n)
  let at = 0
  for (const [from, to, points] of panels) {
    const rule = gaussLegendre(points)
    for (let q = 0; q < points; q++, at++) {
      const f = from + ((to - from) * (rule.nodes[q]! + 1)) / 2
      frequencies[at] = f
      const noise = noiseAt(f, pack, imaging)
      lineWeights[at] = (to - from) * rule.weights[q]! * noise.seen
      areaWeights[at] = lineWeights[at]! * Math.PI * f
      noiseMatrix(k, noise, channels, pack, imaging)
      invertSymmetric(k, n)
      inverse.set(k, at * n * n)
    }
  }
  const resolving = (pointsPerUnit: number, besides: number) => {
    let made: Observer | undefined
    return () => {
      made ??= observerOn(
        panels.map(([from, to]) => [from, to, Math.ceil(besides + pointsPerUnit * (to - from))]),
        channels,
        pack,
        imaging,
      )
      return made
    }
  }
  const finer = resolving(POINTS_PER_SWING * LARGEST_MM, POINTS_BESIDES)
  const overBed = resolving(POINTS_PER_MM * pack.grainMm + POINTS_AROUND, POINTS_IN_BED)
  const large = imaging.objectPixelMm < FINE_PIXEL_MM ? LARGE_AT_FINE_PIXELS : LARGE_AT_OTHERS
  return { channels, pack, imaging, frequencies, lineWeights, areaWeights, inverse, finer, overBed, large }
}

/** Working space, used anew by every call; nothing outlives the call that fills it. */
let space = new Float64Array(8 * DEGREE)
function scratch(length: number): Float64Array {
  if (space.length < length) space = new Float64Array(length)
  return space
}

/**
 * Transforms of an object of a size (sphere and wire: diameter; flake: thickness), mm, without the MTF:
 * at each frequency of the observer one value per channel. Spheres and flakes mm², wires mm.
 */
export function objectTransform(observer: Observer, object: SeenObject, sizeMm: number): Float64Array {
  const { frequencies, channels } = observer
  const points = frequencies.length
  const n = channels.count
  const result = new Float64Array(n * points)
  if (object.shape === 'flake') {
    const radius = Math.sqrt(object.faceMm2 / Math.PI)
    const drops = channels.weights.map((_, c) => signalDrop(object, c, sizeMm) * radius)
    for (let q = 0; q < points; q++) {
      const f = frequencies[q]!
      const wave = besselJ1(2 * Math.PI * f * radius) / f
      for (let c = 0; c < n; c++) result[q * n + c] = drops[c]! * wave
    }
    return result
  }
  if (sizeMm > object.foodDepthMm) return reachingOut(observer, object, object.shape, sizeMm)
  const r = sizeMm / 2
  const basis = chordBasis(object.shape)
  const coefficients = scratch(n * DEGREE)
  chordCoefficients(coefficients, object, n, sizeMm, object.shape === 'sphere' ? r * r : r)
  const step = 2 * Math.PI * r * STEPS_PER_UNIT
  const end = TABLE_END * STEPS_PER_UNIT
  for (let q = 0; q < points; q++) {
    const position = step * frequencies[q]!
    if (position >= end) break
    const row = position | 0
    const share = position - row
    const low = row * DEGREE
    for (let c = 0; c < n; c++) {
      const at = c * DEGREE
      let below = 0
      let above = 0
      for (let j = 0; j < DEGREE; j++) {
        const coefficient = coefficients[at + j]!
        below += coefficient * basis[low + j]!
        above += coefficient * basis[low + DEGREE + j]!
      }
      result[q * n + c] = below + share * (above - below)
    }
  }
  return result
}

/** Points of a quadrature along a radius, per piece of it. */
const ALONG_RADIUS = 24

/**
 * {@link objectTransform} of a sphere or wire thicker than the food is deep: its signal bends where the chord
 * leaves the food, so it is summed along the radius, each side of the bend for itself.
 */
function reachingOut(
  observer: Observer,
  object: SeenObject,
  kind: 'sphere' | 'wire',
  sizeMm: number,
): Float64Array {
  const { frequencies, channels } = observer
  const n = channels.count
  const result = new Float64Array(n * frequencies.length)
  const r = sizeMm / 2
  const bend = Math.acos(object.foodDepthMm / sizeMm)
  const rule = gaussLegendre(ALONG_RADIUS)
  const drops = new Float64Array(n)
  for (const [from, to] of [
    [0, bend],
    [bend, Math.PI / 2],
  ] as const) {
    for (let i = 0; i < ALONG_RADIUS; i++) {
      const theta = from + ((to - from) * (rule.nodes[i]! + 1)) / 2
      const rho = r * Math.sin(theta)
      const chord = sizeMm * Math.cos(theta)
      const width =
        ((to - from) / 2) * rule.weights[i]! * (chord / 2) * (kind === 'sphere' ? 2 * Math.PI * rho : 2)
      for (let c = 0; c < n; c++) drops[c] = width * signalDrop(object, c, chord)
      for (let q = 0; q < frequencies.length; q++) {
        const phase = 2 * Math.PI * frequencies[q]! * rho
        const wave = kind === 'sphere' ? besselJ0(phase) : Math.cos(phase)
        for (let c = 0; c < n; c++) result[q * n + c]! += drops[c]! * wave
      }
    }
  }
  return result
}

/**
 * Detectability d′ of a kind of piece: no piece is a perfect ball, whose transform has zeros that make d′ dip where
 * one passes the pixel's Nyquist frequency (diameters of 2.86, 4.92, 6.94 pixels). For round pieces it is the
 * geometric mean of d′ over a spread of sizes of 0.2 in ln (three-point Gauss–Hermite); see {@link Observer}.
 */
export function detectability(observer: Observer, object: SeenObject, sizeMm: number): number {
  if (object.shape === 'flake') return detectabilityOfOne(observer, object, sizeMm)
  const middle = detectabilityOfOne(observer, object, sizeMm)
  const smaller = detectabilityOfOne(observer, object, sizeMm / SPREAD_RATIO)
  const larger = detectabilityOfOne(observer, object, sizeMm * SPREAD_RATIO)
  return Math.cbrt(middle * middle * Math.sqrt(smaller * larger))
}

/** Standard deviation of ln size between pieces of one size, and the outer nodes of its quadrature as a ratio. */
export const LN_SIZE_SPREAD = 0.2
const SPREAD_RATIO = Math.exp(LN_SIZE_SPREAD * Math.sqrt(3))

/** Detectability d′ of one perfect object of one size, mm. */
export function detectabilityOfOne(observer: Observer, object: SeenObject, sizeMm: number): number {
  const n = observer.channels.count
  if (n === 0) return 0
  const wire = object.shape === 'wire'
  const power = wire ? observer.lineWeights : observer.areaWeights
  const sum =
    object.shape === 'flake' || n > 2 || sizeMm > object.foodDepthMm
      ? quadraticForm(objectTransform(observer, object, sizeMm), observer.inverse, power, n)
      : roundSum(observer, object, sizeMm, object.shape, power)
  const gathered = Math.min(object.lengthMm, Math.max(object.gatheredMm, sizeMm))
  return Math.sqrt(Math.max(0, sum * (wire ? gathered : 1)))
}

/**
 * d′ of one object as a function of its size, with whatever does not depend on the size worked out once
 * (a flake's face: its thickness only scales the signal).
 */
export function detectabilityOf(observer: Observer, object: SeenObject): (sizeMm: number) => number {
  const n = observer.channels.count
  if (object.shape !== 'flake' || n === 0) return (sizeMm) => detectability(observer, object, sizeMm)
  const radius = Math.sqrt(object.faceMm2 / Math.PI)
  const face = new Float64Array(n * n)
  observer.frequencies.forEach((f, q) => {
    const wave = (radius * besselJ1(2 * Math.PI * f * radius)) / f
    const weight = observer.areaWeights[q]! * wave * wave
    for (let i = 0; i < n * n; i++) face[i]! += weight * observer.inverse[q * n * n + i]!
  })
  const drops = new Float64Array(n)
  return (sizeMm) => {
    let sum = 0
    for (let c = 0; c < n; c++) drops[c] = signalDrop(object, c, sizeMm)
    for (let i = 0; i < n; i++) for (let j = 0; j < n; j++) sum += face[i * n + j]! * drops[i]! * drops[j]!
    return Math.sqrt(Math.max(0, sum))
  }
}

function roundSum(
  observer: Observer,
  object: SeenObject,
  sizeMm: number,
  kind: 'sphere' | 'wire',
  power: Float64Array,
): number {
  const { frequencies, inverse, channels } = observer
  const r = sizeMm / 2
  const coefficients = scratch(channels.count * DEGREE)
  chordCoefficients(coefficients, object, channels.count, sizeMm, kind === 'sphere' ? r * r : r)
  const step = 2 * Math.PI * r * STEPS_PER_UNIT
  const sum = channels.count === 1 ? onePower : twoPower
  return sum(chordBasis(kind), coefficients, frequencies, power, inverse, step)
}

function quadraticForm(s: Float64Array, inverse: Float64Array, power: Float64Array, n: number): number {
  let sum = 0
  for (let q = 0; q < power.length; q++) {
    let form = 0
    const base = q * n * n
    for (let i = 0; i < n; i++) {
      const si = s[q * n + i]!
      form += inverse[base + i * n + i]! * si * si
      for (let j = 0; j < i; j++) form += 2 * inverse[base + i * n + j]! * si * s[q * n + j]!
    }
    sum += power[q]! * form
  }
  return sum
}

/**
 * Shares of the noise in the observer's decision on one object, by kind; they add up to 1.
 * The decision filter K⁻¹S passes each kind of noise with its own power.
 */
export function noiseShares(
  observer: Observer,
  object: SeenObject,
  sizeMm: number,
): Record<NoiseKind, number> {
  const { frequencies, inverse, channels, pack, imaging } = observer
  const power = object.shape === 'wire' ? observer.lineWeights : observer.areaWeights
  const points = frequencies.length
  const n = channels.count
  const shares: Record<NoiseKind, number> = {
    photon: 0,
    electronics: 0,
    grain: 0,
    unevenness: 0,
    packaging: 0,
  }
  if (n === 0) return shares
  const s = objectTransform(observer, object, sizeMm)
  const filter = new Float64Array(n)
  const part = new Float64Array(n * n)
  for (let q = 0; q < points; q++) {
    const noise = noiseAt(frequencies[q]!, pack, imaging)
    const weight = power[q]!
    for (let i = 0; i < n; i++) {
      filter[i] = 0
      for (let j = 0; j < n; j++) filter[i]! += inverse[q * n * n + i * n + j]! * s[q * n + j]!
    }
    for (const kind of Object.keys(shares) as NoiseKind[]) {
      noiseMatrix(part, noise, channels, pack, imaging, new Set([kind]))
      for (let i = 0; i < n; i++) {
        for (let j = 0; j < n; j++) shares[kind] += weight * filter[i]! * part[i * n + j]! * filter[j]!
      }
    }
  }
  const total = Object.values(shares).reduce((sum, v) => sum + v, 0)
  for (const kind of Object.keys(shares) as NoiseKind[]) shares[kind] = total > 0 ? shares[kind] / total : 0
  return shares
}
