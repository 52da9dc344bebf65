import type { MmAxis } from '../../../src/charts/mm-axis.ts'
import { BarAxis, SizeBar } from '../../../src/charts/size-bar.tsx'
import type { Advice, Finding, Option } from '../../../src/contract/advice.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { listed } from '../../words/listed.ts'
import { shortName } from '../../words/machine.ts'
import { sizeWords } from '../../words/size.ts'
import { ANSWER_WORDS } from '../../words/verdict.ts'
import { type Links, sizeLink } from '../links.ts'
import { findingOf, type Wanted } from './findings.ts'

interface Props {
  readonly advice: Advice
  readonly wanted: Wanted
  readonly names: Names
  readonly links: Links
  readonly axis: MmAxis
}

interface Line {
  readonly option: Option
  readonly finding: Finding
  readonly name: string
}

/** Ranked machines that looked for a contaminant, in the order of their points and ranks. */
export function linesOf(advice: Advice, wanted: Wanted): Line[] {
  const several = advice.points.length > 1
  return advice.points.flatMap(({ options }, at) =>
    options.flatMap((option): Line[] => {
      const finding = findingOf(option, wanted.contaminant)
      if (!finding || option.rank === null) return []
      return [{ option, finding, name: several ? `${at + 1} · ${shortName(option)}` : shortName(option) }]
    }),
  )
}

/** One contaminant: ranked machines, one line each; those that find none of it in one sentence. */
export function Ladder({ advice, wanted, names, links, axis }: Props) {
  const lines = linesOf(advice, wanted)
  const seen = lines.filter(({ finding }) => finding.expectedMm !== null || finding.bestMm !== null)
  const blind = lines.filter((line) => !seen.includes(line))
  const piece = pieceShort(wanted, names)
  return (
    <section class="ladder-block" id={`ladder-${wanted.contaminant}`} aria-label={`Sizes: ${piece}`}>
      <h3>
        {piece}
        <span class="asked">
          {wanted.mustFindMm === null ? ' no size asked' : ` asked ${wanted.mustFindMm} mm`}
        </span>
      </h3>
      {seen.length > 0 ? (
        <table class="ladder-table">
          <thead>
            <tr>
              <th scope="col">
                <span class="unseen">Machine</span>
              </th>
              <th scope="col" class="bars">
                <BarAxis axis={axis} />
              </th>
              <th scope="col" class="n">
                expected
              </th>
              <th scope="col" class="n">
                promise
              </th>
            </tr>
          </thead>
          <tbody>
            {seen.map(({ option, finding, name }) => (
              <tr class={option.verdict}>
                <th scope="row">{name}</th>
                <td class="bars">
                  <SizeBar
                    axis={axis}
                    sizes={finding}
                    askedMm={wanted.mustFindMm}
                    ruledOut={option.verdict === 'not-suitable'}
                    words={`${name}: ${ANSWER_WORDS[finding.meets].words}`}
                  />
                </td>
                <td class="n">
                  {finding.expectedMm === null ? (
                    '–'
                  ) : (
                    <a href={sizeLink(links, finding, 'expected')}>{sizeWords(finding.expectedMm)}</a>
                  )}
                </td>
                <td class="n">
                  {finding.cautiousMm === null ? (
                    '–'
                  ) : (
                    <a href={sizeLink(links, finding, 'cautious')}>{sizeWords(finding.cautiousMm)}</a>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      {blind.length === 0 ? null : <p class="small">{blindWords(seen, blind)}</p>}
    </section>
  )
}

/** Machines that find none of it, in one sentence: a family that is blind as a whole by its name. */
function blindWords(seen: readonly Line[], blind: readonly Line[]): string {
  if (seen.length === 0) return 'No machine compared here finds it.'
  const isDetector = ({ option }: Line) => option.family !== 'xray'
  const wholeFamily = !seen.some(isDetector) && blind.some(isDetector)
  const others = blind.filter((line) => !wholeFamily || !isDetector(line)).map(({ name }) => name)
  return `Not found by ${listed([...others, ...(wholeFamily ? ['any metal detector'] : [])])}.`
}
