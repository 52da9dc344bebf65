import { changeWords } from '../../../views/advice/reasons/change-words.ts'
import { pathWords } from '../../../views/words/path.ts'
import { nameWords } from '../../advice/say/words.ts'
import type { Advice, Brief } from '../../contract/index.ts'
import { materialNames } from './names.ts'

/** The name of a line before what is said of it; nothing where there is one line without a name. */
const lineWords = (line: string) => (line === '' ? '' : `line ${line}, `)

/** The smallest set, what it leaves, what can still enter, and how the rest is kept out. */
export function togetherText(brief: Brief, { combination, prevention }: Advice): string[] {
  const pieces = (contaminants: readonly number[]) => contaminants.map((c) => nameWords(brief, c)).join(', ')
  return [
    `Together: ${combination.because}`,
    ...combination.uses.map(
      (use) =>
        `  ${lineWords(use.line)}${use.point}: ${use.equipment} for ${pieces(use.contaminants)}${use.expected.length > 0 ? ` (expected, not promised: ${pieces(use.expected)})` : ''}`,
    ),
    ...combination.unmet.map(
      ({ line, contaminant, why }) => `  unmet: ${lineWords(line)}${pieces([contaminant])}. ${why}`,
    ),
    ...(combination.independence ? [`  ${combination.independence}`] : []),
    ...combination.stillEnters.map(({ point, text }) => `  behind ${point}: ${text}`),
    ...prevention.map(
      ({ contaminant, text, sources }) =>
        `  keep out ${pieces([contaminant])}: ${text}${sources.length > 0 ? ` (${sources.join(', ')})` : ''}`,
    ),
  ]
}

/** Where the order hangs on what is not settled; empty where nothing is close. */
export const closeCallText = ({ points }: Advice): string[] =>
  points.flatMap(({ name, closeCall }) =>
    closeCall
      ? ['', `Close call at ${name}: ${closeCall.because}`, `  what would settle it: ${closeCall.test}`]
      : [],
  )

/** What would change the answer, or that nothing does. */
export function changesText(advice: Advice): string[] {
  const { changes, changesNote } = advice
  if (changes.length === 0) return changesNote ? ['', `What would change it: ${changesNote}`] : []
  return [
    '',
    'What would change it:',
    ...changes.map((change) => `  ${changeWords(change, advice, materialNames)}: ${change.effect}`),
  ]
}

/** What to find out next, most telling first. */
export function missingText(advice: Advice): string[] {
  if (advice.missing.length === 0) return []
  return [
    '',
    'What to find out:',
    ...advice.missing.map(({ path, effect }) => `  ${pathWords(path, advice)} [${path}]: ${effect}`),
  ]
}

/** The quotes judged, each with the questions to ask. */
export function quotesText({ quotes }: Advice): string[] {
  if (quotes.length === 0) return []
  return [
    '',
    'Quotes:',
    ...quotes.flatMap(({ quote, judgement, text, questions }) => [
      `  ${quote + 1}. ${judgement}: ${text}`,
      ...questions.map((question) => `       ask: ${question}`),
    ]),
  ]
}

/** Why the first of each point rather than the others, a line each. */
export const ratherText = ({ points }: Advice): string[] =>
  points.flatMap(({ name, contrasts }) =>
    contrasts.length === 0
      ? []
      : [
          '',
          `Compare two machines, at ${name}:`,
          ...contrasts.map(({ first, second, because }) => `  ${first} rather than ${second}: ${because}`),
        ],
  )
