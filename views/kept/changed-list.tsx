import type { Changed } from '../../src/store/difference.ts'

const MOST = 30

const words = (value: unknown) => (value === undefined ? 'not there' : JSON.stringify(value).slice(0, 120))

/** What differs between two revisions, value by value. */
export function ChangedList({ changed }: { changed: readonly Changed[] }) {
  if (changed.length === 0) return <p>Nothing differs.</p>
  return (
    <ul>
      {changed.slice(0, MOST).map(({ path, from, to }) => (
        <li>
          <code>{path}</code>: {words(from)} → {words(to)}
        </li>
      ))}
      {changed.length > MOST ? <li>and {changed.length - MOST} more</li> : null}
    </ul>
  )
}
