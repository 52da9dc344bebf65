import type { Child } from 'hono/jsx'
import { labelOf } from '../../src/brief/form/form-labels.ts'
import type { Sheet } from './sheet.ts'

interface Inside {
  readonly sheet: Sheet
  /** Paths, or beginnings of paths that end in a dot. */
  readonly paths: readonly string[]
}

const isInside = (paths: readonly string[]) => (path: string) =>
  paths.some((one) => path === one || (one.endsWith('.') && path.startsWith(one)))

const MOST_SAID = 5

/** What a fold holds, in a line: "mass 500, lanes 2"; empty where nothing is answered. */
export function held({ sheet, paths }: Inside): string {
  const inside = isInside(paths)
  const answers = Object.entries(sheet.answers).filter(
    ([path, value]) => inside(path) && value.trim() !== '' && !/\.\d+$/.test(path),
  )
  const words = answers
    .slice(0, MOST_SAID)
    .map(
      ([path, value]) =>
        `${labelOf(path).toLowerCase()} ${value.length > 24 ? `${value.slice(0, 22)}…` : value}`,
    )
  return `${words.join(', ')}${answers.length > MOST_SAID ? `, and ${answers.length - MOST_SAID} more` : ''}`
}

/** Fields most briefs leave empty, folded to what they hold; open where something inside is wrong. */
export function Fold({
  sheet,
  paths,
  summary,
  id,
  holds = held({ sheet, paths }),
  stacked = false,
  children,
}: Inside & {
  summary: string
  /** Where a problem of the whole group leads. */
  id?: string
  holds?: string
  /** True where what is inside stands line under line, not field beside field. */
  stacked?: boolean
  children: Child
}) {
  const inside = isInside(paths)
  const wrong = [...sheet.problems.keys(), ...(sheet.focus ? [sheet.focus] : [])].some(inside)
  return (
    <details class="fold" {...(id ? { id } : {})} {...(wrong ? { open: true } : {})}>
      <summary>
        {summary}
        {holds ? <span class="held">: {holds}</span> : null}
      </summary>
      <div class={stacked ? 'stacked' : 'fields'}>{children}</div>
    </details>
  )
}

/** A group of the brief that may be left out: its heading and what it holds, folded. */
export function GroupFold({
  sheet,
  paths,
  title,
  id,
  empty,
  holds = held({ sheet, paths }),
  children,
}: Inside & { title: string; id: string; empty: string; holds?: string; children: Child }) {
  const inside = isInside([...paths, id])
  const open = [...sheet.problems.keys(), ...(sheet.focus ? [sheet.focus] : [])].some(inside)
  return (
    <details class="group-fold" id={id} {...(open ? { open: true } : {})}>
      <summary>
        <h2>{title}</h2> <span class="held">{holds || empty}</span>
      </summary>
      {children}
    </details>
  )
}
