import type { Family } from '../../../contract/index.ts'

/**
 * Where a fact holds. "brief": once. "point": per inspection point. "contaminant": per contaminant, without a machine.
 * "option": per machine at a point. "finding": per machine, point and contaminant. Known once the options are in order:
 * "line", "row" (a contaminant on a line), "use" (a machine in use), "place" (an option among the others), "together"
 * (two machines in use), "close" (two options between which the order is close), "apart" (the one recommended beside
 * another), "miss" (a size an option misses), "quote" (a quoted size). "found" and "finder": a piece that was found,
 * and a machine it passed. Known once it was searched for: "change" (a change of the line, or that there is none), "missing" (a value
 * not given). The others belong to the register and the check plan: the record as a whole, a hazard, a control before
 * and after it is classed, a machine to be checked.
 */
export type FactScope =
  | 'brief'
  | 'point'
  | 'contaminant'
  | 'option'
  | 'finding'
  | 'line'
  | 'row'
  | 'use'
  | 'place'
  | 'together'
  | 'close'
  | 'apart'
  | 'miss'
  | 'quote'
  | 'found'
  | 'finder'
  | 'change'
  | 'missing'
  | 'record'
  | 'hazard'
  | 'control'
  | 'classed'
  | 'check'

/** One fact rules may speak about. Facts are flat, typed and constant during a run. */
export interface FactDefinition {
  readonly id: string
  readonly label: string
  readonly unit: Unit
  readonly type: 'number' | 'boolean' | 'string'
  readonly scope: FactScope
  /** Closed list of words a string fact can take; missing means any text. */
  readonly values?: readonly string[]
  /** Families that have this fact; missing means every family. */
  readonly families?: readonly Family[]
}

/** Units facts and thresholds may carry; '' is a plain number, a word or a yes/no. */
export const UNITS = [
  '',
  'mm',
  'µm',
  '%',
  'g',
  'kg',
  'g/cm³',
  'kg/h',
  'm/min',
  'm/s',
  'per minute',
  'per day',
  'kV',
  'mA',
  'keV',
  'degrees',
  'kHz',
  'S/m',
  'S',
  'mg/kg',
  'h',
  'min',
  'lines/s',
  '°C',
] as const
export type Unit = (typeof UNITS)[number]

/** Prefix under which a condition or a text names a threshold of the rule book. */
export const THRESHOLD = 'threshold.'

/** A fact on one line of a list, its scope apart. */
export type FactRow = readonly [
  id: string,
  label: string,
  unit: FactDefinition['unit'],
  type: FactDefinition['type'],
  values?: readonly string[],
]

/** The facts of a list, all of one scope; of these families of machines where they are named. */
export const factsOf = (
  scope: FactScope,
  rows: readonly FactRow[],
  families?: FactDefinition['families'],
): FactDefinition[] =>
  rows.map(([id, label, unit, type, values]) => ({
    id,
    label,
    unit,
    type,
    scope,
    ...(families ? { families } : {}),
    ...(values ? { values } : {}),
  }))
