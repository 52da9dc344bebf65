import { add, type Complex, complex, divide, scale, subtract } from '../../numerics/complex.ts'
import { type Conductor, skinArgument } from './skin-argument.ts'

/** From this |x| the asymptotic series is exact to double precision within its six terms (1e-12). */
const ASYMPTOTIC_FROM = 150

/**
 * y(x) = x·I0(x)/I1(x) − 2, by the continued fraction x·I0/I1 = 2 + x/(4/x + 1/(6/x + …)), or for large x
 * by I1/I0 = 1 − 1/2x − 1/8x² − 1/8x³ − 25/128x⁴ − 13/32x⁵ − 1073/1024x⁶. Small for a thin wire, so the
 * two polarizabilities below keep their digits.
 */
export function besselExcess(x: Complex): Complex {
  const size = Math.hypot(x.re, x.im)
  if (size < ASYMPTOTIC_FROM) {
    let tail = complex(0)
    for (let k = Math.ceil(size) + 24; k >= 2; k--) {
      tail = divide(complex(1), add(divide(complex(2 * k), x), tail))
    }
    return { re: x.re * tail.re - x.im * tail.im, im: x.re * tail.im + x.im * tail.re }
  }
  const inverse = divide(complex(1), x)
  let ratio = complex(0)
  for (const term of [-1073 / 1024, -13 / 32, -25 / 128, -1 / 8, -1 / 8, -1 / 2, 1]) {
    ratio = {
      re: ratio.re * inverse.re - ratio.im * inverse.im + term,
      im: ratio.re * inverse.im + ratio.im * inverse.re,
    }
  }
  return subtract(divide(x, ratio), complex(2))
}

/**
 * Mean of the flux density over a long wire's section, along its axis, over μ0·H0, minus 1:
 * 2μr·I1(x)/(x·I0(x)) − 1 = (2(μr − 1) − y)/(2 + y).
 */
export function axialFluxExcess(radiusM: number, metal: Conductor, frequencyHz: number): Complex {
  const y = besselExcess(skinArgument(radiusM, metal, frequencyHz))
  return divide(subtract(complex(2 * (metal.relativePermeability - 1)), y), add(complex(2), y))
}

/**
 * Polarizability per metre of a long round wire, field along it, m²: πa²·[2μr·I1(x)/(x·I0(x)) − 1].
 * Exact two-dimensional solution; no end effects (length much above the diameter).
 */
export function wireAlongFieldPerM(radiusM: number, metal: Conductor, frequencyHz: number): Complex {
  return scale(axialFluxExcess(radiusM, metal, frequencyHz), Math.PI * radiusM ** 2)
}

/**
 * Polarizability per metre of a long round wire, field across it, m²: 2πa²·(μr − F)/(μr + F),
 * F = x·I0(x)/I1(x) − 1 = 1 + y. Exact two-dimensional solution.
 */
export function wireAcrossFieldPerM(radiusM: number, metal: Conductor, frequencyHz: number): Complex {
  const mu = metal.relativePermeability
  const y = besselExcess(skinArgument(radiusM, metal, frequencyHz))
  const ratio = divide(subtract(complex(mu - 1), y), add(complex(mu + 1), y))
  return scale(ratio, 2 * Math.PI * radiusM ** 2)
}
