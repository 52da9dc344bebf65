import type { Point } from '../../contract/index.ts'
import { archetypes } from '../../reference/index.ts'
import { figures } from '../../reference/separation.ts'
import type { RemovalMachine } from '../assessment.ts'
import { visibleWidthMm } from '../piece-shape.ts'
import { mm, plain } from '../plain-number.ts'
import type { RemovalModel, VariantShare } from '../removal-model.ts'
import { asRange, type Trail } from '../trail.ts'
import type { Variant } from '../variant.ts'
import { type SortingLayer, sortingLayer } from './sorting-layer.ts'
import { visibleDifference } from './visible-difference.ts'

type OpticalMachine = Extract<RemovalMachine, { family: 'optical' }>

/**
 * Good product one blast takes along, g: food per area times the area that is hit, (w + d)·(v·t + d) with
 * w the width of an ejector, v·t the length that passes while it blows, and d the grain, whose touching edge
 * is enough. m: kg/m²; mm; s. Assumption of geometry; sources of the figures: `sorter-practice`.
 */
export function lostPerBlastG(
  arealKgPerM2: number,
  grainMm: number,
  speedMPerMin: number,
  ejectorMm: number,
  blowMs: number,
): number {
  const passedMm = (speedMPerMin / 60) * blowMs
  return arealKgPerM2 * (ejectorMm + grainMm) * (passedMm + grainMm) * 1e-3
}

/** Whether a piece spans enough pixels; worst and best, each 0 or 1. */
const resolved = (widthMm: number, pixelMm: number): readonly [number, number] => {
  const [fewest, most] = figures['pixels-across'].range
  return [widthMm >= most * pixelMm ? 1 : 0, widthMm >= fewest * pixelMm ? 1 : 0]
}

function shareOf(
  pixelMm: number,
  pixelStep: string,
  layer: SortingLayer,
  food: string,
  variant: Variant,
  trail: Trail,
): VariantShare {
  const colour = visibleDifference(food, variant.material.id)
  const fine = resolved(visibleWidthMm(variant.shape), pixelMm)
  const [faceLow, faceHigh] = figures['face-seen'].range
  const [outLow, outHigh] = figures.ejection.range
  const low = outLow * faceLow * layer.open[0] * colour.low * fine[0]
  const ceiling = outHigh * faceHigh * layer.open[1] * colour.high
  const high = ceiling * fine[1]
  const colourStep = trail.add(`difference.${variant.material.id}`, {
    label: `share of ${variant.material.label} that colour tells from the food`,
    value: asRange(colour.low, colour.high),
    unit: 'share',
    formula: `${colour.foreign.join(', ')} among ${colour.food.join(', ') || 'a food of unknown colour'}`,
    inputs: colour.figures.map((id) => trail.figure(id)),
    sources: ['visible-difference'],
  })
  const fineStep = trail.add(`${variant.id}.pixels`, {
    label: 'pixels the piece spans',
    value: visibleWidthMm(variant.shape) / pixelMm,
    formula: 'second-smallest dimension / pixel size',
    inputs: [variant.step, pixelStep, trail.figure('pixels-across')],
  })
  const step = trail.add(`${variant.id}.share`, {
    label: `share of ${variant.material.label} the sorter throws out`,
    value: asRange(low, high),
    unit: 'share',
    formula: 'thrown out · face seen · open · told apart, 0 where it spans too few pixels',
    inputs: [layer.step, colourStep, fineStep, trail.figure('face-seen'), trail.figure('ejection')],
  })
  return { low, high, ceiling, step }
}

function conditionOf(layer: SortingLayer): string {
  if (layer.coverage === null)
    return 'The pieces of food lie singly; only what sits on the side towards the camera is seen.'
  const wanted = figures['single-layer-coverage'].value
  if (layer.coverage <= wanted)
    return `A single layer: the food covers ${plain(100 * layer.coverage)} % of the belt here. Lamps and windows kept clean.`
  const faster =
    layer.singleLayerMPerMin === null
      ? ''
      : `; at ${plain(layer.singleLayerMPerMin)} m/min the same throughput would cover ${plain(100 * wanted)} %`
  return `A single layer, which this is not: the grains would cover the belt ${plain(layer.coverage)} times${faster}.`
}

function becauseOf(
  food: string,
  shares: readonly VariantShare[],
  variants: readonly Variant[],
  pixelMm: number,
): string {
  const width = Math.max(...variants.map((v) => visibleWidthMm(v.shape)))
  if (shares.every((s) => s.high === 0))
    return `${mm(width)} across is too few pixels of ${mm(pixelMm)} to be told from a speck.`
  const told = variants.map((v) => visibleDifference(food, v.material.id))
  if (told.every((t) => t.figures.every((id) => id === 'colour-same')))
    return 'It has the colour of the food; only its shape or surface may give it away.'
  if (told.some((t) => t.low === 0))
    return 'It may have the colour of the food or a quite different one: nothing is certain to go.'
  if (shares.some((s) => s.low === 0))
    return `It looks different from the food, but ${mm(width)} across is few pixels of ${mm(pixelMm)}.`
  return 'It looks different from the food wherever it lies open.'
}

/** A camera sorter over a spread layer. */
export function opticalModel(machine: OpticalMachine, point: Point, trail: Trail): RemovalModel {
  const usual = archetypes.get('optical-sorter')
  const usualPixelMm = usual?.family === 'optical' ? usual.pixelMm : 1
  const pixelMm = machine.pixelMm ?? usualPixelMm
  const pixelStep = trail.add('pixel', {
    label: 'pixel size at the food',
    value: pixelMm,
    unit: 'mm',
    formula: machine.pixelMm === undefined ? 'usual of the class' : 'given by the machine',
    sources: usual?.sources ?? [],
  })
  const layer = sortingLayer(point, machine.lanesWidthMm ?? point.widthMm * point.lanes, trail)
  const sizeMm = layer.coverage === null ? Math.min(point.widthMm, point.lengthMm) : point.product.grainMm
  const [narrow, wide] = figures['ejector-pitch'].range
  const [brief, long] = figures['ejector-time'].range
  const lost = [
    lostPerBlastG(layer.arealKgPerM2, sizeMm, point.speedMPerMin, narrow, brief),
    lostPerBlastG(layer.arealKgPerM2, sizeMm, point.speedMPerMin, wide, long),
  ] as const
  trail.add('product-lost', {
    label: 'good product thrown out with one foreign piece',
    value: asRange(lost[0], lost[1]),
    unit: 'g',
    formula: 'm · (w + d) · (v·t + d)',
    inputs: [layer.step, trail.figure('ejector-pitch'), trail.figure('ejector-time')],
  })
  return {
    goodProductLost: lost,
    goodProductLostUnit: 'g per piece thrown out',
    shareOf: (variant) => shareOf(pixelMm, pixelStep, layer, point.product.food, variant, trail),
    wordsFor: (variants, shares) => ({
      neverRemoves:
        'What has the colour and shape of the food, what is hidden inside or under it, and what is smaller than a few pixels.',
      condition: conditionOf(layer),
      because: becauseOf(point.product.food, shares, variants, pixelMm),
    }),
  }
}
