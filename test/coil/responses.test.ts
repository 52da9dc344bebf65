import { expect, test } from 'vitest'
import { blockPolarizability } from '../../src/coil/food/product-block.ts'
import { couplingPeak } from '../../src/coil/opening/coil-field.ts'
import { couplingConstant } from '../../src/coil/opening/geometry-factor.ts'
import { closedTube } from '../../src/coil/pack/closed-wrap.ts'
import { rectanglePolarizability } from '../../src/coil/piece/sheet.ts'
import type { Conductor } from '../../src/coil/piece/skin-argument.ts'
import { spherePolarizability } from '../../src/coil/piece/sphere.ts'
import { torsionConstantM4 } from '../../src/coil/piece/torsion.ts'
import { wireAcrossFieldPerM, wireAlongFieldPerM } from '../../src/coil/piece/wire.ts'
import { type Complex, magnitude } from '../../src/numerics/complex.ts'
import { fixture } from './sample-point.ts'

// Source: computed independently, in 40-digit arithmetic where the fixture says so.
interface Responses {
  metals: Record<string, { sigma: number; mu_r: number }>
  sphere: [string, number, number, number, number][]
  wirePerM: [string, number, number, number, number, number, number][]
  block: [number, number, number, number, number, number, number, number, number][]
  tube: [number, number, number, number, number, number, number, number][]
  sheet: [number, number, number, number, number, number][]
  coil: [number, number, number, number, number, number][]
}

const responses = fixture<Responses>('responses')

const metal = (id: string): Conductor => ({
  conductivitySPerM: responses.metals[id]!.sigma,
  relativePermeability: responses.metals[id]!.mu_r,
})

/** Largest relative error of the two parts. */
const error = (value: Complex, re: number, im: number): number =>
  Math.max(Math.abs(value.re / re - 1), Math.abs(value.im / im - 1))

test('the sphere agrees with 288 independent values in both parts to 1e-9', () => {
  expect(responses.sphere).toHaveLength(288)
  for (const [id, diameterMm, f, re, im] of responses.sphere) {
    expect(
      error(spherePolarizability(diameterMm / 2000, metal(id), f), re, im),
      `${id} ${diameterMm} ${f}`,
    ).toBeLessThan(1e-9)
  }
})

test('the long wire agrees with independent values along and across the field to 1e-9', () => {
  expect(responses.wirePerM).toHaveLength(27)
  for (const [id, diameterMm, f, axialRe, axialIm, acrossRe, acrossIm] of responses.wirePerM) {
    const radiusM = diameterMm / 2000
    expect(error(wireAlongFieldPerM(radiusM, metal(id), f), axialRe, axialIm)).toBeLessThan(1e-9)
    expect(error(wireAcrossFieldPerM(radiusM, metal(id), f), acrossRe, acrossIm)).toBeLessThan(1e-9)
  }
})

test('the food block and its torsion constant agree to 1e-9', () => {
  for (const [
    widthM,
    heightM,
    lengthM,
    conductivitySPerM,
    relativePermittivity,
    f,
    re,
    im,
    j,
  ] of responses.block) {
    const block = { widthM, heightM, lengthM, conductivitySPerM, relativePermittivity }
    expect(error(blockPolarizability(block, f), re, im)).toBeLessThan(1e-9)
    expect(Math.abs(torsionConstantM4(widthM, heightM) / j - 1)).toBeLessThan(1e-9)
  }
})

test('the closed tube agrees to 1e-9, signal and field left inside', () => {
  for (const [area, perimeter, length, conductance, f, re, im, inside] of responses.tube) {
    const tube = closedTube(area, perimeter, length, conductance, f)
    expect(error(tube.alpha, re, im)).toBeLessThan(1e-9)
    expect(Math.abs(magnitude(tube.inside) / inside - 1)).toBeLessThan(1e-9)
  }
})

test('the rectangular sheet agrees to 1e-9', () => {
  for (const [width, length, conductance, f, re, im] of responses.sheet) {
    expect(error(rectanglePolarizability(width, length, conductance, f), re, im)).toBeLessThan(1e-9)
  }
})

test('peak, place and lobe of the coil agree to 1e-3 (both on grids), and the fit of c exactly', () => {
  for (const [widthRatio, spacingRatio, peak, at, lobe, fit] of responses.coil) {
    const own = couplingPeak(widthRatio, spacingRatio)
    expect(Math.abs(own.peak / peak - 1)).toBeLessThan(1e-3)
    expect(Math.abs(own.at - at)).toBeLessThan(1e-3)
    expect(Math.abs(own.lobeLength / lobe - 1)).toBeLessThan(1e-3)
    expect(couplingConstant(widthRatio)).toBeCloseTo(fit, 12)
    expect(Math.abs(couplingConstant(widthRatio) / peak - 1)).toBeLessThan(0.031)
  }
})
