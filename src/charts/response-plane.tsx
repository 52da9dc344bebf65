import { ticks } from 'd3-array'
import { line } from 'd3-shape'

export interface PlaneSpot {
  readonly x: number
  readonly y: number
  readonly words: string
  readonly ring: boolean
}

export interface PlaneCurve {
  readonly mark: string
  readonly dash: number
  readonly places: readonly { readonly x: number; readonly y: number }[]
  readonly spots: readonly PlaneSpot[]
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  /** What the two axes measure, with the unit. */
  readonly along: string
  readonly up: string
  readonly curves: readonly PlaneCurve[]
}

const SIDE = 440
/** Width of a letter and height of a line of the words beside a spot. */
const LETTER = { wide: 8, high: 14 }
const ROOM = { left: 46, right: 40, top: 34, bottom: 46 }

/** A plane with the same scale on both axes, so that angles are true; the origin is always in it. */
export function ResponsePlane({ id, title, description, along, up, curves }: Props) {
  const places = curves.flatMap((curve) => curve.places)
  const span = spanOf(places)
  const scale = (SIDE - ROOM.left - ROOM.right) / span.size
  const x = (value: number) => Number((ROOM.left + (value - span.left) * scale).toFixed(1))
  const y = (value: number) => Number((SIDE - ROOM.bottom - (value - span.bottom) * scale).toFixed(1))
  const path = line<{ x: number; y: number }>()
    .x((place) => x(place.x))
    .y((place) => y(place.y))
    .digits(1)
  const placed = placedWords(
    curves.flatMap((curve) => curve.spots.map((spot) => ({ spot, at: [x(spot.x), y(spot.y)] as const }))),
    places.map((place) => [x(place.x), y(place.y)] as const),
    y(0),
  )
  const steps = (from: number) => ticks(from, from + span.size, 5)
  return (
    <svg class="plane" role="img" aria-labelledby={`${id}-title ${id}-desc`} viewBox={`0 0 ${SIDE} ${SIDE}`}>
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <g class="grid">
        {steps(span.left).map((value) => (
          <g>
            <line x1={x(value)} x2={x(value)} y1={ROOM.top} y2={SIDE - ROOM.bottom} />
            <text x={x(value)} y={SIDE - ROOM.bottom + 17} text-anchor="middle">
              {tickWords(value)}
            </text>
          </g>
        ))}
        {steps(span.bottom).map((value) => (
          <g>
            <line x1={ROOM.left} x2={SIDE - ROOM.right} y1={y(value)} y2={y(value)} />
            <text x={ROOM.left - 6} y={y(value) + 4} text-anchor="end">
              {tickWords(value)}
            </text>
          </g>
        ))}
      </g>
      <g class="axes">
        <line x1={x(0)} x2={x(0)} y1={ROOM.top} y2={SIDE - ROOM.bottom} />
        <line x1={ROOM.left} x2={SIDE - ROOM.right} y1={y(0)} y2={y(0)} />
        <text x={SIDE - ROOM.right} y={SIDE - 8} text-anchor="end">
          {along}
        </text>
        <text x="4" y="16">
          {up}
        </text>
      </g>
      {curves.map((curve) => (
        <path class={`curve dash-${curve.dash}`} d={path([...curve.places]) ?? ''} />
      ))}
      {curves.map((curve) => (
        <g class="dots">
          {curve.spots.map((spot) => {
            const words = placed.get(spot)
            return (
              <g>
                <circle
                  class={spot.ring ? 'ring' : ''}
                  cx={x(spot.x)}
                  cy={y(spot.y)}
                  r={spot.ring ? 5.5 : 2.6}
                />
                {words ? (
                  <text x={words.x} y={words.y} text-anchor={words.anchor}>
                    {spot.words}
                  </text>
                ) : null}
              </g>
            )
          })}
        </g>
      ))}
      <g class="marks">
        {curves.map(({ mark, places: own }) => {
          const end = own.at(-1)
          return end ? (
            <text x={x(end.x)} y={y(end.y) + 34} text-anchor="middle">
              {mark}
            </text>
          ) : null
        })}
      </g>
    </svg>
  )
}

type Spot = { readonly spot: PlaneSpot; readonly at: readonly [x: number, y: number] }
type Box = { readonly left: number; readonly right: number; readonly top: number; readonly foot: number }

/** Where words may stand about a spot: beside it, above or beneath, ever farther away. */
const SIDES = [14, 30, 46].flatMap((away) =>
  [-1, 1].flatMap((down) => [1, -1].map((aside) => ({ aside, down: down * away }))),
)

/** The words of each spot where least lies beneath them: curves, rings, the axis and the words before them. */
function placedWords(spots: readonly Spot[], curve: readonly Spot['at'][], axisY: number) {
  const taken: Box[] = []
  const inBox = (box: Box, [x, y]: Spot['at'], room: number) =>
    x > box.left - room && x < box.right + room && y > box.top - room && y < box.foot + room
  return new Map(
    spots
      .filter(({ spot }) => spot.words !== '')
      .map(({ spot, at: [x, y] }) => {
        const width = LETTER.wide * spot.words.length
        const tries = SIDES.map(({ aside, down }) => {
          const foot = y + down + (down < 0 ? 6 : 4)
          const left = aside > 0 ? x + 8 : x - 8 - width
          const box = { left, right: left + width, top: foot - LETTER.high, foot: foot + 3 }
          const outside = box.left < 0 || box.right > SIDE || box.top < 0 || box.foot > SIDE - ROOM.bottom
          const cost =
            (outside ? 1000 : 0) +
            100 *
              taken.filter(
                (o) => o.left < box.right && o.right > box.left && o.top < box.foot && o.foot > box.top,
              ).length +
            100 * spots.filter((other) => inBox(box, other.at, other.spot.ring ? 6 : 3)).length +
            10 * Math.min(5, curve.filter((place) => inBox(box, place, 1)).length) +
            (axisY > box.top && axisY < box.foot ? 5 : 0) +
            Math.abs(down) / 20
          return {
            box,
            cost,
            words: { x: aside > 0 ? x + 8 : x - 8, y: foot, anchor: aside > 0 ? 'start' : 'end' },
          }
        })
        const best = tries.reduce((a, b) => (b.cost < a.cost ? b : a))
        taken.push(best.box)
        return [spot, best.words] as const
      }),
  )
}

const tickWords = (value: number) => String(Number(value.toPrecision(3))).replace('-', '−')

/** The square that holds all places and the origin, with a little room. */
function spanOf(places: readonly { x: number; y: number }[]) {
  const xs = [0, ...places.map((place) => place.x)]
  const ys = [0, ...places.map((place) => place.y)]
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)]
  const size = Math.max(right - left, top - bottom) * 1.08 || 1
  return { left: left - (size - (right - left)) / 2, bottom: bottom - (size - (top - bottom)) / 2, size }
}
