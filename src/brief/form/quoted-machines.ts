import { type Machine, machineSchema } from '../../contract/machine.ts'
import { readJsonText } from '../../intake/json-text.ts'
import { labelOf } from './form-labels.ts'
import { readMeasure, writeMeasure } from './measure.ts'
import { figureOf, figureWords, kindAsMachine, QUOTED_FIGURES } from './quoted-fields.ts'

type Answers = Readonly<Record<string, string>>
type Figures = Record<string, unknown>

/** Machines read from the rows of a form, with what could not be read and what was taken from the nearest kind. */
export interface ReadMachines {
  readonly machines: readonly Figures[]
  /** Rows of the form that hold them, in the same order. */
  readonly rows: readonly number[]
  readonly problems: readonly { readonly path: string; readonly message: string }[]
  readonly understood: Readonly<Record<string, string>>
  /** By form path: the kind's figure where the quote says none. */
  readonly taken: Readonly<Record<string, string>>
}

const FAMILY_WORDS: Readonly<Record<string, string>> = {
  xray: 'an x-ray machine',
  coil: 'a metal detector',
  'static-field': 'a magnetic-field detector',
}

/**
 * Each row: the machine it began as (or the nearest kind), with every figure of the quote in place of the kind's.
 * @param rows numbers of the rows that hold an answer
 */
export function readQuotedMachines(answers: Answers, rows: readonly number[]): ReadMachines {
  const problems: { path: string; message: string }[] = []
  const understood: Record<string, string> = {}
  const taken: Record<string, string> = {}
  const ids = new Set(rows.flatMap((row) => beganAs(answers[`quoted.${row}.base`])?.id ?? []))
  const read: number[] = []
  const machines = rows.flatMap((row, at): Figures[] => {
    const path = (key: string) => `quoted.${row}.${key}`
    const typed = (key: string) => answers[path(key)]?.trim() ?? ''
    const base = beganAs(typed('base'))
    const start = typed('kind') === '' ? base : kindAsMachine(typed('kind'))
    if (!start) {
      problems.push({ path: path('kind'), message: `Choose the nearest kind of quoted machine ${at + 1}` })
      return []
    }
    const given: Figures = {}
    for (const [key, { families, field }] of Object.entries(QUOTED_FIGURES)) {
      const answer = typed(key)
      if (answer === '') {
        const usual = families.includes(start.family) ? figureOf(start, key) : undefined
        if (usual !== undefined)
          taken[path(key)] = `${figureWords(usual)} ${field.kind === 'measure' ? field.unit : 'kHz'}`.trim()
        continue
      }
      if (!families.includes(start.family)) {
        problems.push({
          path: path(key),
          message: `${labelOf(path(key))}: ${FAMILY_WORDS[start.family]} has none; leave it empty`,
        })
        continue
      }
      const parts =
        key === 'frequenciesKHz' ? answer.split(/[;,]\s*/).filter((part) => part !== '') : [answer]
      const unit = field.kind === 'measure' ? field.unit : 'kHz'
      const readings = parts.map((part) => readMeasure(part, unit))
      const wrong = readings.find((reading) => !reading.ok)
      if (wrong && !wrong.ok) {
        problems.push({ path: path(key), message: `${labelOf(path(key))}: ${wrong.because}` })
        continue
      }
      const values = readings.flatMap((reading) => (reading.ok ? [reading.value] : []))
      if (readings.some((reading) => reading.ok && !reading.plain))
        understood[path(key)] = `${values.map(writeMeasure).join(', ')} ${unit}`.trim()
      given[key] = key === 'frequenciesKHz' ? values : values[0]
    }
    read.push(row)
    const { label: _kind, ...machine } = withFigures(start, given)
    const label = typed('label') || (base ? '' : `machine ${at + 1} as quoted`)
    return [{ ...machine, id: base?.id ?? freeId(ids), ...(label === '' ? {} : { label }) }]
  })
  return { machines, rows: read, problems, understood, taken }
}

/** The machine with the figures of the quote in place of its own. */
function withFigures(start: Machine, given: Figures): Figures {
  const { lowestKV, highestKV, ...plain } = given
  const machine: Figures = { ...start, ...plain }
  if (plain.maxMA !== undefined && plain.maxMA !== figureOf(start, 'maxMA')) delete machine.mA
  const low = (lowestKV ?? figureOf(start, 'lowestKV')) as number | undefined
  const high = (highestKV ?? figureOf(start, 'highestKV')) as number | undefined
  if (low === figureOf(start, 'lowestKV') && high === figureOf(start, 'highestKV')) return machine
  delete machine.kV
  delete machine.kVRange
  return low === high ? { ...machine, kV: low } : { ...machine, kVRange: [low, high] }
}

function beganAs(text: string | undefined): Machine | null {
  if (!text) return null
  const json = readJsonText(text)
  const read = json.ok ? machineSchema.safeParse(json.value) : null
  return read?.success ? read.data : null
}

/** The first "quoted-1", "quoted-2" … that no machine of the form bears. */
function freeId(taken: Set<string>): string {
  for (let number = 1; ; number++) {
    const id = `quoted-${number}`
    if (taken.has(id)) continue
    taken.add(id)
    return id
  }
}

/** The field of a row that holds a figure of the machine; the kind where the row has none for it. */
export function quotedField(figure: string): string {
  if (figure === 'kV') return 'highestKV'
  if (figure === 'kVRange') return 'lowestKV'
  if (figure === 'mA') return 'maxMA'
  return figure === 'label' || figure in QUOTED_FIGURES ? figure : 'kind'
}
