import { assessCoil, type CoilInput } from '../../coil/assess-coil.ts'
import type { Brief, ProductSignal } from '../../contract/index.ts'

/** The signal that a trial's clean packs gave: the largest of so many is as large as that of a piece of this size. */
export interface SignalRead {
  readonly contaminant: number
  readonly sizeMm: number
  readonly packs: number
}

interface At {
  readonly pointIndex: number
  readonly equipment: string
}

/** Of the latest trial of this machine at this point; null where none read one, or where the point gives its own. */
export function signalReadIn(brief: Brief, { pointIndex, equipment }: At): SignalRead | null {
  const { name, productSignal } = brief.points[pointIndex]!
  if (productSignal !== null) return null
  const row = brief.measured
    .filter((one) => one.point === name && one.equipment === equipment && one.productSignalMm !== undefined)
    .at(-1)
  return row?.cleanRun && row.cleanRun.packs > 0
    ? { contaminant: row.contaminant, sizeMm: row.productSignalMm!, packs: row.cleanRun.packs }
    : null
}

/** The residual is looked for between so many times less and more than assumed. */
const WIDEST = 20
const STEPS = 10

/** A piece of the trial on the machine, with what its clean packs gave. */
export type ReadInput = CoilInput & SignalRead

/**
 * What the machine leaves of this food, from the largest signal of a trial's clean packs: the residual (amplitude and
 * phase together, in the proportion assumed) with which a threshold at that signal would find half of the pieces whose
 * signal is as large. Half of the runs of n packs stay below the threshold that 1 pack in n/ln 2 passes. Null where
 * the food gives no signal, or the model finds the piece at no residual.
 */
export function residualAsRead({ sizeMm, packs, ...input }: ReadInput): ProductSignal | null {
  const piece = { ...input.contaminants[input.contaminant]!, mustFindMm: null }
  const falseRejectsPerPack = Math.min(0.2, Math.LN2 / packs)
  const at = (productSignal: ProductSignal | null) =>
    assessCoil({
      ...input,
      contaminants: [piece],
      point: { ...input.point, falseRejectsPerPack, productSignal },
    })
  const { residual, family } = at(null)
  if (family !== 'coil' || !residual) return null
  const times = (factor: number): ProductSignal => ({
    amplitudePct: Math.min(50, Math.max(0.01, residual.amplitudePct * factor)),
    phaseDeg: Math.min(45, Math.max(0.01, residual.phaseDeg * factor)),
  })
  const halfMm = (factor: number) => at(times(factor)).findings[0]!.halfMm ?? Number.POSITIVE_INFINITY
  let [low, high] = [-Math.log(WIDEST), Math.log(WIDEST)]
  for (let step = 0; step < STEPS; step++) {
    const middle = (low + high) / 2
    if (halfMm(Math.exp(middle)) < sizeMm) low = middle
    else high = middle
  }
  return times(Math.exp((low + high) / 2))
}
