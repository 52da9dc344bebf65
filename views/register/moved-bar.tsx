const WIDE = 90
const HIGH = 14
const MIDDLE = WIDE / 2

/**
 * How far a figure lies from the one it is held against, on a log scale with that one in the middle: two to the left is
 * a half, to the right twice. `most` is the largest factor drawn, either way.
 */
export function MovedBar({ times, most }: { times: number; most: number }) {
  const at = MIDDLE + (Math.log(times) / Math.log(most)) * (MIDDLE - 2)
  const from = Math.min(at, MIDDLE)
  return (
    <svg aria-hidden="true" width={WIDE} height={HIGH} viewBox={`0 0 ${WIDE} ${HIGH}`}>
      <line x1={MIDDLE} x2={MIDDLE} y1="0" y2={HIGH} stroke="currentColor" />
      <rect
        x={from.toFixed(1)}
        width={Math.abs(at - MIDDLE).toFixed(1)}
        y="4"
        height="6"
        fill="currentColor"
      />
    </svg>
  )
}
