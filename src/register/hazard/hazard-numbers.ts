import { waysIn } from '../../brief/entry.ts'
import type { Brief, Calculation } from '../../contract/index.ts'
import type { Answers } from '../line/answers.ts'
import { findingOf, type InPlace, type Line } from '../line/controls-in-place.ts'
import type { Throughput } from '../line/throughput.ts'
import { COUNTS, calculation, FRAGMENTS, WORKING } from '../line/trail.ts'
import { factorOfTwo, type Moved } from '../rate/factor-of-two.ts'
import { type HazardRates, hazardRates } from '../rate/hazard-rates.ts'
import { missed } from '../rate/misses.ts'
import { type ControlLog, logsOf, type Stream, streamsOf } from '../rate/streams.ts'
import type { ControlChance } from '../sizes/control-chance.ts'
import type { FragmentSizes } from '../sizes/fragment-sizes.ts'
import { controlChanceOf } from '../sizes/from-finding.ts'
import { usualFragments } from '../sizes/usual-fragments.ts'
import { CONCERN_MM, type Seen, seenBy } from './seen.ts'

/** Share of the time that a seen piece is really taken out, until a trial or a record says (assumption). */
export const USUAL_WORKING_SHARE = 0.999

/** All the figures of one contaminant on one line. */
export interface HazardNumbers {
  readonly line: Line
  readonly contaminant: number
  readonly controls: readonly InPlace[]
  readonly chances: readonly ControlChance[]
  readonly seen: readonly Seen[]
  readonly sizes: FragmentSizes
  readonly streams: readonly Stream[]
  readonly logs: readonly ControlLog[]
  readonly rates: HazardRates
  readonly moved: readonly Moved[]
  /** Most of what passes of long pieces is the time a control does not work, not what it cannot see. */
  readonly workingShareRules: boolean
  /** Where the incidence came from. */
  readonly incidenceFrom: 'finds' | 'brief' | 'none'
  readonly calculations: readonly Calculation[]
}

/** Works out one contaminant of a line: fragments, chances, streams, arrivals, misses. */
export function hazardNumbers(
  brief: Brief,
  line: Line,
  contaminant: number,
  throughput: Throughput | null,
  answers: Answers,
): HazardNumbers {
  const { controls } = line
  const sizes = fragmentsOf(brief, line, contaminant, answers)
  const chances = controls.map((control) => {
    const share = answers.number(
      `p${control.pointIndex}.working-share`,
      USUAL_WORKING_SHARE,
      '',
      [0, 1],
    ).value
    const finding = findingOf(control, contaminant)
    return finding
      ? controlChanceOf(finding, share)
      : { places: [{ share: 1, a50Mm: null, a90Mm: null }], workingShare: share }
  })
  const streams = streamsOf(brief, contaminant, controls)
  const seen = chances.map((chance) => seenBy(chance, sizes))
  const found = logsOf(brief.finds, contaminant, controls)
  const logs = found.length > 0 ? found : logFromBrief(brief, contaminant, seen, throughput)
  const input = { sizes, controls: chances, streams, logs }
  const rates = hazardRates(input)
  const perfect = chances.map((chance) => ({ ...chance, workingShare: 1 }))
  const long = missed(sizes, chances, CONCERN_MM).independent
  return {
    line,
    contaminant,
    controls,
    chances,
    seen,
    sizes,
    streams,
    logs,
    rates,
    moved: controls.length > 0 && logs.length > 0 ? factorOfTwo(input) : [],
    workingShareRules:
      controls.length > 0 && long > 0 && missed(sizes, perfect, CONCERN_MM).independent < long / 2,
    incidenceFrom: found.length > 0 ? 'finds' : logs.length > 0 ? 'brief' : 'none',
    calculations: trailOf(brief, line, contaminant, rates, controls),
  }
}

