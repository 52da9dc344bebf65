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
import { discPolarizability } from './sheet.ts'
import { type Conductor, skinArgument } from './skin-argument.ts'

/** tanh(x)/x − 1 in powers of z = x², without its leading zero. */
const TANH_SERIES = [-1 / 3, 2 / 15, -17 / 315, 62 / 2835, -1382 / 155925, 21844 / 6081075]

/** tanh(x)/x − 1 for Re x ≥ 0. */
function tanhExcess(x: Complex): Complex {
  const z = multiply(x, x)
  if (Math.hypot(x.re, x.im) < 0.1) return multiply(z, polynomial(z, TANH_SERIES))
  const e = exponential(scale(x, -2))
  const tanh = divide(complex(1 - e.re, -e.im), complex(1 + e.re, e.im))
  return subtract(divide(tanh, x), complex(1))
}

/** Demagnetisation factors of an oblate spheroid, thickness/diameter k: in its plane and along its normal. */
export function oblateDemagnetisation(k: number): { inPlane: number; normal: number } {
  if (k >= 0.9999) return { inPlane: 1 / 3, normal: 1 / 3 }
  const e = Math.sqrt(1 - k * k)
  const normal = (1 - (k / e) * Math.asin(e)) / (e * e)
  return { inPlane: (1 - normal) / 2, normal }
}

/** Magnetised body: V·m/(1 + N·m), m the mean flux density over μ0·H minus 1. */
function magnetised(excess: Complex, demagnetisation: number, volumeM3: number): Complex {
  return scale(divide(excess, add(complex(1), scale(excess, demagnetisation))), volumeM3)
}

/**
 * Round flake of face A and thickness t with the field in its plane, m³: V·m/(1 + N·m),
 * m = μr·tanh(x)/x − 1 with x = γt/2 (infinite plate, exact; −iωμ0σt²/12 for a thin non-magnetic one),
 * N the oblate spheroid's (J. A. Osborn 1945, Phys. Rev. 67:351). Joining the two is an assumption.
 */
export function flakeInPlane(
  faceM2: number,
  thicknessM: number,
  metal: Conductor,
  frequencyHz: number,
): Complex {
  const mu = metal.relativePermeability
  const tanh = tanhExcess(skinArgument(thicknessM / 2, metal, frequencyHz))
  const excess = complex(mu * tanh.re + (mu - 1), mu * tanh.im)
  const radiusM = Math.sqrt(faceM2 / Math.PI)
  return magnetised(excess, oblateDemagnetisation(thicknessM / (2 * radiusM)).inPlane, faceM2 * thicknessM)
}

/**
 * The same flake with the field along its normal, m³: eddy currents as in a thin disc whose sheet
 * conductance is the share of σt the skin depth leaves, σt·|tanh(x)/x|, plus the (small) magnetisation
 * V(μr − 1)/(1 + N(μr − 1)). Assumption between the limits, as for the disc.
 */
export function flakeFaceOn(
  faceM2: number,
  thicknessM: number,
  metal: Conductor,
  frequencyHz: number,
): Complex {
  const radiusM = Math.sqrt(faceM2 / Math.PI)
  const tanh = tanhExcess(skinArgument(thicknessM / 2, metal, frequencyHz))
  const share = Math.hypot(1 + tanh.re, tanh.im)
  const eddy = discPolarizability(radiusM, metal.conductivitySPerM * thicknessM * share, frequencyHz)
  const still = complex(metal.relativePermeability - 1)
  const normal = oblateDemagnetisation(thicknessM / (2 * radiusM)).normal
  return add(eddy, magnetised(still, normal, faceM2 * thicknessM))
}
