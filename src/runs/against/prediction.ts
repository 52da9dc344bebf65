import type { Advice, Finding, Prediction, RunGroup } from '../../contract/index.ts'
import { chanceOnCurve } from '../../numerics/chance-on-curve.ts'
import { agreementOf, type PredictedSize, statedSpread } from './agreement.ts'

/** Below this the trial and the prediction are said to disagree. */
const DISAGREES = 0.05

/** Groups held against the advice on the same brief, each before anything is updated by it. */
export function againstPrediction(
  groups: readonly RunGroup[],
  advice: Advice,
  machine: string | null = null,
): Prediction[] {
  return groups.flatMap((group, index) => {
    const found = predictedFor(group, advice, machine)
    return found ? [predictionOf(group, index, found)] : []
  })
}

export interface Predicted {
  readonly pointIndex: number
  readonly point: string
  /** Its id in the advice. */
  readonly equipment: string
  readonly finding: Finding
}

/**
 * The finding for the group's machine and piece, at the first point that has both; null where none has. A machine
 * known by its plate alone is `machine` of the advice, or the only one there is.
 */
export function predictedFor(group: RunGroup, advice: Advice, machine: string | null): Predicted | null {
  const known = new Set(advice.points.flatMap(({ options }) => options.map((option) => option.equipment)))
  const fallback = machine ?? (known.size === 1 ? [...known][0]! : null)
  const equipment = known.has(group.equipment) ? group.equipment : fallback
  for (const [pointIndex, { name, options }] of advice.points.entries()) {
    const option = options.find((one) => one.equipment === equipment)
    const finding = option?.findings.find((one) => samePiece(one, group))
    if (finding && option) return { pointIndex, point: name, equipment: option.equipment, finding }
  }
  return null
}

/** Lower end of the best possible size: nothing of this build finds less. Null where it finds nothing. */
export const leastPossible = ({ bestMm, bestRangeMm }: Finding): number | null => bestRangeMm?.[0] ?? bestMm

const samePiece = (finding: Finding, group: RunGroup): boolean =>
  finding.material === group.material &&
  finding.shape === group.shape &&
  finding.placement === group.placement &&
  (finding.lengthMm ?? null) === group.lengthMm &&
  (finding.faceMm2 ?? null) === group.faceMm2

function predictionOf(group: RunGroup, index: number, { point, finding }: Predicted): Prediction {
  const floor = group.clean?.rate ?? 0
  const chanceAt = (sizeMm: number, factor = 1): number => {
    const own = chanceOnCurve(finding.curve, sizeMm / factor) ?? 0
    return floor + (1 - floor) * own
  }
  const sizes = group.exact.map((row) => ({
    sizeMm: row.sizeMm,
    runs: row.runs,
    found: row.found,
    predicted: chanceAt(row.sizeMm),
  }))
  const { expectedMm, cautiousMm, bestMm } = finding
  const least = leastPossible(finding)
  const agreement =
    expectedMm === null
      ? null
      : agreementOf(
          sizes.map((row): PredictedSize => ({ ...row, chance: (factor) => chanceAt(row.sizeMm, factor) })),
          statedSpread(expectedMm, cautiousMm),
        )
  const shown = group.demonstrated?.sizeMm ?? null
  const conflict = shown !== null && (least === null || shown < least)
  return {
    group: index,
    point,
    contaminant: finding.contaminant,
    bestMm,
    expectedMm,
    cautiousMm,
    curve: finding.curve,
    sizes,
    agreement,
    conflict,
    words: wordsOf(sizes, agreement, conflict),
  }
}

function wordsOf(sizes: Prediction['sizes'], agreement: number | null, conflict: boolean): string {
  if (conflict)
    return 'Conflict: shown below the best possible size. Something in the brief or in the trial is not as stated; look for it before using either.'
  if (agreement === null)
    return 'Nothing is expected of this machine here, so there is nothing to agree with.'
  const found = sizes.reduce((sum, row) => sum + row.found, 0)
  const predicted = sizes.reduce((sum, row) => sum + row.runs * row.predicted, 0)
  const runs = sizes.reduce((sum, row) => sum + row.runs, 0)
  const counts = `${found} of ${runs} found, ${predicted.toFixed(1)} expected`
  const share = agreement < 0.01 ? 'fewer than 1 in 100' : `${Math.round(agreement * 100)} in 100`
  const verdict = agreement < DISAGREES ? 'Disagrees with the prediction' : 'Agrees with the prediction'
  return `${verdict}: ${counts}; with the spread that the prediction states, ${share} trials would come out as unlikely as this.`
}
