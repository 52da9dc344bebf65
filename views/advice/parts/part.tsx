import type { Advice } from '../../../src/contract/advice.ts'
import type { Names } from '../../words/contaminant.ts'
import { askedWords } from '../../words/path.ts'
import { Assumptions } from '../assumptions.tsx'
import { Quotes } from '../first/quotes.tsx'
import { RatherLinks } from '../first/rather-links.tsx'
import { linksTo, type PartName } from '../links.ts'
import { Cautions, cautionsOf, Law, lawOf } from '../reasons/cautions.tsx'
import { type Citations, citationsOf } from '../reasons/citations.ts'
import { CitedSources } from '../reasons/cited.tsx'
import { MissingSection } from '../reasons/missing-inputs.tsx'
import { wantedOf } from '../sizes/findings.ts'
import { Ladder } from '../sizes/ladder.tsx'
import { axisOf } from '../sizes/size-axis.ts'
import { type DoseLaw, TubeAndDose } from '../sizes/tube-and-dose.tsx'
import { CloseCalls } from './close-calls.tsx'
import { Device } from './device.tsx'
import { Enters } from './enters.tsx'
import { OfPoints } from './of-points.tsx'
import { Prevent } from './prevent.tsx'
import { Why } from './why.tsx'

export interface PartProps {
  readonly advice: Advice
  readonly part: PartName
  /** Of parts that speak of one machine or device. */
  readonly point: number
  readonly equipment: string
  /** Of the ladder. */
  readonly contaminant: number
  readonly names: Names
  readonly packed: string
  readonly doseLaw: DoseLaw
}

/** One part of the advice that is opened on its own; null where the advice has no such part. */
export function Part(props: PartProps) {
  const { advice, part, packed, names } = props
  const links = linksTo(packed, advice)
  switch (part) {
    case 'ladder': {
      const wanted = wantedOf(advice)[props.contaminant]!
      return <Ladder {...{ advice, wanted, names, links }} axis={axisOf(advice)} />
    }
    case 'why':
    case 'device':
      return <OfMachine {...props} citations={citationsOf(advice, part)} />
    case 'points': {
      const citations = citationsOf(advice, part)
      const cited = advice.points.flatMap(({ reasons }) => reasons.flatMap(({ sources }) => sources))
      return (
        <>
          <OfPoints advice={advice} citations={citations} packed={packed} />
          <CitedSources citations={citations} of={cited} />
        </>
      )
    }
    case 'rivals':
      return (
        <>
          <CloseCalls advice={advice} />
          <RatherLinks advice={advice} links={links} />
        </>
      )
    case 'prevent': {
      const citations = citationsOf(advice, part)
      return (
        <>
          <Prevent advice={advice} names={names} citations={citations} />
          <CitedSources citations={citations} of={advice.prevention.flatMap(({ sources }) => sources)} />
        </>
      )
    }
    case 'enters':
      return <Enters advice={advice} />
    case 'missing':
      return (
        <MissingSection
          missing={advice.missing}
          wordsOf={(path) => askedWords(path, advice)}
          hrefOf={(path) => `/brief?b=${packed}#${path}`}
          packed={packed}
        />
      )
    case 'quotes':
      return <Quotes advice={advice} names={names} packed={packed} />
    case 'cautions': {
      const citations = citationsOf(advice, part)
      return (
        <>
          <Cautions advice={advice} citations={citations} packed={packed} />
          <CitedSources citations={citations} of={cautionsOf(advice).flatMap(({ sources }) => sources)} />
        </>
      )
    }
    case 'law': {
      const citations = citationsOf(advice, part)
      return (
        <>
          <Law advice={advice} citations={citations} packed={packed} />
          <CitedSources citations={citations} of={lawOf(advice).flatMap(({ sources }) => sources)} />
        </>
      )
    }
    case 'assumed':
      return <Assumptions advice={advice} links={links} />
    case 'dose':
      return <TubeAndDose advice={advice} links={links} law={props.doseLaw} print />
    case 'sources':
      return <CitedSources citations={citationsOf(advice, part)} />
  }
}

/** True where the advice has the machine or device that a part speaks of. */
export function hasPart({
  advice,
  part,
  point,
  equipment,
  contaminant,
}: Omit<PartProps, 'names' | 'packed' | 'doseLaw'>): boolean {
  if (part === 'ladder') return wantedOf(advice)[contaminant] !== undefined
  if (part === 'why') return Boolean(advice.points[point]?.options.some((o) => o.equipment === equipment))
  if (part === 'device') return Boolean(advice.points[point]?.removals.some((r) => r.equipment === equipment))
  return true
}

function OfMachine({
  advice,
  part,
  point,
  equipment,
  names,
  packed,
  citations,
}: PartProps & { citations: Citations }) {
  const links = linksTo(packed, advice)
  const there = advice.points[point]!
  const option = there.options.find((one) => one.equipment === equipment)
  if (part === 'why' && option) {
    const cited = [...option.reasons, ...option.cautions].flatMap(({ sources }) => sources)
    return (
      <>
        <Why {...{ advice, option, point, names, links, citations }} />
        <CitedSources citations={citations} of={cited} />
      </>
    )
  }
  const rows = there.removals.filter((one) => one.equipment === equipment)
  const cited = rows.flatMap(({ reasons }) => reasons.flatMap(({ sources }) => sources))
  return (
    <>
      <Device {...{ advice, rows, point, names, links, citations }} />
      <CitedSources citations={citations} of={cited} />
    </>
  )
}
