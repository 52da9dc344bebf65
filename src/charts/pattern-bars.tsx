/** Fills told apart in grey: solid, slanted, dotted, lying lines, blank. */
export const FILLS = ['solid', 'slanted', 'dotted', 'lined', 'blank'] as const
export type Fill = (typeof FILLS)[number]

export interface Part {
  readonly words: string
  readonly fill: Fill
}

export interface PatternBar {
  readonly label: string
  /** One share per part; they add up to 1. */
  readonly shares: readonly number[]
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly parts: readonly Part[]
  readonly bars: readonly PatternBar[]
}

const ROW = 50
const BAR = 24
/** A share this wide has room for its number. */
const ROOM = 0.1

/** Lying bars cut into shares, told apart by pattern. Places are in per cent. */
export function PatternBars({ id, title, description, parts, bars }: Props) {
  return (
    <svg
      class="pattern-bars"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width="100%"
      height={String(bars.length * ROW + 4)}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <Patterns id={id} />
      {bars.map((bar, row) => {
        const starts = bar.shares.map((_, at) => bar.shares.slice(0, at).reduce((sum, one) => sum + one, 0))
        const top = row * ROW + 20
        return (
          <g>
            <text x="0" y={top - 5}>
              {bar.label}
            </text>
            {bar.shares.map((share, at) => (
              <rect
                class={`part ${parts[at]!.fill}`}
                x={percent(starts[at]!)}
                y={top}
                width={percent(share)}
                height={BAR}
                fill={fillOf(id, parts[at]!.fill)}
              />
            ))}
            {bar.shares.map((share, at) =>
              share < ROOM ? null : (
                <text class="inside" x={percent(starts[at]! + share / 2)} y={top + 17} text-anchor="middle">
                  {Math.round(share * 100)} %
                </text>
              ),
            )}
          </g>
        )
      })}
    </svg>
  )
}

/** The same pattern as a small sample for the key; `id` is that of the bars. */
export function PatternSample({ id, fill }: { id: string; fill: Fill }) {
  return (
    <svg class="pattern-bars sample" width="28" height="14" aria-hidden="true">
      <rect class={`part ${fill}`} x="1" y="1" width="26" height="12" fill={fillOf(id, fill)} />
    </svg>
  )
}

const percent = (share: number) => `${(share * 100).toFixed(2)}%`

const fillOf = (id: string, fill: Fill) => `url(#${id}-${fill})`

function Patterns({ id }: { id: string }) {
  const pattern = (fill: Fill, size: number, d: string) => (
    <pattern id={`${id}-${fill}`} width={size} height={size} patternUnits="userSpaceOnUse">
      <path d={d} class={`hatch ${fill}`} />
    </pattern>
  )
  return (
    <defs>
      {pattern('solid', 8, 'M0 0H8V8H0Z')}
      {pattern('slanted', 6, 'M0 6L6 0')}
      {pattern('dotted', 5, 'M1.5 1.5h1.6v1.6h-1.6Z')}
      {pattern('lined', 5, 'M0 2.5H5')}
      {pattern('blank', 8, 'M0 0')}
    </defs>
  )
}
