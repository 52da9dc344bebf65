import { sizeWords } from '../words/size.ts'
import { ANSWER_WORDS } from '../words/verdict.ts'
import type { LinesPageProps, ShownRow } from './props.ts'

/** Every product of the line: its machines as set, and the size safe to promise of each contaminant. */
export function ProductsTable(props: LinesPageProps) {
  const { columns, shown, page, pages } = props
  return (
    <section aria-labelledby="products">
      <h2 id="products">Every product</h2>
      <p class="small">
        Sizes are those safe to promise, in mm; a heading sorts by its column, the worst first. A product
        opens its own advice.
      </p>
      <section class="scroll" aria-label="Every product" tabindex={0}>
        <table>
          <thead>
            <tr>
              <Heading {...props} by="row" words="Row" num />
              <Heading {...props} by="title" words="Product" />
              <Heading {...props} by="unmet" words="Not met" num />
              {columns.map(({ key, words }) => (
                <Heading {...props} by={key} words={words} num />
              ))}
              <th scope="col">Settings</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((row) => (
              <tr>
                <td class="num">{row.row}</td>
                <th scope="row">
                  <a href={`/lines/${props.id}/product/${row.row}`}>{row.title}</a>
                </th>
                <td class="num">{row.unmet}</td>
                {columns.map(({ key }) => {
                  const size = row.sizes[key]
                  return (
                    <td class="num">
                      {size ? `${sizeWords(size.promisedMm)} ${ANSWER_WORDS[size.meets].words}` : '–'}
                    </td>
                  )
                })}
                <td>{settingsWords(row)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      {pages > 1 ? (
        <p>
          Page {page} of {pages}
          {page > 1 ? <Turn {...props} to={page - 1} words="Previous" /> : null}
          {page < pages ? <Turn {...props} to={page + 1} words="Next" /> : null}
        </p>
      ) : null}
    </section>
  )
}

const address = ({ id, line }: LinesPageProps, sort: string, page: number) =>
  `/lines/${id}?line=${encodeURIComponent(line)}&sort=${encodeURIComponent(sort)}${page > 1 ? `&page=${page}` : ''}`

function Heading(props: LinesPageProps & { by: string; words: string; num?: boolean }) {
  const { by, words, sort, num = false } = props
  const here = sort === by
  return (
    <th
      scope="col"
      class={num ? 'num' : ''}
      {...(here ? { 'aria-sort': by === 'row' || by === 'title' ? 'ascending' : 'descending' } : {})}
    >
      <a href={`${address(props, by, 1)}#products`}>{words}</a>
    </th>
  )
}

const Turn = (props: LinesPageProps & { to: number; words: string }) => (
  <>
    {' '}
    <a href={`${address(props, props.sort, props.to)}#products`}>{props.words}</a>
  </>
)

/** "60 kV, 10 mA" or "200 and 400 kHz", a machine each. */
function settingsWords({ machines }: ShownRow): string {
  if (machines.length === 0) return 'none recommended'
  return machines
    .map(({ label, kV, mA, frequenciesKHz }) => {
      const set =
        kV !== null
          ? `${kV} kV${mA === null ? '' : `, ${Number(mA.toPrecision(3))} mA`}`
          : frequenciesKHz.length > 0
            ? `${frequenciesKHz.join(' and ')} kHz`
            : ''
      return `${label.replace(/ \(.*\)$/, '')}${set ? `: ${set}` : ''}`
    })
    .join('; ')
}
