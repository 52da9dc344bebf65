import type { Brief, DemonstratedRecord, Finding, Measured, Zone } from '../../contract/index.ts'
import { normalUpperQuantile } from '../../numerics/normal.ts'

type Sizes = Pick<Finding, 'bestMm' | 'halfMm' | 'expectedMm' | 'sureMm' | 'cautiousMm'> & {
  readonly curve: { readonly sizesMm: readonly number[]; readonly chance: readonly number[] }
  readonly zones: readonly Zone[]
}

/** Standard deviations that one machine in ten lies beyond. */
const ONE_IN_TEN = normalUpperQuantile(0.1)

interface At {
  readonly pointIndex: number
  readonly equipment: string
  readonly contaminant: number
}

function recordAt<Item extends { point: string; equipment: string; contaminant: number }>(
  brief: Brief,
  items: readonly Item[],
  { pointIndex, equipment, contaminant }: At,
): Item | null {
  const { name } = brief.points[pointIndex]!
  const here = items.filter(
    (one) => one.point === name && one.equipment === equipment && one.contaminant === contaminant,
  )
  return here.at(-1) ?? null
}

/**
 * The size shown on the product; the latest record counts. A size below the lower end of the best possible
 * one is a conflict: none.
 */
export function demonstratedAt(brief: Brief, at: At, leastMm: number | null): DemonstratedRecord | null {
  const record = recordAt(brief, brief.demonstrated, at)
  return record && leastMm !== null && record.sizeMm >= leastMm ? record : null
}

/**
 * Sizes after a trial of this piece on this machine: the predicted curve moved and steepened as measured, safe to
 * promise at the unfavourable decile of what the trial leaves open. Never better than best possible, and never
 * below a size that was shown.
 */
export function asMeasured<Predicted extends Sizes>(brief: Brief, at: At, predicted: Predicted): Predicted {
  const measured = recordAt(brief, brief.measured, at)
  const { halfMm, expectedMm, bestMm } = predicted
  if (!measured || halfMm === null || expectedMm === null) return predicted
  const { sizeSpread } = measured.constants
  const move = (mm: number | null): number | null => (mm === null ? null : movedSize(mm, halfMm, measured))
  const least = bestMm ?? 0
  const expected = Math.max(least, move(expectedMm)!)
  const shown = recordAt(brief, brief.demonstrated, at)?.sizeMm ?? 0
  const cautious = Math.max(expected * Math.exp(ONE_IN_TEN * sizeSpread), shown)
  const [wider, safer] = [expected / expectedMm, cautious / expected]
  return {
    ...predicted,
    halfMm: move(halfMm),
    expectedMm: expected,
    sureMm: move(predicted.sureMm),
    cautiousMm: cautious,
    curve: { ...predicted.curve, sizesMm: predicted.curve.sizesMm.map((mm) => move(mm)!) },
    zones: predicted.zones.map((zone) => zoneAs(zone, wider, safer)),
  }
}

/** A size of the predicted curve where the measured one has the same chance. */
export function movedSize(mm: number, halfMm: number, { constants }: Pick<Measured, 'constants'>): number {
  return halfMm * constants.sizeFactor * (mm / halfMm) ** (1 / constants.steepness)
}

function zoneAs(zone: Zone, wider: number, safer: number): Zone {
  const { bestMm, expectedMm } = zone.sizes
  if (expectedMm === null) return zone
  const expected = Math.max(bestMm ?? 0, expectedMm * wider)
  return { ...zone, sizes: { bestMm, expectedMm: expected, cautiousMm: expected * safer } }
}
