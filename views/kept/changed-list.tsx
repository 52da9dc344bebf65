import type { Changed } from '../../src/store/difference.ts'

const MOST = 30

const LONGEST = 300
const words = (value: unknown) => JSON.stringify(value).slice(0, LONGEST)

function changeWords({ from, to }: Changed): string {
  if (from === undefined) return `added, ${words(to)}`
  if (to === undefined) return `taken out, it was ${words(from)}`
  return `${words(from)} → ${words(to)}`
}

/** What differs between two revisions, value by value. */
export function ChangedList({ changed }: { changed: readonly Changed[] }) {
  if (changed.length === 0) return <p>Nothing differs.</p>
  return (
    <ul>
      {changed.slice(0, MOST).map((one) => (
        <li>
          <code>{one.path}</code>: {changeWords(one)}
        </li>
      ))}
      {changed.length > MOST ? <li>and {changed.length - MOST} more</li> : null}
    </ul>
  )
}
