import type { Point } from '../../contract/index.ts'
import { figures } from '../../reference/separation.ts'
import { arealMassKgPerM2, bulkDensityKgPerM3, coverage, openShare } from '../layer-coverage.ts'
import { asRange, type Trail } from '../trail.ts'

/** The layer as it passes the cameras. */
export interface SortingLayer {
  readonly arealKgPerM2: number
  /** Null for whole pieces of food, which are looked at one by one. */
  readonly coverage: number | null
  /** Share of foreign pieces open to the camera, worst and best. */
  readonly open: readonly [number, number]
  /** Speed at which the same throughput would lie as a single layer, m/min; null where it does, or cannot be said. */
  readonly singleLayerMPerMin: number | null
  readonly step: string
}

/** Food per area at the sorter: from the throughput where it is known, else from the depth of the layer. */
function arealMass(point: Point, widthMm: number, trail: Trail): { kgPerM2: number; step: string } {
  if (point.kgPerHour !== null) {
    const kgPerM2 = arealMassKgPerM2(point.kgPerHour, widthMm, point.speedMPerMin)
    const step = trail.add('areal-mass', {
      label: 'food per area of the layer',
      symbol: 'm',
      value: kgPerM2,
      unit: 'kg/m²',
      formula: 'throughput / (width · speed)',
      inputs: [
        trail.entered('throughput', 'throughput', '', point.kgPerHour, 'kg/h'),
        trail.entered('speed', 'speed of the layer', 'v', point.speedMPerMin, 'm/min'),
        trail.add('width', {
          label: 'width the food is spread to',
          value: widthMm,
          unit: 'mm',
          formula: 'given by the machine, else of the point',
        }),
      ],
    })
    return { kgPerM2, step }
  }
  const kgPerM2 = (bulkDensityKgPerM3(point) * point.heightMm) / 1000
  const step = trail.add('areal-mass', {
    label: 'food per area of the layer',
    symbol: 'm',
    value: kgPerM2,
    unit: 'kg/m²',
    formula: 'ρ · packing · depth (no throughput given)',
    inputs: [trail.entered('depth', 'depth of the layer', 'H', point.heightMm, 'mm')],
  })
  return { kgPerM2, step }
}

/** How the food lies under the cameras of a sorter of a given width. */
export function sortingLayer(point: Point, widthMm: number, trail: Trail): SortingLayer {
  const { product } = point
  const areal = arealMass(point, widthMm, trail)
  if (product.structure !== 'granular' && product.structure !== 'plates') {
    const [low, high] = figures['solid-face-seen'].range
    return {
      arealKgPerM2: areal.kgPerM2,
      coverage: null,
      open: [low, high],
      singleLayerMPerMin: null,
      step: trail.figure('solid-face-seen'),
    }
  }
  const plates = product.structure === 'plates'
  const thicknessMm = plates ? product.grainMm : (2 / 3) * product.grainMm
  const kappa = coverage(areal.kgPerM2, product.densityGPerCm3 * 1000, thicknessMm)
  const kappaStep = trail.add('coverage', {
    label: 'area the food would cover over the area of the belt',
    symbol: 'κ',
    value: kappa,
    formula: plates ? 'm / (ρ · plate thickness)' : 'm / (ρ · 2/3 · d)',
    inputs: [
      areal.step,
      trail.entered('grain', plates ? 'plate thickness' : 'grain size', 'd', product.grainMm, 'mm'),
      trail.entered('food-density', 'density of the food', 'ρ', product.densityGPerCm3, 'g/cm³'),
    ],
    sources: ['layer-coverage'],
  })
  const open = openShare(kappa)
  const wanted = figures['single-layer-coverage'].value
  return {
    arealKgPerM2: areal.kgPerM2,
    coverage: kappa,
    open,
    singleLayerMPerMin:
      kappa > wanted && point.kgPerHour !== null ? (point.speedMPerMin * kappa) / wanted : null,
    step: trail.add('open', {
      label: 'share of foreign pieces not covered by food',
      value: asRange(open[0], open[1]),
      unit: 'share',
      formula: 'worst exp(−κ), best min(1, 1/κ)',
      inputs: [kappaStep],
      sources: ['layer-coverage'],
    }),
  }
}
