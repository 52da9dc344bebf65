/** Complex numbers as plain immutable pairs; only what induction needs. */
export interface Complex {
  readonly re: number
  readonly im: number
}

export const complex = (re: number, im = 0): Complex => ({ re, im })

export const add = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im })

export const subtract = (a: Complex, b: Complex): Complex => ({ re: a.re - b.re, im: a.im - b.im })

export const scale = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor })

export const multiply = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
})

/** Quotient; the smaller part of the divisor is scaled first so that large arguments do not overflow. */
export function divide(a: Complex, b: Complex): Complex {
  if (Math.abs(b.re) >= Math.abs(b.im)) {
    const ratio = b.im / b.re
    const scaleBy = b.re + b.im * ratio
    return { re: (a.re + a.im * ratio) / scaleBy, im: (a.im - a.re * ratio) / scaleBy }
  }
  const ratio = b.re / b.im
  const scaleBy = b.re * ratio + b.im
  return { re: (a.re * ratio + a.im) / scaleBy, im: (a.im * ratio - a.re) / scaleBy }
}

export const magnitude = (a: Complex): number => Math.hypot(a.re, a.im)

/** Angle in degrees, −180 to 180. */
export const phaseDeg = (a: Complex): number => (Math.atan2(a.im, a.re) * 180) / Math.PI

/** e to the power a. */
export function exponential(a: Complex): Complex {
  const size = Math.exp(a.re)
  return { re: size * Math.cos(a.im), im: size * Math.sin(a.im) }
}

/** coefficients[0] + coefficients[1]·z + … (Horner). */
export function polynomial(z: Complex, coefficients: readonly number[]): Complex {
  let sum: Complex = { re: 0, im: 0 }
  for (let k = coefficients.length - 1; k >= 0; k--) {
    sum = { re: sum.re * z.re - sum.im * z.im + coefficients[k]!, im: sum.re * z.im + sum.im * z.re }
  }
  return sum
}
