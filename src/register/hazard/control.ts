import type { Ask, Brief, FactValues, HazardControl, Said } from '../../contract/index.ts'
import { roundedUp } from '../../numerics/rounded-up.ts'
import {
  ANSWER_WORDS,
  type Answered,
  CLASSES,
  type Classed,
  classify,
  QUESTION_IDS,
  type QuestionId,
} from '../class/classify.ts'
import { LIKELIHOOD_WORDS } from '../class/look-up.ts'
import type { Answers } from '../line/answers.ts'
import { findingOf } from '../line/controls-in-place.ts'
import { sentencesFor } from '../say/sentences.ts'
import { entriesOf, type HazardNumbers } from './hazard-numbers.ts'
import { meanChanceId } from './hazard-trail.ts'
import { comesBackBehind, reworkOf } from './rework.ts'
import type { Rated } from './severity.ts'

/** What the hazard as a whole says of itself, for each of its controls. */
export interface HazardRating {
  readonly severity: Rated
  readonly likelihood: { readonly value: number; readonly from: string }
  readonly significance: string
}

/** Pieces and interval of the check that proves a control. */
export interface CheckedBy {
  readonly pieces: string
  readonly intervalMin: number | null
}

/** One control of one hazard: eight questions asked and answered, class, limit, monitoring, verification. */
export async function controlOf(
  brief: Brief,
  numbers: HazardNumbers,
  at: number,
  rating: HazardRating,
  check: CheckedBy,
  answers: Answers,
  ask: Ask,
): Promise<HazardControl> {
  const { contaminant } = numbers
  const control = numbers.controls[at]!
  const finding = findingOf(control, contaminant)
  const shown = finding?.demonstrated?.sizeMm ?? null
  const asked = {
    pointIndex: control.pointIndex,
    equipment: control.option.equipment,
    contaminant,
  }
  const facts = factsOf(brief, numbers, at, rating, check, shown, answers)
  const said = await ask({ ground: 'control', ...asked }, facts)
  const key = `c${contaminant}.p${control.pointIndex}`
  const filled = filledAnswers(said)
  const held = Object.fromEntries(
    QUESTION_IDS.map((q) => [q, answers.word(`${key}.${q}`, filled[q].answer, ANSWER_WORDS[q])]),
  ) as Record<QuestionId, { value: string; from: string; because: string }>
  const classed = classify(Object.fromEntries(QUESTION_IDS.map((q) => [q, held[q].value])) as Answered)
  const overruled = answers.word(`${key}.class`, classed.class, CLASSES)
  const reached = reachedBy(classed)
  const validationBy = answers.word(`${key}.validation-by`, '').value
  const also = await ask(
    { ground: 'classed', ...asked },
    {
      ...facts,
      ...Object.fromEntries(QUESTION_IDS.map((_, i) => [`classed.asksQ${i + 1}`, i < reached])),
      'classed.class': overruled.value,
      'classed.pieces': check.pieces === '' ? null : check.pieces,
      'classed.intervalMin': check.intervalMin,
      'classed.intervalKnown': check.intervalMin !== null,
      'classed.validationOwed': classed.owed.includes('validation'),
      'classed.validationBy': validationBy === '' ? 'a date still to be set' : validationBy,
      'classed.pieceCheckIsMonitoring':
        answers.word('plant.piece-check', 'verification', ['verification', 'monitoring']).value ===
        'monitoring',
    },
  )
  const asking = (q: QuestionId) => also.find(({ slot, about }) => slot === 'question' && about === q)
  return {
    point: control.point,
    equipment: control.option.equipment,
    label: control.option.label,
    predictedMm: finding?.cautiousMm ?? null,
    demonstratedMm: shown,
    sizeToFindMm: finding?.mustFindMm ?? null,
    meanChance: numbers.meanChances[at]!.expected,
    meanChanceCautious: numbers.meanChances[at]!.cautious,
    workingShare: numbers.chances[at]!.workingShare,
    class: overruled.value,
    proposed: classed.class,
    because: overruled.because,
    owed: [...classed.owed],
    questions: QUESTION_IDS.slice(0, reached).map((q) => {
      const own = held[q].from === 'entered'
      return {
        id: `${key}.${q}`,
        question: asking(q)?.text ?? '',
        questionRule: asking(q)?.rule ?? '',
        answer: held[q].value,
        because: own ? held[q].because : filled[q].because,
        from: own ? ('entered' as const) : filled[q].from,
        rule: own ? '' : filled[q].rule,
      }
    }),
    criticalLimit: sentencesFor(also, 'limit'),
    monitoring: sentencesFor(also, 'monitoring'),
    verification: sentencesFor(also, 'verification'),
    notes: sentencesFor(also, 'note'),
    calculation: meanChanceId(control, contaminant),
  }
}

