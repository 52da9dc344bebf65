import { add, type Complex, complex, divide, scale } from '../../numerics/complex.ts'
import type { Conductor } from './skin-argument.ts'
import { axialFluxExcess } from './wire.ts'

/**
 * Demagnetisation factor of a prolate spheroid along its long axis, aspect e = length/diameter ≥ 1:
 * N = (artanh(s)/s − 1)/(e² − 1), s = √(1 − 1/e²); 1/3 for a sphere (J. A. Osborn 1945, Phys. Rev. 67:351).
 */
export function prolateDemagnetisation(aspect: number): number {
  const e2 = aspect * aspect
  if (e2 <= 1.0001) return 1 / 3
  const s = Math.sqrt(1 - 1 / e2)
  return (Math.atanh(s) / s - 1) / (e2 - 1)
}

/**
 * Polarizability of a ferromagnetic wire of length l and radius a, field along it, m³:
 * V·m/(1 + N·m), m = 2μr·I1(x)/(x·I0(x)) − 1, V = πa²l.
 * Assumption: the skin effect of the long wire joined to the demagnetisation of the spheroid of the same
 * aspect; without it a wire of iron would answer 5 to 20 times too strongly.
 */
export function shortFerrousWireAlong(
  radiusM: number,
  lengthM: number,
  metal: Conductor,
  frequencyHz: number,
): Complex {
  const excess = axialFluxExcess(radiusM, metal, frequencyHz)
  const demagnetisation = prolateDemagnetisation(Math.max(1, lengthM / (2 * radiusM)))
  const ratio = divide(excess, add(complex(1), scale(excess, demagnetisation)))
  return scale(ratio, Math.PI * radiusM ** 2 * lengthM)
}
