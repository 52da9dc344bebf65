import type { Point } from '../../contract/index.ts'
import { figures } from '../../reference/separation.ts'
import type { RemovalMachine } from '../assessment.ts'
import { secondSmallestMm } from '../piece-shape.ts'
import { mm } from '../plain-number.ts'
import type { RemovalModel, VariantShare } from '../removal-model.ts'
import { asRange, type Trail } from '../trail.ts'
import type { Variant } from '../variant.ts'
import { pieceChances, stays } from './sieve-passage.ts'
import { granularSieve, type Sieve, strainer } from './sieve-setup.ts'

const SECOND_DECK = 'Small pieces need a second, finer deck under the product; that deck is not counted here.'

/** Shares for one piece: what cannot pass leaves, what could pass may still be lying on the sieve at its end. */
function shareOf(sieve: Sieve, variant: Variant, trail: Trail): VariantShare {
  const [worst, best] = figures['sieve-single-run'].range
  const [fewest, most] = sieve.presentations
  const { easiest, hardest } = pieceChances(variant.shape, sieve.meshMm)
  const low = worst * stays(easiest, most)
  const high = best * stays(hardest, fewest)
  const across = trail.add(`${variant.id}.across`, {
    label: 'second-smallest dimension of the piece',
    symbol: 'x',
    value: secondSmallestMm(variant.shape),
    unit: 'mm',
    formula: 'sphere and wire: the diameter; flake: the side of its face',
    inputs: [variant.step],
  })
  const step = trail.add(`${variant.id}.share`, {
    label: `share of ${variant.material.label} that stays on the sieve`,
    value: asRange(low, high),
    unit: 'share',
    formula:
      'single run · (1 − p)^n, p = (1 − x/a)², 0 from x = a on; a wire times the share of directions upright enough, a flake along the diagonal',
    inputs: [across, sieve.steps.mesh, sieve.steps.presentations, trail.figure('sieve-single-run')],
    sources: ['sieve-passage', 'sieve-orientation'],
  })
  return { low, high, ceiling: best, step }
}

/** A sieve or strainer whose opening lets the product through and keeps what is larger. */
export function sieveModel(
  machine: Extract<RemovalMachine, { family: 'sieve' }>,
  point: Point,
  trail: Trail,
): RemovalModel {
  const { structure } = point.product
  const dry = structure === 'granular' || structure === 'powder'
  const sieve = dry ? granularSieve(machine.meshMm, point, trail) : strainer(machine.meshMm, trail)
  return {
    goodProductLost: sieve.lost,
    goodProductLostUnit: sieve.lost ? 'share of the product' : '',
    shareOf: (variant) => shareOf(sieve, variant, trail),
    wordsFor: (variants) => {
      const across = Math.min(...variants.map((v) => secondSmallestMm(v.shape)))
      const passes = across < sieve.meshMm
      return {
        neverRemoves: `Anything whose second-smallest dimension is under ${mm(sieve.meshMm, 3)}, and long thin wires that stand on end.`,
        condition: passes && dry ? `${sieve.condition} ${SECOND_DECK}` : sieve.condition,
        because: passes
          ? `A piece ${mm(across, 3)} across can fall through the opening of ${mm(sieve.meshMm, 3)} with the product.`
          : `A piece ${mm(across, 3)} across stays on the opening of ${mm(sieve.meshMm, 3)}.`,
      }
    },
  }
}
