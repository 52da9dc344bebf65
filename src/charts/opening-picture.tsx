interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly widthMm: number
  readonly heightMm: number
  /** The food in the middle of the opening. */
  readonly food: { readonly widthMm: number; readonly heightMm: number }
  /** Places as shares from the centre, with the number that stands there. */
  readonly places: readonly { readonly across: number; readonly up: number; readonly words: string }[]
  /** Where a piece passes, as shares from the centre. */
  readonly piece?: { readonly across: number; readonly up: number }
}

const WIDE = 440
const EDGE = 8
/** Rows of numbers closer than this would run into each other: then every other row is left to the table. */
const ROW = 18

/** The opening of a metal detector seen along the travel, in proportion, with a number at each place. */
export function OpeningPicture({ id, title, description, widthMm, heightMm, food, places, piece }: Props) {
  const scale = (WIDE - 2 * EDGE) / widthMm
  const high = heightMm * scale
  const x = (share: number) => WIDE / 2 + share * widthMm * scale
  const y = (share: number) => EDGE + high / 2 - share * high
  const rows = [...new Set(places.map(({ up }) => up))].sort((a, b) => a - b)
  const tight = rows.length > 1 && (rows[1]! - rows[0]!) * high < ROW
  /** The foot of words at a height: near a wall they stand inside of it. */
  const foot = (share: number) => Math.max(EDGE + 17, Math.min(EDGE + high - 7, y(share) + 5))
  const fits = ({ up }: { up: number }) => !tight || rows.indexOf(up) % 2 === 0
  const foodWide = Math.min(food.widthMm, widthMm) * scale
  const foodHigh = Math.min(food.heightMm, heightMm) * scale
  return (
    <svg
      class="plane"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      viewBox={`0 0 ${WIDE} ${(high + 2 * EDGE).toFixed(0)}`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <rect class="opening" x={EDGE} y={EDGE} width={WIDE - 2 * EDGE} height={high.toFixed(1)} />
      <rect
        class="food"
        x={((WIDE - foodWide) / 2).toFixed(1)}
        y={(EDGE + (high - foodHigh) / 2).toFixed(1)}
        width={foodWide.toFixed(1)}
        height={foodHigh.toFixed(1)}
      />
      {places.filter(fits).map(({ across, up, words }) => (
        <text x={x(across).toFixed(1)} y={foot(up).toFixed(1)} text-anchor="middle">
          {words}
        </text>
      ))}
      {piece ? (
        <circle class="passing" cx={x(piece.across).toFixed(1)} cy={y(piece.up).toFixed(1)} r="7" />
      ) : null}
    </svg>
  )
}