/** Fragments as assumed, with what a person says of median, factor and thickness for length. */
function fragmentsOf(brief: Brief, line: Line, contaminant: number, answers: Answers): FragmentSizes {
  const last = line.controls.at(-1)
  const expected = last ? (findingOf(last, contaminant)?.expectedMm ?? null) : null
  const usual = usualFragments(
    brief.contaminants[contaminant]!,
    brief.contaminants[contaminant]!.mustFindMm ?? expected,
  )
  const number = (key: string, filled: number, unit: string, range: readonly [number, number]) =>
    answers.number(`c${contaminant}.${key}`, filled, unit, range).value
  const perLength = usual.shapes.reduce((sum, shape) => sum + shape.share * shape.perLength, 0)
  const scale = number('shape', perLength, '', [0.01, 1]) / perLength
  return {
    medianMm: number('median', usual.medianMm, 'mm', [0.1, 100]),
    factor: number('factor', usual.factor, '', [1.05, 5]),
    shapes: usual.shapes.map((shape) => ({ ...shape, perLength: Math.min(1, shape.perLength * scale) })),
  }
}

/** "Found per million packs" of the brief as the log of the last control that sees the piece. */
function logFromBrief(
  brief: Brief,
  contaminant: number,
  seen: readonly Seen[],
  throughput: Throughput | null,
): ControlLog[] {
  const perMillion = brief.contaminants[contaminant]!.foundPerMillionPacks
  const control = seen.findLastIndex(({ sees }) => sees !== 'no')
  if (perMillion === null || control < 0) return []
  const millionPacks = (throughput?.perYear ?? 1e6) / 1e6
  return [{ control, millionPacks, found: perMillion * millionPacks, events: perMillion * millionPacks }]
}

/** Id of the calculation of a control's mean chance. */
export const meanChanceId = ({ pointIndex, option }: InPlace, contaminant: number): string =>
  `p${pointIndex}.${option.equipment}.c${contaminant}.mean-chance`

/** Beginning of the ids of a hazard's calculations; a line is named by its last point. */
export const idOf = (line: Line, contaminant: number): string =>
  `p${line.points.at(-1)}.c${contaminant}.register`

/** Ways in as the brief tells them, with the programme in place at each. */
export function entriesOf(brief: Brief, contaminant: number) {
  const flow = brief.given.flow ?? []
  return waysIn(brief, contaminant).map(({ step, at, share }) => ({
    step,
    share,
    programme: flow[at]?.upstreamControl ?? '',
  }))
}

function trailOf(
  brief: Brief,
  line: Line,
  contaminant: number,
  rates: HazardRates,
  controls: readonly InPlace[],
): Calculation[] {
  const id = idOf(line, contaminant)
  const means = controls.map((control, i) =>
    calculation(
      meanChanceId(control, contaminant),
      `mean chance of finding what arrives, ${control.option.label}`,
      'P̄',
      rates.meanChances[i]!,
      '',
      '∫ f(L) · w · Σ share · Φ(ln(d/a50)/s) dL, over length and shapes',
      findingOf(control, contaminant)?.calculation ? [findingOf(control, contaminant)!.calculation] : [],
      [FRAGMENTS, WORKING],
    ),
  )
  const found = brief.finds.length > 0 ? 'finds' : 'found per million packs'
  const arriving = calculation(
    `${id}.arriving`,
    'pieces arriving',
    'λ',
    rates.total,
    'per million',
    rates.isBound ? '2.996 ÷ (million packs · P̄); nothing found, 95 %' : `${found} ÷ (million packs · P̄)`,
    means.map((one) => one.id),
    [COUNTS, FRAGMENTS],
  )
  const after = rates.rows.map((row) =>
    calculation(
      `${id}.after-${row.fromLengthMm}`,
      `pieces passing, longest length from ${row.fromLengthMm} mm`,
      'm',
      row.after,
      'per million',
      'λ · ∫ f(L) · Π(1 − Pⱼ(d)) dL, controls in series',
      [arriving.id],
      [COUNTS, FRAGMENTS, WORKING],
    ),
  )
  return [...means, arriving, ...after]
}
