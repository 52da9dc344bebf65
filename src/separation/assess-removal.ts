import type { Contaminant, Point } from '../contract/index.ts'
import type { RemovalAssessment, RemovalFinding, RemovalMachine } from './assessment.ts'
import { densityModel } from './density/density.ts'
import { magnetModel } from './magnet/magnet.ts'
import { opticalModel } from './optical/optical.ts'
import { share } from './plain-number.ts'
import type { RemovalModel } from './removal-model.ts'
import { sieveModel } from './sieve/sieve.ts'
import { suitsContaminant, suitsPoint } from './suitability.ts'
import { asRange, Trail } from './trail.ts'
import { type Variant, variantsOf } from './variant.ts'

/** One removal machine at one inspection point. */
export interface RemovalInput {
  readonly machine: RemovalMachine
  readonly point: Point
  readonly contaminants: readonly Contaminant[]
  /** Begins every calculation id. */
  readonly prefix: string
}

function modelOf(machine: RemovalMachine, point: Point, trail: Trail): RemovalModel {
  switch (machine.family) {
    case 'sieve':
      return sieveModel(machine, point, trail)
    case 'magnet':
      return magnetModel(machine, point, trail)
    case 'optical':
      return opticalModel(machine, point, trail)
    case 'density':
      return densityModel(machine, point, trail)
  }
}

const notOffered = (contaminant: number, because: string): RemovalFinding => ({
  contaminant,
  applicable: false,
  shareRemoved: [0, 0],
  ceiling: 0,
  neverRemoves: '',
  condition: '',
  goodProductLost: null,
  goodProductLostUnit: '',
  because,
  calculation: '',
})

/** The range over everything the contaminant may be: the worst low, the best high and ceiling. */
function finding(
  model: RemovalModel,
  variants: readonly Variant[],
  contaminant: number,
  trail: Trail,
): RemovalFinding {
  const shares = variants.map((variant) => model.shareOf(variant))
  const low = share(Math.min(...shares.map((s) => s.low)))
  const high = share(Math.max(...shares.map((s) => s.high)))
  const ceiling = share(Math.max(...shares.map((s) => s.ceiling)))
  const calculation = trail.add(`c${contaminant}.share`, {
    label: 'share removed in one run',
    value: asRange(low, high),
    unit: 'share',
    formula:
      shares.length > 1 ? 'from the worst to the best of what the contaminant may be' : 'worst to best',
    inputs: shares.map((s) => s.step),
  })
  return {
    contaminant,
    applicable: true,
    shareRemoved: [low, high],
    ceiling,
    ...model.wordsFor(variants, shares),
    goodProductLost: model.goodProductLost,
    goodProductLostUnit: model.goodProductLostUnit,
    calculation,
  }
}

/**
 * What a sieve, magnet, optical sorter or density separator takes out at a point: per contaminant a share per
 * run as a range, its ceiling, what never leaves, the condition, and the good product it costs. Shares are
 * never ranked. A machine without a use at the point still gives one finding per contaminant that says why.
 * Errors: none for a brief that was parsed; a material without a listing counts as not applicable.
 */
export function assessRemoval({ machine, point, contaminants, prefix }: RemovalInput): RemovalAssessment {
  const trail = new Trail(prefix)
  const place = suitsPoint(machine, point)
  const model = place.suits ? modelOf(machine, point, trail) : null
  const findings = contaminants.map((contaminant, index): RemovalFinding => {
    if (!model) return notOffered(index, place.suits ? '' : place.because)
    const fits = suitsContaminant(machine, point, contaminant)
    if (!fits.suits) return notOffered(index, fits.because)
    const variants = variantsOf(contaminant, index, trail)
    if (variants.length === 0) return notOffered(index, 'The material is not a listed one.')
    return finding(model, variants, index, trail)
  })
  return {
    family: machine.family,
    equipment: machine.id,
    label: machine.label ?? machine.id,
    applicable: findings.some((f) => f.applicable),
    findings,
    calculations: trail.steps,
  }
}
