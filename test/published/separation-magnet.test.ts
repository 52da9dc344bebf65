import { describe, expect, it } from 'vitest'
import { demagnetisationOf } from '../../src/separation/magnet/demagnetisation.ts'
import { effectiveSusceptibility } from '../../src/separation/magnet/magnetic-pull.ts'

describe('pull on a small ball', () => {
  // Encyclopædia Britannica, 11th edition (1911), volume 17, "Magnetism", equation 38: force proportional to
  // κ/(1 + 4πκ/3), κ the susceptibility in the old units, χ = 4πκ.
  it.each([1e-4, 0.003, 0.1, 1, 80])('follows κ/(1 + 4πκ/3) at κ = %f', (kappa) => {
    const old = kappa / (1 + (4 / 3) * Math.PI * kappa)
    expect(effectiveSusceptibility(4 * Math.PI * kappa, 1 / 3) / (4 * Math.PI * old)).toBeCloseTo(1, 12)
  })
})

describe('demagnetising factors', () => {
  // Bozorth, Ferromagnetism (1951), table of spheroids, N/4π (from memory), within one of the last digit
  // given there: some of its entries are cut, not rounded.
  it.each([
    [2, 0.1735, 1e-4],
    [5, 0.0558, 1e-4],
    [10, 0.0203, 1e-4],
    [20, 0.00675, 1e-5],
  ])('prolate spheroid %d : 1 along its axis', (aspect, published, digit) => {
    const { along } = demagnetisationOf({ kind: 'wire', diameterMm: 1, lengthMm: aspect })
    expect(Math.abs(along - published)).toBeLessThan(digit)
  })

  it.each([
    [2, 0.5272],
    [5, 0.7505],
    [10, 0.8608],
  ])('oblate spheroid %d : 1 through its thin way', (aspect, published) => {
    const { across } = demagnetisationOf({ kind: 'flake', thicknessMm: 1, faceMm2: aspect ** 2 })
    expect(Math.abs(across - published)).toBeLessThan(1e-4)
  })
})
