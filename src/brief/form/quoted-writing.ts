import { DETECTOR_FAMILIES, type Machine, machineSchema } from '../../contract/machine.ts'
import { figureOf, figureWords, kindAsMachine, NEAREST_KINDS, QUOTED_FIGURES } from './quoted-fields.ts'

/** True for a machine whose figures the rows of the form show; others stay as JSON. */
export const hasRow = (machine: unknown): machine is Machine => {
  const read = machineSchema.safeParse(machine)
  return read.success && DETECTOR_FAMILIES.includes(read.data.family)
}

/** Writes a machine of the brief into a row of the form. */
export function writeQuotedMachine(machine: Machine, row: number, answers: Record<string, string>): void {
  answers[`quoted.${row}`] = 'row'
  answers[`quoted.${row}.base`] = JSON.stringify(machine)
  if (machine.label !== undefined) answers[`quoted.${row}.label`] = machine.label
  const kind = nearestKind(machine)
  if (kind) answers[`quoted.${row}.kind`] = kind.id
  for (const key of Object.keys(QUOTED_FIGURES)) {
    const figure = figureOf(machine, key)
    if (figure !== undefined && !(kind && same(figure, figureOf(kind, key))))
      answers[`quoted.${row}.${key}`] = figureWords(figure)
  }
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b)
const SHOWN = new Set(['id', 'label', 'kV', 'kVRange', ...Object.keys(QUOTED_FIGURES)])
const unshown = (machine: Machine) =>
  Object.entries(machine)
    .filter(([key]) => !SHOWN.has(key))
    .sort(([a], [b]) => (a < b ? -1 : 1))

/** The kind from which this machine differs in shown figures only, and in the fewest of them; null where none is. */
function nearestKind(machine: Machine): Machine | null {
  if ('kV' in machine && 'kVRange' in machine) return null
  const kinds = NEAREST_KINDS.flatMap((id) => kindAsMachine(id) ?? [])
    .filter((kind) => same(unshown(kind), unshown(machine)))
    .map((kind) => {
      const keys = Object.keys(QUOTED_FIGURES)
      const fits = keys.every(
        (key) => figureOf(kind, key) === undefined || figureOf(machine, key) !== undefined,
      )
      const apart = keys.filter((key) => !same(figureOf(kind, key), figureOf(machine, key))).length
      return { kind, fits, apart }
    })
    .filter(({ fits }) => fits)
    .sort((a, b) => a.apart - b.apart)
  return kinds[0]?.kind ?? null
}
