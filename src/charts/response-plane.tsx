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
/** Width of the words beside a spot. */
const LABEL = 64
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
          {curve.spots.map((spot, at) => {
            const right = x(spot.x) > SIDE - ROOM.right - LABEL
            const low = isCrowded(curve.spots.slice(0, at), spot, (one) => [x(one.x), y(one.y)])
            return (
              <g>
                <circle
                  class={spot.ring ? 'ring' : ''}
                  cx={x(spot.x)}
                  cy={y(spot.y)}
                  r={spot.ring ? 5.5 : 2.6}
                />
                <text
                  x={x(spot.x) + (right ? -8 : 8)}
                  y={y(spot.y) + (low ? 20 : -8)}
                  text-anchor={right ? 'end' : 'start'}
                >
                  {spot.words}
                </text>
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

/** True where the words of an earlier spot stand in the way above this one. */
function isCrowded(
  before: readonly PlaneSpot[],
  spot: PlaneSpot,
  at: (spot: PlaneSpot) => readonly [number, number],
): boolean {
  const [x, y] = at(spot)
  return before.some((other) => {
    const [left, top] = at(other)
    return other.words !== '' && Math.abs(left - x) < LABEL + 20 && Math.abs(top - y) < 16
  })
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
