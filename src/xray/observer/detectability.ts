import { besselJ1 } from '../../numerics/bessel.ts'
import { roomFor } from '../../numerics/working-room.ts'
import { chordBasis, DEGREE, STEPS_PER_UNIT } from './chord-basis.ts'
import { objectTransform } from './object-transform.ts'
import type { Observer } from './observer.ts'
import { onePower, twoPower } from './round-power.ts'
import { chordCoefficients, type SeenObject, signalDrop } from './seen-object.ts'

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

/** Working space, used anew by every call; nothing outlives the call that fills it. */
const scratch = roomFor()

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
