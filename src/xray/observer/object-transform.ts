import { besselJ1, tabledJ0 } from '../../numerics/bessel.ts'
import { gaussLegendre } from '../../numerics/gauss-legendre.ts'
import { roomFor } from '../../numerics/working-room.ts'
import { chordBasis, DEGREE, STEPS_PER_UNIT, TABLE_END } from './chord-basis.ts'
import type { Observer } from './observer.ts'
import { chordCoefficients, type SeenObject, signalDrop } from './seen-object.ts'

/** Working space, used anew by every call; nothing outlives the call that fills it. */
const [scratch, wavesRoom] = [roomFor(), roomFor()]

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

/** Points of a quadrature along a radius, per piece of it: at least, per radian of the fastest wave across it, and at most. */
const ALONG_RADIUS = 6
const PER_RADIAN = 0.4
const MOST_ALONG_RADIUS = 24

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
  const waves = wavesRoom(frequencies.length)
  const fastest = 2 * Math.PI * frequencies.at(-1)! * r
  const drops = new Float64Array(n)
  for (const [from, to] of [
    [0, bend],
    [bend, Math.PI / 2],
  ] as const) {
    const radians = fastest * (Math.sin(to) - Math.sin(from))
    const rule = gaussLegendre(Math.min(MOST_ALONG_RADIUS, Math.ceil(ALONG_RADIUS + PER_RADIAN * radians)))
    for (let i = 0; i < rule.nodes.length; i++) {
      const theta = from + ((to - from) * (rule.nodes[i]! + 1)) / 2
      const rho = r * Math.sin(theta)
      const chord = sizeMm * Math.cos(theta)
      const width =
        ((to - from) / 2) * rule.weights[i]! * (chord / 2) * (kind === 'sphere' ? 2 * Math.PI * rho : 2)
      for (let c = 0; c < n; c++) drops[c] = width * signalDrop(object, c, chord)
      const step = 2 * Math.PI * rho
      if (kind === 'sphere') tabledJ0(waves, frequencies, step)
      else for (let q = 0; q < frequencies.length; q++) waves[q] = Math.cos(step * frequencies[q]!)
      for (let c = 0; c < n; c++) {
        const drop = drops[c]!
        for (let q = 0, at = c; q < frequencies.length; q++, at += n) result[at]! += drop * waves[q]!
      }
    }
  }
  return result
}
