export interface DrawnPlace {
  readonly name: string
  /** Shares of length (travel), width and height. */
  readonly along: number
  readonly across: number
  readonly up: number
}

interface Props {
  readonly id: string
  readonly title: string
  readonly lengthMm: number
  readonly widthMm: number
  readonly heightMm: number
  readonly outline: string
  readonly places: readonly DrawnPlace[]
}

const BOX = 190
const GAP = 60
const TOP = 34

/** Marks that would hide one another stand as one with all their numbers. */
function together(at: readonly (readonly [number, number])[]) {
  const marks: { x: number; y: number; numbers: number[] }[] = []
  for (const [i, [x, y]] of at.entries()) {
    const near = marks.find((mark) => Math.hypot(mark.x - x, mark.y - y) < 9)
    if (near) near.numbers.push(i + 1)
    else marks.push({ x, y, numbers: [i + 1] })
  }
  return marks
}

/**
 * A pack from above and from the side, with numbered places of test pieces; it travels to the right. Sizes are to
 * scale within each view; numbers are told apart by their figures and repeated in a list beneath by the caller.
 */
export function PackPlaces({ id, title, lengthMm, widthMm, heightMm, outline, places }: Props) {
  const scale = BOX / Math.max(lengthMm, widthMm, heightMm)
  const [long, wide, high] = [lengthMm * scale, widthMm * scale, Math.max(12, heightMm * scale)]
  const rows = Math.max(wide, high)
  const description = places.map(({ name }, at) => `${at + 1}: ${name}`).join('; ')
  const marks = (at: (place: DrawnPlace) => readonly [x: number, y: number]) =>
    together(places.map(at)).map(({ x, y, numbers }) => (
      <g class="place-mark">
        <circle cx={x} cy={y} r={numbers.length > 1 ? 14 : 9} />
        <text x={x} y={y + 4} text-anchor="middle">
          {numbers.join(', ')}
        </text>
      </g>
    ))
  const side = long + GAP
  return (
    <svg
      class="pack-places"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      viewBox={`0 0 ${2 * BOX + GAP + 20} ${TOP + rows + 30}`}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <text x="0" y="16" class="view-name">
        From above
      </text>
      {outline === 'cylinder' ? (
        <ellipse class="pack" cx={2 + long / 2} cy={TOP + wide / 2} rx={long / 2} ry={wide / 2} />
      ) : (
        <rect class="pack" x="2" y={TOP} width={long} height={wide} />
      )}
      {marks(({ along, across }) => [2 + along * long, TOP + across * wide])}
      <text x={side} y="16" class="view-name">
        From the side
      </text>
      <rect class="pack" x={side} y={TOP} width={long} height={high} />
      {marks(({ along, up }) => [side + along * long, TOP + (1 - up) * high])}
      <path class="travel" d={`M${2} ${TOP + rows + 18}h${long - 10}m-7 -5l7 5l-7 5`} />
      <text x={long + 8} y={TOP + rows + 22} class="view-name">
        travel
      </text>
    </svg>
  )
}
