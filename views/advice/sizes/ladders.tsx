import { mmAxis } from '../../../src/charts/mm-axis.ts'
import { type LadderGroup, type LadderRow, SizeLadder } from '../../../src/charts/size-ladder.tsx'
import type { Advice, Finding, Option } from '../../../src/contract/advice.ts'
import { measureWords, type Names, pieceWords } from '../../words/contaminant.ts'
import { sizeWords } from '../../words/size.ts'
import { MEETS_WORDS, VERDICT_WORDS } from '../../words/verdict.ts'
import type { Links } from '../links.ts'
import { findingOf, type Wanted, wantedOf } from './findings.ts'
import { LadderKey } from './ladder-key.tsx'
import { LadderNumbers } from './ladder-numbers.tsx'

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  readonly print: boolean
}

/** The size ladder of every contaminant, all on one axis so that they can be compared down the page. */
export function Ladders({ advice, names, links, print }: Props) {
  const drawn = wantedOf(advice).filter((wanted) => groupsOf(advice, wanted).length > 0)
  if (drawn.length === 0) return null
  const findings = advice.points.flatMap((point) => point.options.flatMap((option) => option.findings))
  const axis = mmAxis(
    findings.flatMap((one) => [
      one.bestMm,
      one.halfMm,
      one.expectedMm,
      one.sureMm,
      one.cautiousMm,
      one.mustFindMm,
    ]),
  )
  return (
    <section aria-labelledby="ladders">
      <h2 id="ladders">Size ladder</h2>
      <LadderKey />
      <div class="ladders">
        {drawn.map((wanted) => (
          <figure class="ladder-figure" id={`ladder-${wanted.contaminant}`}>
            <figcaption>
              <h3>{pieceWords(wanted, names)}</h3>
            </figcaption>
            <SizeLadder
              id={`picture-${wanted.contaminant}`}
              title={`Size ladder: ${pieceWords(wanted, names)}`}
              description={describe(advice, wanted)}
              axis={axis}
              mustFindMm={wanted.mustFindMm}
              mustFindWords={`you must find ${wanted.mustFindMm} mm`}
              groups={groupsOf(advice, wanted)}
            />
            <LadderNumbers advice={advice} wanted={wanted} links={links} print={print} />
          </figure>
        ))}
      </div>
    </section>
  )
}

/** Machines shown for teaching only are left to the tables, where there are others. */
function groupsOf(advice: Advice, wanted: Wanted): LadderGroup[] {
  const groups = advice.points.map((point) => {
    const ranked = point.options.filter((option) => option.rank !== null)
    const shown = ranked.length > 0 ? ranked : point.options
    return {
      name: advice.points.length > 1 ? point.name : '',
      rows: shown.flatMap((option) => {
        const finding = findingOf(option, wanted.contaminant)
        return finding ? [rowOf(option, finding)] : []
      }),
    }
  })
  return groups.filter((group) => group.rows.length > 0)
}

function rowOf(option: Option, finding: Finding): LadderRow {
  const { mark, words } =
    option.verdict === 'not-suitable' ? VERDICT_WORDS['not-suitable'] : MEETS_WORDS[finding.meets]
  return {
    label: option.label.replace(/ \(.*\)$/, ''),
    bestMm: finding.bestMm,
    halfMm: finding.halfMm,
    expectedMm: finding.expectedMm,
    sureMm: finding.sureMm,
    cautiousMm: finding.cautiousMm,
    mark: `${mark} ${words}`,
    numbers: numbersOf(finding),
    ruledOut: option.verdict === 'not-suitable',
  }
}

function numbersOf({ expectedMm, cautiousMm, bestMm }: Finding): string {
  if (expectedMm === null) return bestMm === null ? 'no size' : 'no size to expect'
  return cautiousMm === null
    ? `${sizeWords(expectedMm)} mm expected, nothing to promise`
    : `${sizeWords(expectedMm)} to ${sizeWords(cautiousMm)} mm`
}

function describe(advice: Advice, wanted: Wanted): string {
  const lines = groupsOf(advice, wanted).flatMap((group) =>
    group.rows.map(
      (row) => `${group.name ? `${group.name}, ` : ''}${row.label}: ${row.numbers}, ${row.mark.slice(2)}`,
    ),
  )
  const asked = wanted.mustFindMm === null ? 'No size was asked' : `To find: ${wanted.mustFindMm} mm`
  return `${asked}, ${measureWords(wanted.shape)}. ${lines.join('. ')}.`
}
