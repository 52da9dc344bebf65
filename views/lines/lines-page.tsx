import { Page } from '../page.tsx'
import { LineSection } from './line-section.tsx'
import { lineName } from './line-words.ts'
import { ProductsTable } from './products-table.tsx'
import type { LinesPageProps } from './props.ts'

/** The products of a table, line by line: the worst of each, the machines that take all, and every product. */
export function LinesPage(props: LinesPageProps) {
  const { packed, id, summary, bad, names, line } = props
  const { rows, lines, moreLines } = summary
  return (
    <Page title="Lines" packed={packed} here="lines">
      <h1>Lines</h1>
      <p class="standfirst">
        {rows} product{rows === 1 ? '' : 's'} on {lines.length + moreLines} line
        {lines.length + moreLines === 1 ? '' : 's'}.
        {moreLines > 0 ? ` ${moreLines} of the lines are in the file and not summed up here.` : ''} One
        machine stands on a line, so its build and its opening follow from the largest pack.
      </p>
      <p>
        <a href={`/lines/${id}/products.csv`} download="">
          Every product as a table (CSV)
        </a>
        {' · '}
        <a href="/lines">Another table</a>
      </p>
      {bad.length > 0 ? <BadRows bad={bad} /> : null}
      {lines.length > 1 ? (
        <nav aria-label="Lines of this table">
          <ul>
            {lines.map((one) => (
              <li>
                <a
                  href={`/lines/${id}?line=${encodeURIComponent(one.line)}`}
                  {...(one.line === line ? { 'aria-current': 'page' as const } : {})}
                >
                  {lineName(one.line)}
                </a>
              </li>
            ))}
          </ul>
        </nav>
      ) : null}
      {lines
        .filter((one) => one.line === line)
        .map((one) => (
          <LineSection together={one} names={names} />
        ))}
      <ProductsTable {...props} />
    </Page>
  )
}

function BadRows({ bad }: Pick<LinesPageProps, 'bad'>) {
  return (
    <section aria-labelledby="bad">
      <h2 id="bad">Rows with problems</h2>
      <p>These were left out; mend them and send the table again.</p>
      <ul>
        {bad.map(({ row, title, problems }) => (
          <li>
            Row {row}
            {title ? `, ${title}` : ''}:{' '}
            {problems.map(({ column, message }) => (column ? `${column}: ${message}` : message)).join('; ')}
          </li>
        ))}
      </ul>
    </section>
  )
}
