/**
 * Field per ampere of one rectangular loop w × h on its axis at distance z, 1/m (Biot–Savart, exact):
 * w·h/(4πD)·[1/(w²/4 + z²) + 1/(h²/4 + z²)], D = √(w²/4 + h²/4 + z²).
 */
export function loopFieldPerM(widthM: number, heightM: number, zM: number): number {
  const w2 = (widthM * widthM) / 4
  const h2 = (heightM * heightM) / 4
  const z2 = zM * zM
  return ((widthM * heightM) / (4 * Math.PI * Math.sqrt(w2 + h2 + z2))) * (1 / (w2 + z2) + 1 / (h2 + z2))
}

/**
 * Coupling of a small target at z on the axis of three loops, transmitter at 0 and two opposed receivers
 * at ±s, 1/m²: G(z) = h(z)·[h(z − s) − h(z + s)], h = H/I. The voltage is −iωμ0·α·I·G (reciprocity). Odd in z.
 */
export function couplingPerM2(widthM: number, heightM: number, spacingM: number, zM: number): number {
  const field = (z: number) => loopFieldPerM(widthM, heightM, z)
  return field(zM) * (field(zM - spacingM) - field(zM + spacingM))
}

export interface CouplingPeak {
  /** max G·h², no unit. */
  readonly peak: number
  /** Where, z/h. */
  readonly at: number
  /** ∫|G|dz over one lobe, z from 0 to reach·h, over max G, divided by h. */
  readonly lobeLength: number
}

/** Peak and lobe of G for w/h and s/h: a grid of steps over 0 to reach·h, trapezoid for the integral. */
export function couplingPeak(
  widthRatio: number,
  spacingRatio: number,
  reach = 1.5,
  steps = 3000,
): CouplingPeak {
  let peak = 0
  let at = 0
  let sum = 0
  for (let k = 0; k <= steps; k++) {
    const z = (reach * k) / steps
    const g = Math.abs(couplingPerM2(widthRatio, 1, spacingRatio, z))
    if (g > peak) {
      peak = g
      at = z
    }
    sum += (k === 0 || k === steps ? 0.5 : 1) * g
  }
  return { peak, at, lobeLength: (sum * reach) / steps / peak }
}
