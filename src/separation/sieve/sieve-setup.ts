import type { Point } from '../../contract/index.ts'
import { type FigureId, figures, sieveOpeningsMm } from '../../reference/separation.ts'
import { mm } from '../plain-number.ts'
import { asRange, type Trail } from '../trail.ts'
import { type GrainSizes, grainClassesMm } from './grain-sizes.ts'
import { chooseMesh } from './mesh-choice.ts'
import { presentationsFor, productOnSieve } from './sieve-passage.ts'

/** A sieve over this product: the opening, and how often a piece is offered one (fewest, most). */
export interface Sieve {
  readonly meshMm: number
  readonly presentations: readonly [number, number]
  readonly lost: readonly [number, number] | null
  /** Condition on the opening. */
  readonly condition: string
  readonly steps: { readonly mesh: string; readonly presentations: string }
}

/** A sieve that the grains fall through. */
export function granularSieve(meshMm: number | undefined, point: Point, trail: Trail): Sieve {
  const { product } = point
  const id: FigureId = product.structure === 'powder' ? 'grain-spread-powder' : 'grain-spread-granular'
  const grains: GrainSizes = { medianMm: product.grainMm, spread: figures[id].value }
  const wanted = chooseMesh(grains)
  const grainStep = trail.entered('grain', 'grain size of the food', 'd', product.grainMm, 'mm')
  const largestStep = trail.add('largest-grain', {
    label: 'largest product particle',
    symbol: 'd_max',
    value: wanted.largestGrainMm,
    unit: 'mm',
    formula: 'd · exp(s · z), z the upper quantile of the tail',
    inputs: [grainStep, trail.figure(id), trail.figure('largest-grain-tail')],
  })
  const chosenStep = trail.add('mesh-needed', {
    label: 'opening that clears the product',
    symbol: 'a',
    value: wanted.meshMm,
    unit: 'mm',
    formula: 'next nominal opening above clearance · d_max',
    inputs: [largestStep, trail.figure('mesh-clearance')],
    sources: [sieveOpeningsMm.source],
  })
  const mesh = meshMm ?? wanted.meshMm
  const meshStep =
    meshMm === undefined
      ? chosenStep
      : trail.add('mesh', {
          label: 'opening of the sieve',
          symbol: 'a',
          value: meshMm,
          unit: 'mm',
          formula: 'given by the machine',
        })
  const classes = grainClassesMm(grains)
  const [leastLoss, mostLoss] = figures['sieve-accepted-loss'].range
  const fewest = presentationsFor(classes, wanted.meshMm, mostLoss)
  const most = presentationsFor(classes, wanted.meshMm, leastLoss)
  const presentationsStep = trail.add('presentations', {
    label: 'times a piece is offered an opening',
    symbol: 'n',
    value: asRange(fewest, most),
    formula:
      'as often as the product needs on the opening that clears it: mean of (1 − (1 − d/a)²)^n over the grains = L',
    inputs: [chosenStep, grainStep, trail.figure(id), trail.figure('sieve-accepted-loss')],
    sources: ['sieve-passage'],
  })
  const lost = [productOnSieve(classes, mesh, most), productOnSieve(classes, mesh, fewest)] as const
  trail.add('product-lost', {
    label: 'good product that leaves with the overs',
    value: asRange(lost[0], lost[1]),
    unit: 'share',
    formula: 'mean of (1 − (1 − d/a)²)^n over the grains',
    inputs: [meshStep, presentationsStep, grainStep],
    sources: ['sieve-passage'],
  })
  const blinds = mesh < wanted.largestGrainMm
  const condition = blinds
    ? `The opening of ${mm(mesh, 3)} does not clear grains up to ${mm(wanted.largestGrainMm, 3)}: it blinds and throws out good product; ${mm(wanted.meshMm, 3)} would clear them.`
    : `The opening must clear the largest grain (about ${mm(wanted.largestGrainMm, 3)} here; ${mm(mesh, 3)} does), stay whole, and be checked for torn wires.`
  return {
    meshMm: mesh,
    presentations: [fewest, most],
    lost,
    condition,
    steps: { mesh: meshStep, presentations: presentationsStep },
  }
}

/** A strainer in a pumped liquid, whose own pieces all pass. */
export function strainer(meshMm: number | undefined, trail: Trail): Sieve {
  const mesh = meshMm ?? figures['strainer-mesh'].value
  return {
    meshMm: mesh,
    presentations: figures['strainer-presentations'].range,
    lost: null,
    condition: `The liquid and all that belongs in it must pass ${mm(mesh, 3)}; the strainer must be opened and looked into.`,
    steps: {
      mesh:
        meshMm === undefined
          ? trail.figure('strainer-mesh')
          : trail.add('mesh', {
              label: 'opening of the strainer',
              symbol: 'a',
              value: meshMm,
              unit: 'mm',
              formula: 'given by the machine',
            }),
      presentations: trail.figure('strainer-presentations'),
    },
  }
}
