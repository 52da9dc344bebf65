import { group } from 'd3-array'
import { parseBrief, ranOnWords } from '../../brief/index.ts'
import {
  type Advice,
  type Brief,
  type BriefInput,
  type DemonstratedRecord,
  type Measured,
  type MeasuredRow,
  type RunGroup,
  speaksOfPiece,
} from '../../contract/index.ts'
import { measureMachine } from './measured-machine.ts'
import { leastPossible, type Predicted, predictedFor } from './prediction.ts'

/** What a trial adds to the brief it was held against. */
export interface TrialRecords {
  readonly measured: readonly MeasuredRow[]
  readonly demonstrated: readonly DemonstratedRecord[]
}

interface Placed {
  readonly group: RunGroup
  readonly predicted: Predicted
}

/**
 * Records of a trial, one for each machine and contaminant. Where a piece was run in several places, lies or settings,
 * the weakest of them speaks, and a size is shown only where each of them showed one.
 */
export function recordsOf(
  groups: readonly RunGroup[],
  advice: Advice,
  machine: string | null = null,
): TrialRecords {
  const placed = groups.flatMap((one): Placed[] => {
    const predicted = predictedFor(one, advice, machine)
    return predicted ? [{ group: one, predicted }] : []
  })
  const pieceOf = ({ predicted }: Placed) =>
    `${predicted.pointIndex} ${predicted.equipment} ${predicted.finding.contaminant}`
  const all = [...group(placed, pieceOf).values()]
  const parsed = parseBrief(advice.brief)
  const ranOn = <Item extends Measured | DemonstratedRecord>(one: Item): Item => {
    const at = advice.points.findIndex(({ name }) => name === one.point)
    return parsed.ok ? { ...one, ranOn: ranOnWords(parsed.brief, at, one.equipment, one.contaminant) } : one
  }
  return {
    measured: all.flatMap(measuredIn).map(ranOn),
    demonstrated: all.flatMap(demonstratedIn).map(ranOn),
  }
}

/**
 * The brief with a trial's records in place of earlier ones about the same machine, point and contaminant: a size that the
 * later trial did not show again does not stand beside what it measured.
 */
export function withRecords(given: BriefInput, { measured, demonstrated }: TrialRecords): BriefInput {
  const about = (one: MeasuredRow | DemonstratedRecord) => `${one.point}|${one.equipment}|${one.contaminant}`
  const now = new Set([...measured, ...demonstrated].map(about))
  const others = <Item extends MeasuredRow | DemonstratedRecord>(
    old: readonly Item[],
    fresh: readonly Item[],
  ) => [...old.filter((one) => !now.has(about(one))), ...fresh]
  return {
    ...given,
    measured: others(given.measured ?? [], measured),
    demonstrated: others(given.demonstrated ?? [], demonstrated),
  }
}

/** A brief without what trials added to it: a prediction is held against a trial before anything is updated. */
export function beforeTrials(brief: Brief): Brief {
  const { measured = [], demonstrated = [] } = brief.given
  if (measured.every((row) => !speaksOfPiece(row)) && demonstrated.length === 0) return brief
  const parsed = parseBrief({
    ...brief.given,
    measured: measured.filter((row) => !speaksOfPiece(row)),
    demonstrated: [],
  })
  return parsed.ok ? parsed.brief : brief
}

function base({ group, predicted }: Placed) {
  const { point, equipment, finding } = predicted
  return {
    point,
    equipment,
    contaminant: finding.contaminant,
    ...(group.setting ? { setting: group.setting } : {}),
    ...(group.equipment === equipment ? {} : { serial: group.equipment }),
    ...(group.date ? { date: group.date } : {}),
  }
}

function measuredIn(placed: readonly Placed[]): Measured[] {
  const measured = placed.flatMap((one) => {
    const machine = measureMachine(one.group, one.predicted.finding)
    return machine ? [{ one, machine }] : []
  })
  const worst = measured.sort((a, b) => b.machine.constants.sizeFactor - a.machine.constants.sizeFactor)[0]
  if (!worst || measured.length < placed.length) return []
  const { clean, signal } = worst.one.group
  return [
    {
      ...base(worst.one),
      ...(clean ? { cleanRun: { packs: clean.packs, rejects: clean.rejects } } : {}),
      ...(signal?.productSignal ? { productSignal: signal.productSignal } : {}),
      ...(signal?.productSignalMm ? { productSignalMm: signal.productSignalMm } : {}),
      constants: worst.machine.constants,
    },
  ]
}

function demonstratedIn(placed: readonly Placed[]): DemonstratedRecord[] {
  const conflict = ({ group, predicted: { finding } }: Placed) => {
    const least = leastPossible(finding)
    return least === null || group.demonstrated!.sizeMm < least
  }
  if (placed.some((one) => !one.group.demonstrated || conflict(one))) return []
  const weakest = [...placed].sort((a, b) => b.group.demonstrated!.sizeMm - a.group.demonstrated!.sizeMm)[0]!
  const { sizeMm, basis, packs } = weakest.group.demonstrated!
  const { position } = weakest.group
  return [{ ...base(weakest), sizeMm, basis, packs, ...(position ? { position } : {}) }]
}
