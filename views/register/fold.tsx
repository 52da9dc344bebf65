import type { Child } from 'hono/jsx'
import type { Ink } from './ink.tsx'

/** What is folded away on a page and stands open on paper. */
export function Fold({ ink, summary, children }: { ink: Ink; summary: string; children?: Child }) {
  if (ink.paper) return <>{children}</>
  return (
    <details>
      <summary>{summary}</summary>
      {children}
    </details>
  )
}
