import { scaleLinear } from 'd3-scale'
import { area, line } from 'd3-shape'

type Point = readonly [x: number, y: number]

export interface MarkedCurve {
  readonly words: string
  readonly points: readonly Point[]
  /** Filled down to the axis, as a hill. */
  readonly filled: boolean
  /** Where along x its name stands; at its highest point unless given. */
  readonly nameAt?: number
}

interface AxisProps {
  readonly words: string
  readonly unit: string
  /** No numbers beside it. */
  readonly bare: boolean
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly x: AxisProps
  readonly y: AxisProps
  readonly curves: readonly MarkedCurve[]
  /** Uprights with their words, each on its own line above the plot. */
  readonly marks: readonly { readonly x: number; readonly words: string; readonly strong?: boolean }[]
  /** Height of the plot itself, px. */
  readonly plotPx?: number
  /** Width of a letter of a name, per cent of the plot's own width: more where a plot is narrow or its letters large. */
  readonly letter?: number
}

const MARK_LINE = 16
const FOOT = 44
const LEFT = 7
const WIDTH = 90
/** Width of the stretched coordinates the paths are drawn in. */
const STRETCH = 1000

/** Curves on even axes with named uprights; told apart by dash and name, text never stretched. */
export function MarkedCurves(props: Props) {
  const { id, title, description, x, y, curves, marks, plotPx = 230, letter = LETTER } = props
  const all = curves.flatMap(({ points }) => points)
  const xs = all.map(([at]) => at)
  const across = scaleLinear([Math.min(...xs), Math.max(...xs)], [0, 1])
  const most = Math.max(...all.map(([, value]) => value), 0)
  const up = scaleLinear([0, most > 0 ? most * 1.12 : 1], [0, 1])
  const top = 20 + marks.length * MARK_LINE
  const left = (value: number) => Number((LEFT + across(value) * WIDTH).toFixed(2))
  const down = (value: number) => Number((top + (1 - up(value)) * plotPx).toFixed(1))
  const xTicks = across.ticks(6)
  const uprights = marks.map((mark) => left(mark.x))
  /** The highest point of all curves beneath a name, so that none runs through it. */
  const highestUnder = (from: number, to: number) =>
    Math.max(0, ...all.filter(([at]) => left(at) >= from && left(at) <= to).map(([, value]) => value))
  const names: { words: string; y: number; from: number; to: number; lies: NameLies }[] = []
  for (const curve of curves) {
    if (curve.words === '') continue
    const [at, value] = namePlace(curve)
    const { from, to, ...lies } = nameLies(left(at), uprights, curve.words.length * letter)
    let y = down(Math.max(value, highestUnder(from, to))) - 8
    // Where hills lie on each other, a name stands above the one before it.
    for (const other of names)
      if (other.from < to && other.to > from && Math.abs(other.y - y) < NAME_LINE) y = other.y - NAME_LINE
    names.push({ words: curve.words, y, from, to, lies })
  }
  return (
    <svg
      class="marked-curves"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width="100%"
      height={String(top + plotPx + FOOT)}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <text class="axis" x="0" y="13">
        {y.unit ? `${y.words}, ${y.unit}` : y.words}
      </text>
      <g class="grid">
        {y.bare
          ? null
          : up.ticks(4).map((value) => (
              <g>
                <line x1={`${LEFT}%`} x2={`${LEFT + WIDTH}%`} y1={down(value)} y2={down(value)} />
                <text x={`${LEFT}%`} dx="-6" y={down(value) + 4} text-anchor="end">
                  {value}
                </text>
              </g>
            ))}
        <line x1={`${LEFT}%`} x2={`${LEFT + WIDTH}%`} y1={top + plotPx} y2={top + plotPx} />
        {xTicks.map((value) => (
          <text x={`${left(value)}%`} y={top + plotPx + 17} text-anchor="middle">
            {x.unit === '°' ? `${value}°` : value}
          </text>
        ))}
      </g>
      <text class="axis" x={`${LEFT + WIDTH}%`} y={top + plotPx + 36} text-anchor="end">
        {x.unit && x.unit !== '°' ? `${x.words}, ${x.unit}` : x.words}
      </text>
      <svg
        x={`${LEFT}%`}
        y={String(top)}
        width={`${WIDTH}%`}
        height={String(plotPx)}
        viewBox={`0 0 ${STRETCH} ${plotPx}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {curves.map((curve, at) => (
          <CurvePaths curve={curve} at={at} across={across} up={up} plotPx={plotPx} />
        ))}
      </svg>
      <g class="uprights">
        {marks.map((mark, at) => (
          <line
            {...(mark.strong ? { class: 'strong' } : {})}
            x1={`${left(mark.x)}%`}
            x2={`${left(mark.x)}%`}
            y1={22 + at * MARK_LINE}
            y2={top + plotPx}
          />
        ))}
        {marks.map((mark, at) => (
          <g class={mark.strong ? 'strong' : ''}>
            <text
              x={`${left(mark.x)}%`}
              dx={leansLeft(left(mark.x), mark.words) ? '-4' : '4'}
              y={32 + at * MARK_LINE}
              text-anchor={leansLeft(left(mark.x), mark.words) ? 'end' : 'start'}
            >
              {mark.words}
            </text>
          </g>
        ))}
      </g>
      {names.map(({ words, y, lies }) => (
        <text class="name" y={y} {...lies}>
          {words}
        </text>
      ))}
    </svg>
  )
}

/** Half the room of a name at least, per cent of the width. */
const NAME_HALF = 12

/** From one name to one above it, px. */
const NAME_LINE = 17

/** A letter of a name, per cent of the width. */
const LETTER = 1.3

type NameLies = Omit<ReturnType<typeof nameLies>, 'from' | 'to'>

/** A name stands over its hill, but beside an upright that would cross it, and within the plot; from where to where. */
function nameLies(at: number, uprights: readonly number[], wide: number) {
  const half = Math.max(NAME_HALF, wide / 2)
  const near = uprights.find((upright) => Math.abs(upright - at) < half)
  const end = (x: number, dx: string) =>
    ({ x: `${x}%`, dx, 'text-anchor': 'end', from: x - wide, to: x }) as const
  const start = (x: number, dx: string) =>
    ({ x: `${x}%`, dx, 'text-anchor': 'start', from: x, to: x + wide }) as const
  if (near !== undefined) return at < near ? end(near, '-6') : start(near, '6')
  if (at + wide / 2 > LEFT + WIDTH) return end(LEFT + WIDTH, '0')
  if (at - wide / 2 < LEFT) return start(LEFT, '0')
  return { x: `${at}%`, dx: '0', 'text-anchor': 'middle', from: at - wide / 2, to: at + wide / 2 } as const
}

/** Words near the right end stand to the left of their line, long ones from the middle on. */
const leansLeft = (percent: number, words: string) => percent > (words.length > 14 ? 50 : 75)

/** The point a curve's name stands at. */
function namePlace({ points, nameAt }: MarkedCurve): Point {
  const far = (point: Point) => Math.abs(point[0] - (nameAt ?? point[0]))
  return nameAt === undefined
    ? points.reduce((a, b) => (b[1] > a[1] ? b : a))
    : points.reduce((a, b) => (far(b) < far(a) ? b : a))
}

type Scale = (value: number) => number

interface PathsProps {
  readonly curve: MarkedCurve
  readonly at: number
  readonly across: Scale
  readonly up: Scale
  readonly plotPx: number
}

function CurvePaths({ curve, at, across, up, plotPx }: PathsProps) {
  const px = (point: Point) => across(point[0]) * STRETCH
  const py = (point: Point) => (1 - up(point[1])) * plotPx
  const hill = area<Point>().x(px).y0(plotPx).y1(py).digits(1)
  const edge = line<Point>().x(px).y(py).digits(1)
  return (
    <>
      {curve.filled ? <path class={`hill hill-${at}`} d={hill([...curve.points]) ?? ''} /> : null}
      <path
        class={`curve dash-${at}`}
        d={edge([...curve.points]) ?? ''}
        fill="none"
        vector-effect="non-scaling-stroke"
      />
    </>
  )
}
