import { type AdviceAnswer, type AnswerRow, HEADLINE_PARTS, type Meets } from '../../contract/index.ts'
import type { Answered, LineOutcome, Row } from '../stages.ts'
import { joined, once, saidOf } from './said.ts'

type Ask = Pick<LineOutcome, 'type' | 'line'> & Partial<Pick<LineOutcome, 'contaminant'>>

/** What the rules said of one place of the second run, in the order of their ids. */
const spoken = ({ answers }: Answered, asked: Ask) =>
  answers.filter(
    (one) =>
      one.outcome === 'fired' &&
      one.type === asked.type &&
      one.line === asked.line &&
      (asked.contaminant === undefined || one.contaminant === asked.contaminant),
  )

/** The first sentence of one line, part after part. */
function headlineOf(answered: Answered, line: number): LineOutcome[] {
  const parts = spoken(answered, { type: 'headline', line })
  return HEADLINE_PARTS.flatMap((part) => parts.filter((one) => one.part === part))
}

/** What is unmet comes first, then what is only expected, then what has gaps or no size, then what is done. */
const FIRST: readonly Meets[] = ['cannot', 'no', 'maybe', 'partly', 'open', 'yes']

/** What is left to do, in the words of the rules that fired; a book that overruled them all says nothing. */
function leftOf(said: readonly LineOutcome[]): AnswerRow['left'] {
  const [first] = said
  return first
    ? {
        ...saidOf(first),
        text: joined(said),
        kind: first.left!,
        ...(said.length > 1 ? { rules: said.map(({ rule }) => rule) } : {}),
      }
    : {
        text: 'No rule of this book says what is left to do.',
        rule: '',
        trace: '',
        sources: [],
        kind: 'prevent',
      }
}

function rowOf(answered: Answered, line: number, row: Row): AnswerRow {
  const { brief, lines } = answered
  const { contaminant, option, point, finding, meets } = row
  const said = spoken(answered, { type: 'leaves', line, contaminant })
  return {
    line: lines[line]!.name,
    contaminant,
    askedMm: brief.contaminants[contaminant]!.mustFindMm,
    promisedMm: finding?.demonstrated?.sizeMm ?? finding?.cautiousMm ?? null,
    demonstrated: finding?.demonstrated ?? null,
    expectedMm: finding?.expectedMm ?? null,
    equipment: option?.equipment ?? null,
    point: point === null ? null : brief.points[point]!.name,
    meets,
    places: [...row.places],
    left: leftOf(said),
  }
}

/** The first screen in words: the sentence, a row for every contaminant of every line, what to ask and test. */
export function answerWords(answered: Answered): AdviceAnswer {
  const { brief, lines } = answered
  const parts = lines.map(({ name }, line) => ({ name, said: headlineOf(answered, line) }))
  const severity = ({ contaminant }: AnswerRow) => brief.contaminants[contaminant]!.severity
  const rank = ({ meets }: AnswerRow) => FIRST.indexOf(meets)
  return {
    sentence: parts
      .map(({ name, said }) => {
        const text = said.map((one) => one.text).join(' ')
        return parts.length > 1 ? `Line “${name}”: ${text}` : text
      })
      .join(' '),
    parts: parts.flatMap(({ name, said }) => said.map((one) => ({ line: name, ...saidOf(one) }))),
    rows: lines.flatMap(({ rows }, line) =>
      rows
        .map((row) => rowOf(answered, line, row))
        .sort((a, b) => rank(a) - rank(b) || severity(b) - severity(a) || a.contaminant - b.contaminant),
    ),
    ask: once(lines.flatMap((_, line) => spoken(answered, { type: 'asks', line }).map(saidOf))),
    test: once(lines.flatMap((_, line) => spoken(answered, { type: 'tests', line }).map(saidOf))),
  }
}
