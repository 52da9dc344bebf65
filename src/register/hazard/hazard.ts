import type { Ask, Brief, Hazard, HazardControl, Removal } from '../../contract/index.ts'
import { LIKELIHOOD_WORDS, likelihoodOf, significanceOf } from '../class/look-up.ts'
import type { Answers } from '../line/answers.ts'
import type { Throughput } from '../line/throughput.ts'
import { sentencesFor } from '../say/sentences.ts'
import { type CheckedBy, controlOf, type HazardRating } from './control.ts'
import { entriesOf, type HazardNumbers } from './hazard-numbers.ts'
import { idOf } from './hazard-trail.ts'
import { comesBackBehind, reworkOf } from './rework.ts'
import { CONCERN_MM } from './seen.ts'
import { likelihoodFrom, severityOf } from './severity.ts'

export interface HazardInput {
  readonly brief: Brief
  readonly numbers: HazardNumbers
  readonly label: string
  readonly throughput: Throughput | null
  /** The check of each control, in the order of the line. */
  readonly checks: readonly CheckedBy[]
  readonly answers: Answers
  readonly ask: Ask
  /** What the advice says of every device, for its conditions. */
  readonly removals: readonly (Removal & { readonly point: string })[]
}

/** A hazard of a line as the register keeps it. */
export async function hazardOf(input: HazardInput): Promise<Hazard> {
  const { brief, numbers, label, throughput, checks, answers, ask, removals } = input
  const { contaminant, rates, sizes } = numbers
  const yearly = (perMillion: number | null) =>
    perMillion === null || throughput === null ? null : (perMillion * throughput.perYear) / 1e6
  const concern = rates.rows.find(({ fromLengthMm }) => fromLengthMm === CONCERN_MM)!
  const scale = yearly(concern.before) === null ? 0 : yearly(concern.before)! / (rates.total || 1)
  const arrivingRange = rates.totalRange && {
    low: scale * rates.totalRange.low,
    high: scale * rates.totalRange.high,
  }
  const severity = severityOf(brief, contaminant, answers)
  const likelihood = likelihoodFrom(
    brief,
    contaminant,
    {
      aYear: yearly(concern.before),
      range: arrivingRange,
      isBound: rates.isBound,
      from: numbers.incidenceFrom,
    },
    answers,
  )
  const significance = significanceOf(severity.value, likelihood.value)
  const rework = reworkOf(brief, answers)
  const rating = { severity, likelihood, significance }
  const controls: HazardControl[] = []
  for (const [at] of numbers.controls.entries())
    controls.push(await controlOf(brief, numbers, at, rating, checks[at]!, answers, ask))
  const afterAYear = yearly(concern.after)
  const decisive = controls.findLast((_, i) => numbers.seen[i]!.sees !== 'no')
  const lastSeeing = numbers.controls[numbers.seen.findLastIndex(({ sees }) => sees !== 'no')]
  const reworkBehind = comesBackBehind(brief, rework, lastSeeing?.pointIndex)
  const entries = entriesOf(brief, contaminant)
  const programmes = [...new Set(entries.flatMap(({ programme }) => (programme ? [programme] : [])))]
  const acceptable = answers.word(`c${contaminant}.acceptable`, '')
  const complaints = brief.finds
    .filter((find) => find.contaminant === contaminant && find.by === 'customer')
    .reduce((sum, { found }) => sum + found, 0)
  const said = await ask(
    { ground: 'hazard', pointIndex: numbers.line.points.at(-1) ?? null, equipment: null, contaminant },
    {
      'hazard.severity': severity.value,
      'hazard.likelihood': likelihood.value,
      'hazard.controls': controls.length,
      'hazard.seenBy': numbers.seen.filter(({ sees }) => sees !== 'no').length,
      'hazard.programmes': programmes.join('; '),
      'hazard.programmeCount': programmes.length,
      'hazard.incidenceKnown': rates.total !== null,
      'hazard.entersBehind': numbers.streams.some(({ before }) => before >= controls.length),
      'hazard.devices': numbers.separators.length,
      'hazard.deviceNames': numbers.separators.map(deviceWords).join('; '),
      'hazard.reworkFrom': rework?.from ?? '',
      'hazard.reworkTo': rework?.to ?? '',
      'hazard.reworkBehind': reworkBehind,
      'hazard.acceptableGiven': acceptable.from === 'entered',
      'hazard.afterAYear': afterAYear,
      'hazard.workingShareRules': numbers.workingShareRules,
      'hazard.workingShare': 100 * (numbers.chances.at(-1)?.workingShare ?? 0),
      'hazard.complaints': complaints,
      'hazard.allAYear': rounded(yearly(rates.rows[0]!.after)),
    },
  )
  const [level] = sentencesFor(said, 'acceptable')
  return {
    line: numbers.line.name,
    contaminant,
    label,
    steps: entries.map(({ step }) => step),
    severity,
    likelihood: {
      value: likelihood.value,
      words: LIKELIHOOD_WORDS[likelihood.value - 1]!,
      from: likelihood.from,
      calculation: likelihood.isWorkedOut ? `${idOf(numbers.line, contaminant)}.arriving` : '',
    },
    significance,
    afterControl: afterAYear === null ? null : residual(rating, afterAYear),
    entries,
    fragments: {
      medianMm: sizes.medianMm,
      factor: sizes.factor,
      shapes: sizes.shapes.map((shape) => ({ ...shape })),
      confirmed: answers.confirmedBy(`c${contaminant}.median`),
      moved: numbers.moved.map(({ what, meanChance, rates: moved }) => ({
        what,
        meanChance,
        arrive: moved.total,
        missed: moved.rows.map(({ fromLengthMm, after }) => ({ fromLengthMm, perMillion: after })),
      })),
    },
    incidence: {
      perMillion: rates.total,
      low: numbers.incidenceFrom === 'finds' ? (rates.totalRange?.low ?? null) : null,
      high: numbers.incidenceFrom === 'finds' ? (rates.totalRange?.high ?? null) : null,
      from: numbers.incidenceFrom,
      isBound: rates.isBound,
      calculation: `${idOf(numbers.line, contaminant)}.arriving`,
    },
    controls,
    separators: numbers.separators.map(({ point, equipment, label: name, takesOut, calculation }) => {
      const told = removals.find(
        (one) => one.point === point && one.equipment === equipment && one.contaminant === contaminant,
      )
      return {
        point,
        equipment,
        label: name,
        takesOut: [...takesOut] as [number, number],
        neverRemoves: told?.neverRemoves ?? '',
        condition: told?.condition ?? '',
        calculation,
      }
    }),
    rework: rework && { from: rework.from, to: rework.to, behind: reworkBehind },
    missesPerMillion: rates.rows.map((row) => ({
      fromLengthMm: row.fromLengthMm,
      before: row.before,
      after: row.after,
      low: numbers.incidenceFrom === 'finds' ? (row.range?.low ?? null) : null,
      high: numbers.incidenceFrom === 'finds' ? (row.range?.high ?? null) : null,
      afterDependent: row.afterDependent,
      piecesAYear: yearly(row.after),
      calculation: `${idOf(numbers.line, contaminant)}.after-${row.fromLengthMm}`,
    })),
    complaints,
    acceptableLevel:
      acceptable.from === 'entered'
        ? { text: acceptable.value, basis: acceptable.because, rule: '' }
        : { text: level?.text ?? '', basis: '', rule: level?.rule ?? '' },
    class: decisive?.class ?? 'not-controlled-here',
    decisive: decisive ? controls.indexOf(decisive) : null,
    unseen: sentencesFor(said, 'unseen'),
    says: sentencesFor(said, 'note'),
  }
}

const rounded = (value: number | null) => (value === null ? null : Number(value.toPrecision(2)))

const pct = (share: number) => `${Number((100 * share).toPrecision(2))} %`

/** "sieve at belt (20 to 60 % of all that arrives)". */
const deviceWords = ({ label, point, takesOut: [worst, best] }: HazardNumbers['separators'][number]) =>
  `${label} at “${point}” (${pct(worst)} to ${pct(best)} of all that arrives)`

/** What is left behind the controls; never likelier than what arrives, whatever a person rated that at. */
function residual({ severity, likelihood: before }: HazardRating, piecesAYear: number) {
  const likelihood = Math.min(before.value, likelihoodOf(piecesAYear))
  return { likelihood, significance: significanceOf(severity.value, likelihood) }
}
