import type { Advice } from '../../../src/contract/advice.ts'
import { type Links, ratherLink } from '../links.ts'

/** Where the order hangs on what the assumptions leave open, and which test would settle it. */
export function CloseCalls({ advice, links }: { advice: Advice; links: Links }) {
  const close = advice.points.flatMap(({ name, closeCall }, at) =>
    closeCall ? [{ name, closeCall, at }] : [],
  )
  if (close.length === 0) return null
  return (
    <section aria-labelledby="close-call">
      <h2 id="close-call">A close call</h2>
      {close.map(({ name, closeCall, at }) => (
        <>
          <p>
            {advice.points.length > 1 ? <strong>{name}: </strong> : null}
            {closeCall.because}{' '}
            <a href={ratherLink(links, at, closeCall.first, closeCall.second)}>
              What differs between the two
            </a>
          </p>
          <p>
            <strong>What would settle it:</strong> {closeCall.test}
          </p>
        </>
      ))}
    </section>
  )
}