/** How many questions were asked before the class was settled. */
const reachedBy = ({ by }: Classed): number => {
  const at = QUESTION_IDS.indexOf(by) + 1
  return at > 4 ? QUESTION_IDS.length : at
}

/** The rules' answers by question; what no rule answers is unknown. */
function filledAnswers(said: readonly Said[]) {
  const one = <Q extends QuestionId>(q: Q) => {
    const rule = said.find(({ slot, about }) => slot === 'answer' && about.startsWith(`${q}:`))
    const answer = (rule?.about.slice(q.length + 1) ?? 'unknown') as (typeof ANSWER_WORDS)[Q][number]
    return {
      answer,
      because: rule?.text ?? '',
      rule: rule?.rule ?? '',
      from: answer === 'unknown' ? ('unknown' as const) : ('computed' as const),
    }
  }
  return {
    q1: one('q1'),
    q2: one('q2'),
    q3: one('q3'),
    q4: one('q4'),
    q5: one('q5'),
    q6: one('q6'),
    q7: one('q7'),
    q8: one('q8'),
  }
}

/** What stands ahead of the last control, in brackets. */
const earlierWords = (count: number): string =>
  count === 0
    ? ''
    : ` (${count === 1 ? 'one control' : `${count} controls`} ahead of it ${count === 1 ? 'sees' : 'see'} it too)`

function factsOf(
  brief: Brief,
  numbers: HazardNumbers,
  at: number,
  { severity, likelihood, significance }: HazardRating,
  check: CheckedBy,
  shown: number | null,
  answers: Answers,
): FactValues {
  const control = numbers.controls[at]!
  const finding = findingOf(control, numbers.contaminant)
  const seen = numbers.seen[at]!
  const later = numbers.controls.findLastIndex((_, i) => i > at && numbers.seen[i]!.sees !== 'no')
  const laterSees =
    later >= 0 && (numbers.seen[later]!.sees === 'yes' || numbers.seen[later]!.worst >= seen.worst)
  const behindLater =
    numbers.streams.some(({ before }) => before > later) ||
    comesBackBehind(brief, reworkOf(brief, answers), numbers.controls[later]?.pointIndex)
  const programmes = [
    ...new Set(
      entriesOf(brief, numbers.contaminant).flatMap(({ programme }) => (programme ? [programme] : [])),
    ),
  ]
  const point = brief.points[control.pointIndex]!
  const holder = answers.word('plant.released-by', '').value
  const react = answers.number(`p${control.pointIndex}.react`, point.reactMin ?? 10, 'min', [0, 1440]).value
  return {
    'control.label': control.option.label,
    'control.family': control.option.family,
    'control.severity': severity.value,
    'control.severityWords': severity.words,
    'control.likelihood': likelihood.value,
    'control.likelihoodWords': LIKELIHOOD_WORDS[likelihood.value - 1]!,
    'control.significance': significance,
    'control.programmes': programmes.join('; '),
    'control.programmeCount': programmes.length,
    'control.sees': seen.sees,
    'control.worstShapeFoundPct': foundPct(seen.worst),
    'control.bestShapeFoundPct': foundPct(seen.best),
    'control.worstShape': seen.worstShape,
    'control.laterPoint': later < 0 ? '' : numbers.controls[later]!.point,
    'control.laterCarries': laterSees && !behindLater,
    'control.lastSeeing': later < 0,
    'control.earlierWords': earlierWords(
      numbers.seen.filter(({ sees }, i) => i < at && sees !== 'no').length,
    ),
    'control.shown': shown !== null,
    'control.predicted': finding?.expectedMm !== null && finding !== undefined,
    'control.predictedMm': finding?.cautiousMm == null ? null : Number(roundedUp(finding.cautiousMm)),
    'control.demonstratedMm': shown,
    'control.intervalGiven': check.intervalMin !== null,
    'control.seenWithinMin': check.intervalMin === null ? null : check.intervalMin + react,
    'control.holder': holder,
    'control.holderNamed': holder !== '',
  }
}

/** A share found in per cent, rounded down to a tenth and never said to be all. */
const foundPct = (share: number): number => Math.min(99.9, Math.floor(share * 1000) / 10)
