import type { Advice, Option } from '../../../src/contract/advice.ts'
import { type Names, pieceWords } from '../../words/contaminant.ts'
import { shownWords } from '../../words/demonstrated.ts'
import { sizeWords } from '../../words/size.ts'
import { MEETS_WORDS, VERDICT_WORDS } from '../../words/verdict.ts'
import { type Links, reasonsAnchor, sizeLink, trailLink } from '../links.ts'
import { findingOf, type Wanted, wantedOf } from '../sizes/findings.ts'
import { settingsWords } from './settings-words.ts'

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  /** Facts of each point in one line, e.g. its false rejects a day. */
  readonly pointLines: readonly string[]
}

/** The machines side by side, one table per inspection point. */
export function Comparison({ advice, names, links, pointLines }: Props) {
  const wanted = wantedOf(advice)
  return (
    <section aria-labelledby="comparison">
      <h2 id="comparison">Machines compared</h2>
      <p>
        Each size: <em>expected</em>, then <em>promise no better than</em>, in mm, rounded up; both
        provisional, as the size ladder says. Every size leads to its calculation.
      </p>
      {advice.points.map((point, at) =>
        point.options.length === 0 ? (
          <p>
            <strong>{point.name}:</strong> no detector of the list fits the way the food passes here.
          </p>
        ) : (
          <PointTable
            point={point}
            at={at}
            line={pointLines[at] ?? ''}
            wanted={wanted}
            names={names}
            links={links}
          />
        ),
      )}
      <p class="small">
        Burden is purchase, upkeep, space and skill together, from 1 (light) to 5 (heavy); no prices. Marks: ●
        yes, ◐ maybe, ○ no, ✕ cannot.
        {advice.points.some(({ options }) => options.some(({ family }) => family === 'coil'))
          ? ' A metal detector (balanced coil) stands around the belt, the stream or the pipe.'
          : ''}
      </p>
    </section>
  )
}

interface TableProps {
  readonly point: Advice['points'][number]
  readonly at: number
  readonly line: string
  readonly wanted: readonly Wanted[]
  readonly names: Names
  readonly links: Links
}

function PointTable({ point, at, line, wanted, names, links }: TableProps) {
  return (
    <section class="scroll" tabindex={0} aria-labelledby={`compared-${at}`}>
      <table class="comparison">
        <caption id={`compared-${at}`}>
          {point.name}
          {line ? <span class="caption-line">{line}</span> : null}
        </caption>
        <thead>
          <tr>
            <th scope="col">Machine</th>
            <th scope="col">Verdict</th>
            <th scope="col" class="n">
              Burden, 1{'\u00a0'}to{'\u00a0'}5
            </th>
            {wanted.map((one) => (
              <th scope="col" class="n">
                <a href={`#ladder-${one.contaminant}`}>{pieceWords(one, names)}</a>
                <span class="asked">
                  {one.mustFindMm === null ? 'no size asked' : `find ${one.mustFindMm} mm`}
                </span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {point.options.map((option) => (
            <OptionRow option={option} point={at} wanted={wanted} links={links} />
          ))}
        </tbody>
      </table>
    </section>
  )
}

function OptionRow({
  option,
  point,
  wanted,
  links,
}: {
  option: Option
  point: number
  wanted: readonly Wanted[]
  links: Links
}) {
  const verdict = VERDICT_WORDS[option.verdict]
  return (
    <tr class={option.verdict}>
      <th scope="row">
        <a href={`#${reasonsAnchor(point, option.equipment)}`}>{option.label}</a>
        <span class="settings">{settingsWords(option)}</span>
      </th>
      <td>
        <span aria-hidden="true">{verdict.mark}</span> {verdict.words}
        {option.rank === null ? ', not ranked' : ''}
        <span class="settings">{option.because}</span>
      </td>
      <td class="n">{option.burden}</td>
      {wanted.map((one) => (
        <SizeCell option={option} contaminant={one.contaminant} links={links} />
      ))}
    </tr>
  )
}

function SizeCell({ option, contaminant, links }: { option: Option; contaminant: number; links: Links }) {
  const finding = findingOf(option, contaminant)
  if (!finding) return <td class="n">–</td>
  const { mark, words } = MEETS_WORDS[finding.meets]
  return (
    <td class="n">
      {finding.expectedMm === null ? (
        links.calculations.has(finding.calculation) ? (
          <a class="target" href={trailLink(links, finding.calculation)}>
            none
          </a>
        ) : (
          'none'
        )
      ) : (
        <>
          <a class="target" href={sizeLink(links, finding, 'expected')}>
            {sizeWords(finding.expectedMm)}
          </a>
          {' / '}
          {finding.cautiousMm === null ? (
            '–'
          ) : (
            <a class="target" href={sizeLink(links, finding, 'cautious')}>
              {sizeWords(finding.cautiousMm)}
            </a>
          )}
        </>
      )}{' '}
      <span class="meets">
        <span aria-hidden="true">{mark}</span>
        <span class="unseen">{words}</span>
      </span>
      {finding.demonstrated ? <span class="small shown"> {shownWords(finding.demonstrated)}</span> : null}
      {finding.measured ? <span class="small shown"> machine measured</span> : null}
    </td>
  )
}
