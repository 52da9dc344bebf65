import type { ConditionTrace, Reason } from '../contract/index.ts'
import { aboutClaims } from './about-claims.ts'
import { aboutMachine } from './about-machine.ts'
import type { Side } from './sides.ts'

/** Something to ask the supplier of one side or to settle ourselves, and why. */
export interface Question {
  readonly ask: string
  readonly because: string
}

/** What each supplier is asked, apart from what the buyer has to settle. */
export interface Questions {
  /** To every supplier alike; empty where there is only one side. */
  readonly toAll: readonly Question[]
  /** To the supplier of each side, in the order of the sides. */
  readonly toEach: readonly (readonly Question[])[]
  readonly ourselves: readonly Question[]
}

/** Words of the pieces of a comparison, in its order, and of any material. */
export interface PieceNames {
  readonly pieces: readonly string[]
  readonly ofMaterial: (id: string) => string
}

const once = (questions: readonly Question[]): Question[] => [
  ...new Map(questions.map((question) => [question.ask, question])).values(),
]

/** Facts that a rule asked for and nobody knew, by their labels; the machine's own, or all others. */
function unknownFacts(condition: ConditionTrace, ofMachine: boolean): string[] {
  if (condition.truth !== 'unknown') return []
  if (condition.kind !== 'leaf')
    return (condition.children ?? []).flatMap((child) => unknownFacts(child, ofMachine))
  return (condition.fact ?? '').startsWith('machine.') === ofMachine ? [condition.label ?? ''] : []
}

function unknownFor({ option, point, laid: { advice } }: Side, ofMachine: boolean): Question[] {
  const mine = advice.trace.rules.filter(
    (rule) => rule.outcome === 'unknown' && rule.equipment === option.equipment && rule.point === point.name,
  )
  const labels = new Set(mine.flatMap(({ conditions }) => unknownFacts(conditions, ofMachine)))
  return [...labels]
    .filter((label) => label !== '')
    .map((label) => ({
      ask: `What is the ${label.charAt(0).toLowerCase()}${label.slice(1)}?`,
      because: 'A rule needs it and nobody has said.',
    }))
}

/** What the rules require of a machine and of its place, by who answers for it. */
function required({ option, pointIndex, laid: { advice } }: Side, who: Reason['answeredBy']): Question[] {
  return [...option.reasons, ...(advice.points[pointIndex]?.reasons ?? [])]
    .filter(({ type, truth, answeredBy }) => type === 'requires' && truth !== 'false' && answeredBy === who)
    .map(({ text, title }) => ({ ask: text, because: `${title}.` }))
}

/** Sizes that are expected and not to be promised; those that the same assumption widens stand together. */
function aboutSizes({ findings }: Side, pieces: readonly string[]): Question[] {
  const byWidest = new Map<string, string[]>()
  findings.forEach((finding, contaminant) => {
    if (finding?.meets !== 'maybe') return
    const sizes = byWidest.get(finding.widest) ?? []
    sizes.push(`${finding.mustFindMm} mm of ${pieces[contaminant]}`)
    byWidest.set(finding.widest, sizes)
  })
  return [...byWidest].map(([widest, sizes]) => ({
    ask: `Show in our product before the order: ${sizes.join(', ')}.`,
    because: `Expected, but not safe to promise${widest === '' ? '' : `; what widens the range most is ${widest}`}.`,
  }))
}

function toSupplierOf(side: Side, words: PieceNames): Question[] {
  return once([
    ...aboutClaims(side, words.ofMaterial),
    ...aboutSizes(side, words.pieces),
    ...aboutMachine(side),
    ...unknownFor(side, true),
    ...required(side, 'supplier'),
  ])
}

/** What nobody can answer but the buyer: facts of food, pack and line that rules miss, and what the site has to do. */
function ourHomework(side: Side): Question[] {
  return [...unknownFor(side, false), ...required(side, 'buyer')]
}

/** Questions made from what is unknown, assumed or not to be promised; what is asked of all stands once. */
export function questionsOf(sides: readonly Side[], words: PieceNames): Questions {
  const each = sides.map((side) => toSupplierOf(side, words))
  const isAskedOfAll = ({ ask }: Question) =>
    sides.length > 1 && each.every((own) => own.some((one) => one.ask === ask))
  return {
    toAll: (each[0] ?? []).filter(isAskedOfAll),
    toEach: each.map((own) => own.filter((question) => !isAskedOfAll(question))),
    ourselves: once(sides.flatMap(ourHomework)),
  }
}
