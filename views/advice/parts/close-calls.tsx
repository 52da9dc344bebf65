import type { Advice } from '../../../src/contract/advice.ts'

/** Where the order hangs on what the assumptions leave open, and which test would settle it. */
export function CloseCalls({ advice }: { advice: Advice }) {
  const close = advice.points.flatMap(({ name, closeCall }) => (closeCall ? [{ name, closeCall }] : []))
  return (
    <>
      {close.map(({ name, closeCall }) => (
        <p>
          {advice.points.length > 1 ? <strong>{name}: </strong> : null}
          {closeCall.because} <strong>What would settle it:</strong> {closeCall.test}
        </p>
      ))}
    </>
  )
}
