import { readMeasure } from '../brief/form/measure.ts'
import type { Problem } from '../contract/brief.ts'
import type { OwnCosts, SharedCosts } from './running-cost.ts'
import type { Side } from './sides.ts'

interface CostField<Name extends string> {
  readonly name: Name
  readonly label: string
  readonly hint: string
  /** Stands behind the box; empty for money and shares. */
  readonly unit: string
  readonly above: number
  readonly most: number
}

const MONEY = { unit: '', above: -1e-12, most: 1e12 } as const

/** What is asked once for all sides. */
export const SHARED_FIELDS: readonly CostField<keyof SharedCosts>[] = [
  {
    name: 'daysPerYear',
    label: 'Days the line runs a year',
    hint: '1 to 366.',
    unit: 'days',
    above: 0,
    most: 366,
  },
  { name: 'perWorkHour', label: 'Labour cost per hour', hint: 'In your currency.', ...MONEY },
  { name: 'perKWh', label: 'A kilowatt-hour', hint: 'In your currency.', ...MONEY },
  {
    name: 'perRejectedPack',
    label: 'A good pack rejected',
    hint: 'What it costs you, reworked or thrown away.',
    ...MONEY,
  },
]

/** What is asked for every side. */
export const OWN_FIELDS: readonly CostField<keyof OwnCosts>[] = [
  { name: 'price', label: 'Price', hint: 'As quoted, installed, in your currency.', ...MONEY },
  {
    name: 'years',
    label: 'Spread over',
    hint: 'Years you expect to keep it.',
    unit: 'years',
    above: 0,
    most: 50,
  },
  {
    name: 'upkeepPerYear',
    label: 'Upkeep a year',
    hint: 'Service, wear parts, surveys, in your currency.',
    ...MONEY,
  },
  {
    name: 'kW',
    label: 'Power while running',
    hint: 'Cooling and air included.',
    unit: 'kW',
    above: -1e-12,
    most: 1000,
  },
  {
    name: 'workHoursPerDay',
    label: 'Work a day',
    hint: 'Checks, cleaning, looking at rejects.',
    unit: 'hours',
    above: -1e-12,
    most: 240,
  },
]

/** Name of a field in the address: shared ones as they are, a side's own behind its key. */
export const ownName = (side: Pick<Side, 'key'>, field: keyof OwnCosts) => `${side.key}.${field}`

export interface AskedCosts {
  readonly shared: SharedCosts
  readonly own: readonly OwnCosts[]
  /** What stands in each box, by name. */
  readonly typed: Readonly<Record<string, string>>
  readonly problems: readonly Problem[]
}

/**
 * Reads the costs typed in the address; blank stays null, and what cannot be read is a problem beside its box.
 * `typed`: one string per name, undefined where the address does not carry it.
 */
export function readCosts(
  sides: readonly Side[],
  given: Readonly<Record<string, string | undefined>>,
): AskedCosts {
  const typed: Record<string, string> = {}
  const problems: Problem[] = []
  const read = (path: string, field: CostField<string>): number | null => {
    const text = (given[path] ?? '').trim()
    typed[path] = text
    if (text === '') return null
    const reading = readMeasure(text, '')
    const message = !reading.ok
      ? reading.because
      : reading.value <= field.above || reading.value > field.most
        ? `give a number ${field.above >= 0 ? 'above' : 'from'} 0 to ${field.most}; ${text} was given`
        : null
    if (message !== null) problems.push({ path, message: `${field.label}: ${message}` })
    return reading.ok && message === null ? reading.value : null
  }
  const shared = Object.fromEntries(
    SHARED_FIELDS.map((field) => [field.name, read(field.name, field)]),
  ) as unknown as SharedCosts
  const own = sides.map(
    (side) =>
      Object.fromEntries(
        OWN_FIELDS.map((field) => [field.name, read(ownName(side, field.name), field)]),
      ) as unknown as OwnCosts,
  )
  return { shared, own, typed, problems }
}
