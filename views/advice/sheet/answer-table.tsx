import { BarAxis, BarDefs, SizeBar } from '../../../src/charts/size-bar.tsx'
import type { Advice } from '../../../src/contract/advice.ts'
import type { AnswerRow } from '../../../src/contract/answer.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { shownWords } from '../../words/demonstrated.ts'
import { shortName } from '../../words/machine.ts'
import { sizeWords } from '../../words/size.ts'
import { ANSWER_WORDS } from '../../words/verdict.ts'
import { type Links, ruleLink, sizeLink } from '../links.ts'
import { findingOf, type Wanted, wantedOf } from '../sizes/findings.ts'
import { axisOf } from '../sizes/size-axis.ts'

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  /** For paper: no bars, no links into the program. */
  readonly plain?: boolean
}

/** The option a row of the answer speaks of; none where no machine answers for it. */
export function optionOf(advice: Advice, { equipment, point }: Pick<AnswerRow, 'equipment' | 'point'>) {
  const there = advice.points.find(({ name }) => name === point)
  return there?.options.find((option) => option.equipment === equipment)
}

/** One row a contaminant (and line): asked, found, by what and where, what is left to do. Unmet rows come first. */
export function AnswerTable({ advice, names, links, plain = false }: Props) {
  const { rows } = advice.answer
  const wanted = wantedOf(advice)
  const axis = axisOf(advice)
  const severalLines = new Set(rows.map(({ line }) => line)).size > 1
  const by = rows.flatMap(({ equipment, point }) => (equipment ? [`${equipment} ${point}`] : []))
  const shownBy = new Set(by).size > 1
  return (
    <table class="answer-table">
      <caption class="unseen">What must not be in the pack, and what finds it</caption>
      <thead>
        <tr>
          <th scope="col">What must not be in it</th>
          <th scope="col" class="n">
            asked, mm
          </th>
          {plain ? null : (
            <th scope="col" class="bars">
              <BarDefs axis={axis} />
              <BarAxis axis={axis} />
              size, mm (log)
            </th>
          )}
          <th scope="col" class="n">
            expected
          </th>
          <th scope="col" class="n">
            safe to promise
          </th>
          <th scope="col">answer</th>
          <th scope="col">left to do</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row, at) => {
          const option = optionOf(advice, row)
          const newLine = severalLines && row.line !== rows[at - 1]?.line
          return (
            <>
              {newLine ? (
                <tr class="line-name">
                  <th scope="rowgroup" colspan={plain ? 6 : 7}>
                    {row.line}
                  </th>
                </tr>
              ) : null}
              <Row
                row={row}
                piece={wanted[row.contaminant]!}
                by={shownBy && option ? `${shortName(option)}, ${row.point}` : ''}
                {...{ advice, names, links, plain, axis }}
              />
            </>
          )
        })}
      </tbody>
    </table>
  )
}

function Row({
  row,
  piece,
  by,
  advice,
  names,
  links,
  plain,
  axis,
}: Required<Props> & {
  row: AnswerRow
  piece: Wanted
  by: string
  axis: ReturnType<typeof axisOf>
}) {
  const { mark, words } = ANSWER_WORDS[row.meets]
  const option = optionOf(advice, row)
  const finding = option && findingOf(option, row.contaminant)
  const name = pieceShort(piece, names)
  const size = (mm: number | null, which: 'expected' | 'cautious') =>
    mm === null || plain || !finding ? (
      mm === null ? (
        'none'
      ) : (
        sizeWords(mm)
      )
    ) : (
      <a href={sizeLink(links, finding, which)}>{sizeWords(mm)}</a>
    )
  return (
    <tr class={`is-${row.meets}`}>
      <th scope="row">{name}</th>
      <td class="n" data-head="asked, mm">
        {row.askedMm ?? '–'}
      </td>
      {plain ? null : (
        <td class="bars">
          <SizeBar
            axis={axis}
            sizes={{
              bestMm: finding?.bestMm ?? null,
              expectedMm: row.expectedMm,
              cautiousMm: row.promisedMm,
            }}
            askedMm={row.askedMm}
            words={`${name}: expected ${sizeWords(row.expectedMm)} mm, safe to promise ${sizeWords(row.promisedMm)} mm, asked ${row.askedMm ?? 'nothing'}`}
          />
        </td>
      )}
      <td class="n" data-head="expected">
        {size(row.expectedMm, 'expected')}
      </td>
      <td class="n" data-head="safe to promise">
        {size(row.promisedMm, 'cautious')}
      </td>
      <td class="verdict-cell">
        <span aria-hidden="true">{mark}</span> {words}
        {row.places.length > 0 ? <span class="settings">not at: {row.places.join(', ')}</span> : null}
        {finding?.demonstrated ? <span class="settings">{shownWords(finding.demonstrated)}</span> : null}
        {finding?.measured ? <span class="settings">machine measured</span> : null}
        {by ? <span class="settings">{by}</span> : null}
      </td>
      <td class="left">
        {row.left.text}
        {plain || row.left.rule === '' ? null : (
          <>
            {' '}
            <a class="why-link" href={ruleLink(row.left.rule, links.packed)}>
              why<span class="unseen">: {name}</span>
            </a>
          </>
        )}
        {plain || row.left.kind !== 'test' ? null : (
          <>
            {' '}
            <a class="why-link" href={planLink(links, row, advice)}>
              plan it<span class="unseen">: {name}</span>
            </a>
          </>
        )}
      </td>
    </tr>
  )
}

/** The plan of a trial for this row, with its machine where the advice names one. */
function planLink({ packed }: Links, { contaminant, equipment, point }: AnswerRow, advice: Advice): string {
  const at = advice.points.findIndex(({ name }) => name === point)
  const machine = equipment !== null && at >= 0 ? `&machine=${encodeURIComponent(`${at}.${equipment}`)}` : ''
  return `/plan?b=${packed}&contaminant=${contaminant}${machine}`
}
