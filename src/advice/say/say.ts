import type { Advice, Caution, Removal, Versions } from '../../contract/index.ts'
import { placeId, quoteId } from '../facts/place-id.ts'
import type { Answered, PlacedOutcome } from '../stages.ts'
import { answerWords } from './answer.ts'
import { cautionsFrom } from './cautions.ts'
import { closeCallWords } from './close-call.ts'
import { combinationWords } from './combination.ts'
import { contrastWords } from './contrast.ts'
import { optionWords } from './option.ts'
import { preventionOf } from './prevention.ts'
import { quoteWords } from './quotes.ts'
import { toReason, toRuleTrace } from './reason.ts'
import { judgedRemovals } from './removals.ts'
import { sourcesUsed } from './sources-used.ts'

/** All of an advice that is known before anything is searched, registered or planned. */
export type Said = Omit<
  Advice,
  'missing' | 'changes' | 'changesNote' | 'changesGrounds' | 'register' | 'checks'
>

/** Each id once, in the order first met. */
function byId<T extends { readonly id: string }>(items: readonly T[]): T[] {
  return [...new Map(items.map((item) => [item.id, item])).values()]
}

/** The stage: what was decided and ordered, in words. */
export function say(ordered: Answered, versions: Versions): Said {
  const { brief, facts, outcomes, answers, lines } = ordered
  const answer = answerWords(ordered)
  const combination = combinationWords(ordered, answer.rows)
  const points = pointsOf(ordered)
  const fired = outcomes.filter((o) => o.outcome === 'fired')
  const prevention = preventionAt(answer.rows, (contaminants) => preventionOf(contaminants, fired))
  const calculations = calculationsOf(ordered)
  return {
    brief: brief.given,
    assumed: brief.assumed.map((a) => ({ ...a, range: a.range ? [a.range[0], a.range[1]] : null })),
    versions,
    summary: answer.sentence,
    answer,
    points,
    combination,
    prevention,
    quotes: ordered.quoted.map((one) => quoteWords(one, saidOfQuote(ordered, one.index))),
    trace: {
      versions,
      facts: [...facts],
      calculations,
      rules: [...outcomes, ...answers].map((o) => toRuleTrace(o, brief, lines)),
      sources: sourcesUsed(ordered.book, calculations, [
        ...fired,
        ...answers.filter((o) => o.outcome === 'fired'),
        ...prevention,
      ]),
    },
    cautions: cautionsOf(ordered),
  }
}

/** What the rules say of one quoted size. */
const saidOfQuote = ({ answers }: Answered, index: number) =>
  answers.filter((o) => o.outcome === 'fired' && o.scope === 'quote' && o.beside === quoteId(index))

/** Rows whose size asked is met, if only as expected, need nobody to keep it out. */
const isKeptOut = ({ meets, left }: Advice['answer']['rows'][number]) =>
  meets === 'no' || meets === 'cannot' || left.kind === 'prevent'

/** How to keep out what is not met, with the lines on which it is not. */
function preventionAt(
  rows: Advice['answer']['rows'],
  preventionOf: (contaminants: readonly number[]) => Omit<Advice['prevention'][number], 'lines'>[],
): Advice['prevention'] {
  const lost = rows.filter(isKeptOut)
  return preventionOf(lost.map(({ contaminant }) => contaminant)).map((one) => ({
    ...one,
    lines: lost.filter(({ contaminant }) => contaminant === one.contaminant).map(({ line }) => line),
  }))
}

/** Said with what is kept out, in the register and the check plan, and with what can still enter. */
const SAID_ELSEWHERE: readonly PlacedOutcome['type'][] = ['prevents', 'records', 'combines']

/** A rule that asks something of the point itself, whichever machine stands there; its warnings are cautions. */
const isOfPoint = (o: PlacedOutcome, at: number) =>
  o.outcome === 'fired' &&
  o.pointIndex === at &&
  o.equipment === null &&
  ![...SAID_ELSEWHERE, 'warns'].includes(o.type)

function pointsOf({ brief, points, removals, outcomes, answers, misses }: Answered): Advice['points'] {
  return points.map(({ options, apart, close }, at) => {
    const saidOf = (equipment: string) =>
      answers.filter(
        (o) =>
          o.outcome === 'fired' &&
          ['grounds', 'misses'].includes(o.type) &&
          o.pointIndex === at &&
          o.equipment === equipment,
      )
    const missesOf = (equipment: string) =>
      misses.filter((o) => o.pointIndex === at && o.equipment === equipment)
    const saidOfClose = answers.filter(
      (o) => o.outcome === 'fired' && o.scope === 'close' && o.pointIndex === at,
    )
    const saidOfApart = ({ first, second }: { readonly first: string; readonly second: string }) =>
      answers.filter(
        (o) =>
          o.outcome === 'fired' &&
          o.scope === 'apart' &&
          o.pointIndex === at &&
          o.equipment === second &&
          o.beside === placeId({ point: at, equipment: first }),
      )
    const said = options.map((option) =>
      optionWords(brief, option, missesOf(option.equipment), saidOf(option.equipment)),
    )
    const named = (equipment: string) => said.find((option) => option.equipment === equipment)!
    return {
      name: brief.points[at]!.name,
      reasons: outcomes.filter((o) => isOfPoint(o, at)).map((o) => toReason(o, false)),
      options: said,
      removals: removals[at]!.flatMap((one): Removal[] => judgedRemovals(one, at, outcomes)),
      contrasts: apart.map((one) =>
        contrastWords(at, one, [named(one.first), named(one.second)], saidOfApart(one)),
      ),
      closeCall: close && closeCallWords(close, saidOfClose),
    }
  })
}

const calculationsOf = ({ detectors, removals, calculations }: Answered) =>
  byId([
    ...detectors.flat().flatMap(({ assessed }) => assessed.assessment.calculations),
    ...removals.flat().flatMap((one) => one.calculations),
    ...calculations,
  ])

/** What rules say of the whole brief, and what warns at a point; prevention stands with what it keeps out. */
function cautionsOf({ brief, outcomes }: Answered): Caution[] {
  const general = outcomes.filter(
    (o) =>
      o.outcome === 'fired' &&
      o.equipment === null &&
      !SAID_ELSEWHERE.includes(o.type) &&
      (o.pointIndex === null || o.type === 'warns'),
  )
  return cautionsFrom(brief, general)
}
