import type { Child } from 'hono/jsx'
import type { Sheet } from './sheet.ts'

/** Fields most briefs leave empty, folded away; open as soon as one is answered or wrong. */
export function Fold({
  sheet,
  paths,
  summary,
  id,
  children,
}: {
  sheet: Sheet
  /** Paths, or beginnings of paths that end in a dot. */
  paths: readonly string[]
  summary: string
  /** Where a problem of the whole group leads. */
  id?: string
  children: Child
}) {
  const inside = (path: string) =>
    paths.some((one) => path === one || (one.endsWith('.') && path.startsWith(one)))
  const answered = Object.entries(sheet.answers).some(
    ([path, value]) => inside(path) && value !== '' && !/\.\d+$/.test(path),
  )
  const wrong = [...sheet.problems.keys()].some(inside)
  return (
    <details class="fold" {...(id ? { id } : {})} {...(answered || wrong ? { open: true } : {})}>
      <summary>{summary}</summary>
      <div class="fields">{children}</div>
    </details>
  )
}
