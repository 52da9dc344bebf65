import type { Advice } from '../../../src/contract/advice.ts'
import { type Links, ratherLink } from '../links.ts'

/** Why the first machine of each point and not another: one line each, the rest behind a link. */
export function RatherLinks({ advice, links }: { advice: Advice; links: Links }) {
  const points = advice.points.map((point, at) => ({ ...point, at })).filter((p) => p.contrasts.length > 0)
  if (points.length === 0) return null
  return (
    <section aria-labelledby="rather">
      <h2 id="rather">Compare two machines</h2>
      {points.map(({ name, at, options, contrasts }) => {
        const label = (id: string) => options.find((o) => o.equipment === id)?.label ?? id
        return (
          <>
            {advice.points.length > 1 ? <h3>{name}</h3> : null}
            <ul>
              {contrasts.map(({ first, second, because }) => (
                <li>
                  <a href={ratherLink(links, at, first, second)}>
                    {label(first)} and {label(second)}
                  </a>
                  : {because}
                </li>
              ))}
            </ul>
          </>
        )
      })}
    </section>
  )
}
