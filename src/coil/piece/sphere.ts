import {
  add,
  type Complex,
  complex,
  divide,
  exponential,
  multiply,
  polynomial,
  scale,
  subtract,
} from '../../numerics/complex.ts'
import { type Conductor, skinArgument } from './skin-argument.ts'

/** Below this |x| the series below is used: x·coth x − 1 − x²/3 would lose its digits. */
const SERIES_BELOW = 0.5

/** v/z² of the series v = x·coth x − 1 − x²/3 with z = x² (Bernoulli numbers; next term 3e-8·z⁶). */
const SERIES = [-1 / 45, 2 / 945, -1 / 4725, 2 / 93555, -1382 / 638512875, 4 / 18243225]

/** v(x) = x·coth x − 1 − x²/3 for Re x > 0, relative accuracy about 1e-13 for small and large x. */
function remainder(x: Complex): Complex {
  const z = multiply(x, x)
  if (Math.hypot(x.re, x.im) < SERIES_BELOW) return multiply(multiply(z, z), polynomial(z, SERIES))
  const e = exponential(scale(x, -2))
  const coth = divide(complex(1 + e.re, e.im), complex(1 - e.re, -e.im))
  return subtract(multiply(x, coth), complex(1 + z.re / 3, z.im / 3))
}

/**
 * Magnetic polarizability of a sphere of radius a, m³ (moment = α·H0), exact in the quasi-static limit:
 * α = 2πa³·[(2μr + 1)·u − x²]/[(μr − 1)·u + x²], u = x·coth x − 1, x = γa.
 * J. R. Wait 1951, Geophysics 16:666; for μr = 1 Landau & Lifshitz, Electrodynamics of Continuous Media,
 * § 59. Written with u = x²/3 + v so that μr near 1 keeps its digits.
 * Valid while the sphere is small against the coil and the free wavelength.
 */
export function spherePolarizability(radiusM: number, metal: Conductor, frequencyHz: number): Complex {
  const mu = metal.relativePermeability
  const x = skinArgument(radiusM, metal, frequencyHz)
  const z = multiply(x, x)
  const v = remainder(x)
  const numerator = add(scale(z, (2 * (mu - 1)) / 3), scale(v, 2 * mu + 1))
  const denominator = add(scale(z, (mu + 2) / 3), scale(v, mu - 1))
  return scale(divide(numerator, denominator), 2 * Math.PI * radiusM ** 3)
}
