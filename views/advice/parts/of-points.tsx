import type { Advice } from '../../../src/contract/advice.ts'
import type { Citations } from '../reasons/citations.ts'
import { ReasonLists } from '../reasons/reason-list.tsx'

/** What the rules ask of each point itself, whichever machine stands there. */
export function OfPoints({
  advice,
  citations,
  packed,
}: {
  advice: Advice
  citations: Citations
  packed: string
}) {
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  return (
    <section aria-labelledby="of-points">
      <h2 id="of-points">Whichever machine stands there</h2>
      {advice.points.map(({ name, reasons }) =>
        reasons.length === 0 ? null : (
          <>
            {advice.points.length > 1 ? <h3>{name}</h3> : null}
            <ReasonLists
              option={{ reasons: [...reasons] }}
              citations={citations}
              rules={rules}
              packed={packed}
              print={false}
            />
          </>
        ),
      )}
    </section>
  )
}
