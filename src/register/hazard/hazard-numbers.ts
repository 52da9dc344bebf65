import { waysIn } from '../../brief/entry.ts'
import type { Brief, Calculation, Finding } from '../../contract/index.ts'
import type { Answers } from '../line/answers.ts'
import { findingOf, type InPlace, type Line } from '../line/controls-in-place.ts'
import type { RemovedBySize } from '../line/separators.ts'
import { type Station, stationsOf } from '../line/stations.ts'
import type { Throughput } from '../line/throughput.ts'
import { factorOfTwo, type Moved } from '../rate/factor-of-two.ts'
import { type HazardRates, hazardRates } from '../rate/hazard-rates.ts'
import { meanChance, missed } from '../rate/misses.ts'
import { type ControlLog, logsOf, type Stream, streamsOf } from '../rate/streams.ts'
import type { ControlChance } from '../sizes/control-chance.ts'
import type { FragmentSizes } from '../sizes/fragment-sizes.ts'
import { controlChanceOf } from '../sizes/from-finding.ts'
import { fragmentsOf } from './hazard-fragments.ts'
import { type HazardSeparator, hazardSeparator } from './hazard-separator.ts'
import { trailOf } from './hazard-trail.ts'
import { CONCERN_MM, type Seen, type SeenLimits, seenBy } from './seen.ts'

/** Share of the time that a seen piece is really taken out, until a trial or a record says (assumption). */
export const USUAL_WORKING_SHARE = 0.999

/** What the register is handed beside the brief and its answers. */
export interface Given {
  readonly removedBySize: RemovedBySize
  readonly limits: SeenLimits
}

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
  /** Of each control: chance averaged over everything that arrives, as expected and at the promised sizes. */
  readonly meanChances: readonly { readonly expected: number; readonly cautious: number | null }[]
  /** Devices that separate, with the share of all that arrives which each takes out, worst and best. */
  readonly separators: readonly HazardSeparator[]
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
  given: Given,
): HazardNumbers {
  const { controls } = line
  const sizes = fragmentsOf(brief, line, contaminant, answers)
  const workingShareAt = (pointIndex: number) =>
    answers.number(`p${pointIndex}.working-share`, USUAL_WORKING_SHARE, '', [0, 1]).value
  const chanceOf = (control: InPlace, worse = 1): ControlChance => {
    const share = workingShareAt(control.pointIndex)
    const finding = findingOf(control, contaminant)
    return finding
      ? controlChanceOf(finding, share, worse)
      : { places: [{ share: 1, a50Mm: null, a90Mm: null }], workingShare: share }
  }
  const chances = controls.map((control) => chanceOf(control))
  const stations = stationsOf(line, contaminant, chances, workingShareAt, given.removedBySize, sizes)
  const stationChances = stations.map(({ chance }) => chance)
  const streams = streamsOf(brief, contaminant, controls)
  const seen = chances.map((chance) => seenBy(chance, sizes, given.limits))
  const found = logsOf(brief.finds, contaminant, controls)
  const logs = found.length > 0 ? found : logFromBrief(brief, contaminant, seen, throughput)
  const input = {
    sizes,
    controls: stationChances,
    streams: streamsOf(brief, contaminant, stations),
    logs: logs.map((log) => ({ ...log, control: stations.findIndex((one) => one.control === log.control) })),
  }
  const rates = hazardRates(input)
  const separators = stations.flatMap(({ separator }) =>
    separator ? [hazardSeparator(contaminant, separator, sizes)] : [],
  )
  const perfect = stationChances.map((chance) => ({ ...chance, workingShare: 1 }))
  const long = missed(sizes, stationChances, CONCERN_MM).independent
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
    meanChances: controls.map((control, i) => {
      const worse = promisedToExpected(findingOf(control, contaminant))
      return {
        expected: meanChance(sizes, chances[i]!),
        cautious: worse === null ? null : meanChance(sizes, chanceOf(control, worse)),
      }
    }),
    separators,
    moved: controls.length > 0 && logs.length > 0 ? factorOfTwo(input, lastControl(stations)) : [],
    workingShareRules:
      controls.length > 0 && long > 0 && missed(sizes, perfect, CONCERN_MM).independent < long / 2,
    incidenceFrom: found.length > 0 ? 'finds' : logs.length > 0 ? 'brief' : 'none',
    calculations: trailOf(
      brief,
      line,
      contaminant,
      rates,
      controls,
      chances.map((chance) => meanChance(sizes, chance)),
      separators,
    ),
  }
}

/** How many times larger the promised size is than the expected one; null where either is missing. */
function promisedToExpected(finding: Finding | undefined): number | null {
  if (!finding || finding.expectedMm === null || finding.cautiousMm === null) return null
  return finding.cautiousMm / finding.expectedMm
}

const lastControl = (stations: readonly Station[]): number =>
  stations.findLastIndex(({ control }) => control !== null)

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

/** Ways in as the brief tells them, with the programme in place at each. */
export function entriesOf(brief: Brief, contaminant: number) {
  const flow = brief.given.flow ?? []
  return waysIn(brief, contaminant).map(({ step, at, share }) => ({
    step,
    share,
    programme: flow[at]?.upstreamControl ?? '',
  }))
}
