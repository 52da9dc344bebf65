import { stat } from 'node:fs/promises'
import { parseArgs } from 'node:util'
import { sheetFile } from '../../views/card/sheet-file.tsx'
import { type Card, CardError, type CardOptions, cardOf, FEWEST_TAUGHT } from '../card/card.ts'
import { runsCsv } from '../card/card-runs.ts'
import type { Brief } from '../contract/index.ts'
import { InputError } from './input.ts'
import { loadBrief } from './load-brief.ts'
import { writeFiles } from './output.ts'

const MOST_RUNS = 200
const MOST_SEED = 2 ** 31 - 1

/**
 * gritwise card BRIEF.json --out DIR [--seed N] [--point I] [--equipment ID]… [--sizes I=2,3,4]…
 * [--placement inside|outside] [--runs N] [--clean N] [--teach N] [--unmarked]
 */
export async function cardCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      out: { type: 'string' },
      seed: { type: 'string', default: '1' },
      point: { type: 'string', default: '0' },
      equipment: { type: 'string', multiple: true },
      sizes: { type: 'string', multiple: true },
      placement: { type: 'string' },
      runs: { type: 'string', default: '1' },
      clean: { type: 'string', default: '0' },
      teach: { type: 'string', default: '0' },
      unmarked: { type: 'boolean' },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0) throw new InputError('card takes one brief: a file, or - for standard input')
  if (!values.out) throw new InputError('card needs --out DIR, the folder its pictures go into')
  const { placement } = values
  if (placement !== undefined && placement !== 'inside' && placement !== 'outside')
    throw new InputError(`--placement must be inside or outside; ${placement} was given`)
  const brief = await loadBrief(path)
  const options: CardOptions = {
    seed: wholeNumber('--seed', values.seed, 0, MOST_SEED),
    point: wholeNumber('--point', values.point, 0, brief.points.length - 1),
    runs: wholeNumber('--runs', values.runs, 1, MOST_RUNS),
    cleanPacks: wholeNumber('--clean', values.clean, 0, MOST_RUNS),
    taughtPacks: values.teach === '0' ? 0 : wholeNumber('--teach', values.teach, FEWEST_TAUGHT, MOST_RUNS),
    ...(values.equipment ? { equipment: values.equipment } : {}),
    ...(values.sizes ? { sizesMm: sizesOf(brief, values.sizes) } : {}),
    ...(placement ? { placement } : {}),
  }
  await mustBeFolder(values.out)
  const card = made(brief, options)
  const none = card.machines.every((machine) => machine.leftOut !== '')
  if (!none) await write(card, values.out, values.unmarked !== true)
  process.stdout.write(summary(card))
  return none ? 1 : 0
}

function made(brief: Brief, options: CardOptions): Card {
  try {
    return cardOf(brief, options)
  } catch (error) {
    if (error instanceof CardError) throw new InputError(error.message)
    throw error
  }
}

function wholeNumber(name: string, text: string, from: number, to: number): number {
  const value = Number(text)
  if (text.trim() === '' || !Number.isInteger(value) || value < from || value > to)
    throw new InputError(`${name} must be a whole number from ${from} to ${to}; ${text} was given`)
  return value
}

/** "2=0.5,0.6,0.7": sizes in mm for the contaminant of an index (from 0, in the brief's order). */
function sizesOf(brief: Brief, given: readonly string[]): (readonly number[] | null)[] {
  const sizes: (readonly number[] | null)[] = brief.contaminants.map(() => null)
  for (const text of given) {
    const [index, list] = text.split('=')
    const at = wholeNumber('the index in --sizes', index ?? '', 0, brief.contaminants.length - 1)
    const numbers = (list ?? '').split(',').map(Number)
    if (numbers.some((mm) => !(mm >= 0.05 && mm <= 50)) || numbers.length > 40)
      throw new InputError(
        `--sizes takes INDEX=SIZE,SIZE,… with at most 40 sizes from 0.05 to 50 mm; ${text} was given`,
      )
    sizes[at] = numbers
  }
  return sizes
}

async function mustBeFolder(path: string): Promise<void> {
  const there = await stat(path).catch(() => null)
  if (there && !there.isDirectory()) throw new InputError(`--out must be a folder; ${path} is a file`)
}

/** The card without its pictures' bytes: they stand beside it as files. */
function cardJson(card: Card): string {
  const machines = card.machines.map((machine) => ({
    ...machine,
    pictures: machine.pictures.map(({ png: _png, name, ...picture }) => ({
      ...picture,
      file: `${name}.png`,
    })),
  }))
  return `${JSON.stringify({ ...card, machines }, null, 2)}\n`
}

/** Each picture twice: its grey dots as PNG, and as SVG with marks and numbers around the same dots. */
function write(card: Card, folder: string, marks: boolean): Promise<void> {
  const pictures = card.machines.flatMap(({ sheets, pictures }) =>
    pictures.flatMap(({ name, png, alt, sheet }) => [
      { name: `${name}.png`, content: png },
      { name: `${name}.svg`, content: sheetFile(sheets[sheet]!, png, alt, marks) },
    ]),
  )
  return writeFiles(folder, [
    ...pictures,
    { name: 'runs.csv', content: runsCsv(card) },
    { name: 'card.json', content: cardJson(card) },
  ])
}

function summary(card: Card): string {
  const lines = card.machines.map((m) =>
    m.leftOut !== ''
      ? `  ${m.equipment}: left out, ${m.leftOut}`
      : `  ${m.equipment}: ${m.found} of ${m.pieces} pieces found, ${m.falseAlarms} false alarms, ${m.pictures.length} pictures (${m.kV} kV)`,
  )
  const head = `${card.title}, ${card.point.name}: simulated x-ray pictures, seed ${card.seed}`
  return `${[head, ...lines, ...card.notes.map((note) => `  ${note}`)].join('\n')}\n`
}
