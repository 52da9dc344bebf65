import type { Point } from '../../contract/index.ts'
import { figures } from '../../reference/separation.ts'
import type { RemovalModel, VariantShare } from '../removal-model.ts'
import { asRange, type Trail } from '../trail.ts'
import { densitiesGPerCm3, type Variant } from '../variant.ts'
import { separatorCondition, settlingWords, staysWords } from './density-words.ts'
import { equalSizeMm, leaves, speedRange } from './separated-piece.ts'
import { type DensityMachine, grainsBeyondCut, type Separator, separatorFor } from './separator.ts'

function shareOf(separator: Separator, variant: Variant, trail: Trail): VariantShare {
  const { material } = variant
  const speeds = speedRange(separator, variant)
  const [worst, best] = figures['separator-single-run'].range
  const range = leaves(separator, variant)
  const low = worst * range[0]
  const high = best * range[1]
  const densityStep = trail.add(`density.${material.id}`, {
    label: `density of ${material.label}`,
    symbol: 'ρ',
    value: asRange(...densitiesGPerCm3(material)),
    unit: 'g/cm³',
    formula: 'listed',
    sources: [material.source],
  })
  const speedStep = trail.add(`${variant.id}.speed`, {
    label: 'settling speed of the piece',
    symbol: 'v',
    value: asRange(speeds[0], speeds[1]),
    unit: 'm/s',
    formula: 'terminal velocity over its densities and sphericities',
    inputs: [
      variant.step,
      densityStep,
      trail.figure(variant.shape.kind === 'sphere' ? 'fragment-sphericity' : 'slim-tumbling'),
    ],
    sources: ['haider-levenspiel'],
  })
  const equalMm = equalSizeMm(separator, variant)
  if (equalMm !== null)
    trail.add(`equal.${material.id}`, {
      label: `size at which ${material.label} settles like the food`,
      symbol: 'd_equal',
      value: equalMm,
      unit: 'mm',
      formula: 'v(d_equal) = v_food at one shape; for large pieces d·(ρ_food − ρ_f)/(ρ − ρ_f)',
      inputs: [densityStep, separator.steps.food],
      sources: ['haider-levenspiel', 'equal-settling'],
    })
  const step = trail.add(`${variant.id}.share`, {
    label: `share of ${material.label} that leaves the food`,
    value: asRange(low, high),
    unit: 'share',
    formula:
      'single run · mean over the shapes of Φ(ln(v/(r·v_food))/s) for the heavy side, Φ(−ln(r·v/v_food)/s) for the light; worst one side in a free stream, best either side or a fluidised deck',
    inputs: [
      speedStep,
      separator.steps.food,
      separator.steps.ratio,
      trail.figure('separator-unevenness'),
      trail.figure('separator-single-run'),
    ],
    sources: ['fluidised-deck'],
  })
  const bothFloat =
    separator.foodSpeeds[0] <= 0 && densitiesGPerCm3(material)[1] * 1000 <= separator.fluid.densityKgPerM3
  return { low, high, ceiling: bothFloat ? 0 : best, step }
}

/** A stream of air or water that parts what settles faster or slower than the food. */
export function densityModel(machine: DensityMachine, point: Point, trail: Trail): RemovalModel {
  const separator = separatorFor(machine, point, trail)
  const blur = figures['separator-unevenness'].value
  const lost =
    separator.foodSpeeds[0] > 0
      ? grainsBeyondCut(separator.ratio, figures['grain-spread-granular'].range, blur)
      : null
  if (lost)
    trail.add('product-lost', {
      label: 'good product beyond the cut',
      value: asRange(lost[0], lost[1]),
      unit: 'share',
      formula: 'one to two upper tails of ln r / √(s² + (spread/2)²)',
      inputs: [
        separator.steps.ratio,
        trail.figure('grain-spread-granular'),
        trail.figure('separator-unevenness'),
      ],
    })
  return {
    goodProductLost: lost,
    goodProductLostUnit: lost ? 'share of the product' : '',
    shareOf: (variant) => shareOf(separator, variant, trail),
    wordsFor: (variants) => ({
      neverRemoves: staysWords(separator, variants),
      condition: separatorCondition(separator),
      because: settlingWords(separator, variants),
    }),
  }
}
