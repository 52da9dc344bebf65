import { MOST_MACHINES } from '../../contract/brief.ts'
import {
  coilMachineSchema,
  DETECTOR_FAMILIES,
  type Family,
  type Machine,
  machineSchema,
  xrayMachineSchema,
} from '../../contract/machine.ts'
import { archetypes, figuresOf } from '../../reference/index.ts'
import { type Field, fieldOf } from './field-of.ts'
import { writeMeasure } from './measure.ts'

type Figures = Readonly<Record<string, unknown>>

const { shape: xray } = xrayMachineSchema
const { shape: coil } = coilMachineSchema

/** A figure of a quoted machine: which families have it, and how it stands in the form. */
interface QuotedFigure {
  readonly families: readonly Family[]
  readonly field: Field
}

/** Nothing is asked for: what the quote does not say comes from the nearest kind. */
const open = (field: Field): Field => ({ ...field, needed: false })

/** What a quote says of a detector, by the name of its field; everything else comes from the nearest kind. */
export const QUOTED_FIGURES: Readonly<Record<string, QuotedFigure>> = {
  lowestKV: { families: ['xray'], field: open(fieldOf(xray.kV)) },
  highestKV: { families: ['xray'], field: open(fieldOf(xray.kV)) },
  maxMA: { families: ['xray'], field: open(fieldOf(xray.maxMA)) },
  maxPowerW: { families: ['xray'], field: open(fieldOf(xray.maxPowerW)) },
  pixelMm: { families: ['xray'], field: open(fieldOf(xray.pixelMm)) },
  sourceToDetectorMm: { families: ['xray'], field: open(fieldOf(xray.sourceToDetectorMm)) },
  magnification: { families: ['xray'], field: open(fieldOf(xray.magnification)) },
  filterAlMm: { families: ['xray'], field: open(fieldOf(xray.filterAlMm)) },
  beltMm: { families: ['xray'], field: open(fieldOf(xray.beltMm)) },
  maxLinesPerSecond: { families: ['xray'], field: open(fieldOf(xray.maxLinesPerSecond)) },
  frequenciesKHz: { families: ['coil'], field: { kind: 'words', needed: false } },
  mostAtOnce: { families: ['coil'], field: open(fieldOf(coil.mostAtOnce)) },
  apertureHeightMm: { families: ['coil', 'static-field'], field: open(fieldOf(coil.apertureHeightMm)) },
  apertureWidthMm: { families: ['coil', 'static-field'], field: open(fieldOf(coil.apertureWidthMm)) },
  maxWidthMm: { families: DETECTOR_FAMILIES, field: open(fieldOf(xray.maxWidthMm)) },
  maxHeightMm: { families: DETECTOR_FAMILIES, field: open(fieldOf(xray.maxHeightMm)) },
  burden: { families: DETECTOR_FAMILIES, field: open(fieldOf(xray.burden)) },
}

/** Kinds of detector a quoted machine may be likened to. */
export const NEAREST_KINDS: readonly string[] = [...archetypes.values()]
  .filter(({ family }) => DETECTOR_FAMILIES.includes(family))
  .map(({ id }) => id)

/** A row of the form for a machine typed in by its figures. */
export const QUOTED_ROWS: Field = {
  kind: 'rows',
  needed: false,
  most: MOST_MACHINES,
  fields: {
    kind: { kind: 'choice', choices: NEAREST_KINDS, needed: false },
    label: { kind: 'text', needed: false },
    base: { kind: 'text', needed: false },
    ...Object.fromEntries(Object.entries(QUOTED_FIGURES).map(([key, { field }]) => [key, field])),
  },
}

/** A kind's own figures, as a machine of the contract. */
export function kindAsMachine(id: string): Machine | null {
  const kind = archetypes.get(id)
  if (!kind) return null
  return machineSchema.parse(figuresOf(kind))
}

/** A figure of a machine as the form shows it; undefined where the machine leaves it open. */
export function figureOf(machine: Machine, key: string): number | readonly number[] | undefined {
  const figures = machine as Figures
  const range = figures.kVRange as readonly [number, number] | undefined
  if (key === 'lowestKV') return range?.[0] ?? (figures.kV as number | undefined)
  if (key === 'highestKV') return range?.[1] ?? (figures.kV as number | undefined)
  return figures[key] as number | readonly number[] | undefined
}

/** A figure as it stands in a box of the form. */
export const figureWords = (figure: number | readonly number[]): string =>
  (Array.isArray(figure) ? figure : [figure]).map(writeMeasure).join(', ')
