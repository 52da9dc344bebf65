import type { Point } from '../../contract/index.ts'
import { figures } from '../../reference/separation.ts'
import type { RemovalFinding } from '../assessment.ts'
import { GRAVITY_M_PER_S2 } from '../physical-constants.ts'
import { equivalentDiameterMm } from '../piece-shape.ts'
import type { RemovalModel, VariantShare } from '../removal-model.ts'
import { asRange, type Trail } from '../trail.ts'
import type { Variant } from '../variant.ts'
import { demagnetisationOf } from './demagnetisation.ts'
import { captureDepthM } from './magnet-capture.ts'
import { type Magnet, type MagnetMachine, magnetOf } from './magnet-field.ts'
import { type Surroundings, type SurroundingsRange, surroundingsOf } from './magnet-surroundings.ts'
import { addedIron, beyondMagnets, magnetCondition, magnetWords, NEVER_MAGNETIC } from './magnet-words.ts'
import { magneticRange } from './magnetic-material.ts'
import { type Magnetism, pullNPerM3 } from './magnetic-pull.ts'

/** What one end of the range comes to. */
interface Capture {
  /** Pull at the surface over the weight of the piece. */
  readonly weights: number
  readonly depthM: number
  readonly share: number
}

function capture(
  magnet: Magnet,
  around: Surroundings,
  variant: Variant,
  magnetism: Magnetism,
  demagnetising: number,
  holdingWeights: number,
): Capture {
  const densityKgPerM3 = variant.material.densityGPerCm3 * 1000
  const pull = (distanceM: number) => pullNPerM3(magnet.field, distanceM, magnetism, demagnetising)
  const weights = pull(0) / (densityKgPerM3 * GRAVITY_M_PER_S2)
  if (weights < holdingWeights) return { weights, depthM: 0, share: 0 }
  const depthM = captureDepthM({
    ...around,
    pullNPerM3: pull,
    densityKgPerM3,
    diameterM: equivalentDiameterMm(variant.shape) / 1000,
  })
  return { weights, depthM, share: depthM / around.layerM }
}

function nothing(variant: Variant, trail: Trail): VariantShare {
  const step = trail.add(`${variant.id}.share`, {
    label: `share of ${variant.material.label} the magnet keeps`,
    value: 0,
    unit: 'share',
    formula: 'not magnetic',
    inputs: [variant.step],
  })
  return { low: 0, high: 0, ceiling: 0, step }
}

function shareOf(magnet: Magnet, around: SurroundingsRange, variant: Variant, trail: Trail): VariantShare {
  const magnetic = magneticRange(variant.material, trail)
  if (!magnetic) return nothing(variant, trail)
  const demagnetising = demagnetisationOf(variant.shape)
  const [leastHold, mostHold] = figures['magnet-holding'].range
  const [worstPass, bestPass] = figures['magnet-single-pass'].range
  const { worst, best } = around
  const low = capture(magnet, worst, variant, magnetic.weakest, demagnetising.across, mostHold)
  const high = capture(magnet, best, variant, magnetic.strongest, demagnetising.along, leastHold)
  const free: Surroundings = { ...best, lifts: false, resistancePa: 0, liquid: null }
  const ideal = capture(magnet, free, variant, magnetic.strongest, demagnetising.along, leastHold)
  const shapeStep = trail.add(`${variant.id}.demagnetising`, {
    label: 'demagnetising factor, across to along the piece',
    symbol: 'N',
    value: asRange(demagnetising.across, demagnetising.along),
    formula: 'spheroid of the same aspect; 1/3 for a sphere',
    inputs: [variant.step],
    sources: ['osborn-demagnetisation'],
  })
  const densityStep = trail.add(`density.${variant.material.id}`, {
    label: `density of ${variant.material.label}`,
    symbol: 'ρ',
    value: variant.material.densityGPerCm3,
    unit: 'g/cm³',
    formula: 'listed',
    sources: [variant.material.source],
  })
  const weightsStep = trail.add(`${variant.id}.weights`, {
    label: 'pull at the surface over the weight of the piece',
    value: asRange(low.weights, high.weights),
    formula: 'min(χ_eff·B₀, Bs)·k·B₀/(μ0·ρ·g), χ_eff = (μr − 1)/(1 + N·(μr − 1))',
    inputs: [magnet.step, magnetic.step, shapeStep, densityStep],
    sources: ['sphere-force'],
  })
  const depthStep = trail.add(`${variant.id}.depth`, {
    label: 'depth of the layer it is drawn from in time',
    symbol: 'z',
    value: asRange(low.depthM * 1000, high.depthM * 1000),
    unit: 'mm',
    formula:
      'largest z with net pull above 0 and √(2zρ/f) + z/u(f) ≤ t, f the pull less weight and 1.5·P/d; 0 where the pull does not hold',
    inputs: [weightsStep, ...around.steps, trail.figure('magnet-holding')],
    sources: ['granular-drag', 'beris-1985', 'haider-levenspiel'],
  })
  const lowShare = worstPass * low.share
  const highShare = bestPass * high.share
  const step = trail.add(`${variant.id}.share`, {
    label: `share of ${variant.material.label} the magnet keeps`,
    value: asRange(lowShare, highShare),
    unit: 'share',
    formula: 'single pass · z / depth of the layer',
    inputs: [depthStep, trail.figure('magnet-single-pass')],
  })
  return {
    low: Math.min(lowShare, highShare),
    high: highShare,
    ceiling: Math.max(highShare, bestPass * ideal.share),
    step,
  }
}

/** A magnet beside or in the product stream. */
export function magnetModel(machine: MagnetMachine, point: Point, trail: Trail): RemovalModel {
  const magnet = magnetOf(machine, trail)
  const around = surroundingsOf(point, trail)
  const iron = addedIron(point, trail)
  const goodProductLost: RemovalFinding['goodProductLost'] = iron ? [0, iron.share] : null
  return {
    goodProductLost,
    goodProductLostUnit: iron ? 'share of the product' : '',
    shareOf: (variant) => shareOf(magnet, around, variant, trail),
    wordsFor: (variants, shares) => ({
      neverRemoves: NEVER_MAGNETIC,
      condition: beyondMagnets(shares, variants)
        ? 'Nothing changes this.'
        : `${magnetCondition(magnet, around, point)}${iron?.words ?? ''}`,
      because: magnetWords(around, shares, variants),
    }),
  }
}
