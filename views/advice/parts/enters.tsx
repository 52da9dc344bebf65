import type { Advice } from '../../../src/contract/advice.ts'

/** What can still enter behind each point, and whether misses of several machines multiply. */
export function Enters({ advice }: { advice: Advice }) {
  const { stillEnters, independence, because } = advice.combination
  return (
    <section aria-labelledby="enters">
      <h2 id="enters">What can still enter behind each point</h2>
      <ul>
        {stillEnters.map(({ point, text }) => (
          <li>
            <strong>{point}:</strong> {text}
          </li>
        ))}
      </ul>
      <p>{because}</p>
      {independence ? <p>{independence}</p> : null}
    </section>
  )
}
