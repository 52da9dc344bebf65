/** How a machine is set over a stretch of an axis. */
export interface StripRun {
  readonly from: number
  readonly to: number
  readonly words: string
}

/** Height of the strip under a plot. */
export const STRIP = 30
/** Pixels of a character, and the narrowest picture they have to fit. */
const CHARACTER = 6.6
const NARROWEST = 320

/** A strip under a plot: how the machine is set from where to where; a narrow stretch keeps its bounds only. */
export function SettingStrip({
  runs,
  along,
  top,
}: {
  runs: readonly StripRun[]
  along: (value: number) => number
  top: number
}) {
  return (
    <g class="settings-strip">
      {runs.map(({ from, to, words }, at) => {
        const [left, right] = [along(from), along(to)]
        const fits = ((right - left) / 100) * NARROWEST > words.length * CHARACTER
        return (
          <g>
            <rect
              x={`${left}%`}
              width={`${Number((right - left).toFixed(2))}%`}
              y={top + 4}
              height="20"
              class={at % 2 === 0 ? 'even' : 'odd'}
            />
            {fits ? (
              <text x={`${Number(((left + right) / 2).toFixed(2))}%`} y={top + 18} text-anchor="middle">
                {words}
              </text>
            ) : null}
          </g>
        )
      })}
    </g>
  )
}
