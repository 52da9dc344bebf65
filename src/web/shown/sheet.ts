import type { FieldNote, Option, Sheet } from '../../../views/brief/sheet.ts'
import { choiceWords } from '../../../views/words/choices.ts'
import { fieldWords, unitOf } from '../../../views/words/path.ts'
import { valueWords } from '../../../views/words/size.ts'
import { type Answers, type ReadForm, readForm } from '../../brief/form/form.ts'
import { parseBrief } from '../../brief/index.ts'
import type { Assumption, Brief, Problem } from '../../contract/index.ts'
import { firstProblems } from '../../intake/problem-list.ts'
import { contaminants, detectors, foods, machines, packaging } from './choices.ts'

/** A form with one row of each list, nothing answered. */
export const EMPTY_FORM: Answers = { 'points.0': 'row', 'contaminants.0': 'row' }

export interface Checked {
  readonly read: ReadForm
  /** The brief, where the form holds a whole one. */
  readonly brief: Brief | null
  /** What is wrong, by form path, in the order it was found; each field once. */
  readonly problems: readonly Problem[]
}

/** Reads a form and parses what it says; a field that cannot be read is not complained of twice. */
export function checkForm(answers: Answers): Checked {
  const read = readForm(answers)
  const parsed = parseBrief(read.input)
  const parsing = parsed.ok
    ? []
    : parsed.problems.map(({ path, message }) => ({ path: read.formPath(path), message: sentence(message) }))
  const problems = [
    ...new Map([...parsing, ...read.problems].map((problem) => [problem.path, problem])).values(),
  ]
  return {
    read,
    brief: parsed.ok && problems.length === 0 ? parsed.brief : null,
    problems: firstProblems(problems),
  }
}

/** What a form still needs for an answer, in the form's words; empty where it holds a brief. */
export function neededIn({ brief, problems }: Checked): string[] {
  if (brief) return []
  return [...new Set(problems.map(({ path }) => fieldWords(path)))]
}

/** What is wrong in a form filled from a brief: in the form's words, or in the brief's where the form cannot show it. */
export function problemsIn(answers: Answers, ofBrief: readonly Problem[]): readonly Problem[] {
  const { problems } = checkForm(answers)
  return problems.length > 0 ? problems : ofBrief
}

/** Everything the form page shows for these answers. */
export function sheetOf(
  answers: Answers,
  checked: Checked,
  problems: readonly Problem[],
  focus?: string,
): Sheet {
  return {
    ...(focus ? { focus } : {}),
    answers,
    problems: new Map(problems.map(({ path, message }) => [path, message])),
    notes: notesOf(answers, checked),
    foods,
    contaminants,
    packaging,
    machines,
    quotedMachines: quotedMachines(checked.read.input),
    detectors,
  }
}

/** The machines of a brief that are described in it, as choices. */
function quotedMachines(input: unknown): Option[] {
  const { equipment = [] } = input as { equipment?: readonly unknown[] }
  return equipment.flatMap((one) => {
    const { id, label } = typeof one === 'object' && one ? (one as { id?: string; label?: string }) : {}
    return id ? [{ value: id, words: label || id }] : []
  })
}

/** What was understood and what is assumed, by form path. */
export function notesOf(answers: Answers, { read, brief }: Checked): ReadonlyMap<string, FieldNote> {
  const notes = new Map<string, FieldNote>()
  for (const assumption of brief?.assumed ?? []) {
    const path = read.formPath(assumption.path)
    if ((answers[path] ?? '').trim() === '') notes.set(path, { assumed: assumedWords(assumption) })
  }
  for (const [path, taken] of Object.entries(read.taken)) notes.set(path, { taken })
  for (const [path, understood] of Object.entries(read.understood)) notes.set(path, { understood })
  return notes
}

/** In the form only what is taken; why stands with the assumptions of the advice. */
function assumedWords({ path, value, range }: Assumption): string {
  const unit = unitOf(path)
  const field = path.split('.').at(-1) ?? ''
  const words = typeof value === 'string' ? choiceWords(field, value).toLowerCase() : valueWords(value)
  const between = range ? `, ${valueWords(range[0])} to ${valueWords(range[1])}` : ''
  return `${`${words} ${unit}`.trim()}${between}`
}

const sentence = (message: string) => message.charAt(0).toUpperCase() + message.slice(1)
