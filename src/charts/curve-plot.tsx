import { line } from 'd3-shape'
import type { Axis } from './axis.ts'
import { clearPlace } from './clear-place.ts'
import { SettingStrip, STRIP, type StripRun } from './setting-strip.tsx'
import { spreadLabels } from './spread-labels.ts'

/** A place on a curve; y null is a gap in it. */
export interface Place {
  readonly x: number
  readonly y: number | null
  /** The machine is set otherwise than at the place before: what lies between them is not known. */
  readonly newSetting?: boolean
}

export interface Curve {
  /** Stands at the curve's end, e.g. "A"; empty for none. */
  readonly mark: string
  /** Puts the mark where the curve first reaches this value instead of at its end. */
  readonly markAt?: number
  /** Which dash it has, from 0 (solid); told apart without colour. */
  readonly dash: number
  readonly places: readonly Place[]
  /** Dots where a value was computed. */
  readonly dots: boolean
  /** Drawn thin: a bound rather than a value. */
  readonly thin?: boolean
  /** The place the brief stands at, ringed. */
  readonly ring?: Place | null
}

/** An area between two lines over the same stretch; an open one is hatched from its lower line to the top. */
export interface Band {
  readonly open: boolean
  readonly lower: readonly { readonly x: number; readonly y: number }[]
  readonly upper: readonly { readonly x: number; readonly y: number }[]
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly height: number
  readonly x: Axis
  readonly y: Axis
  readonly curves: readonly Curve[]
  readonly bands?: readonly Band[]
  /** A level across, e.g. the size to find. */
  readonly level?: { readonly y: number; readonly words: string } | null
  /** An upright, e.g. where the brief stands. */
  readonly upright?: { readonly x: number; readonly words: string } | null
  /** Words at the foot where a curve has a gap. */
  readonly gaps?: readonly { readonly x: number; readonly words: string }[]
  /** How the machine is set along the axis, beneath it. */
  readonly settings?: readonly StripRun[]
}

/** Above the plot stand the title of the upright axis and, under it, the words of the upright. */
const TOP = 48
/** Below it the numbers and the title of the axis along. */
const FOOT = 42
/** Pixels of a character, and the narrowest plot they have to fit. */
const CHARACTER = 7
const NARROWEST = 270
/** The plot's left edge and width, per cent of the picture; numbers of the upright axis stand left of it. */
const LEFT = 9
const WIDTH = 86
/** Width of the stretched coordinates the paths are drawn in. */
const STRETCH = 1000

/**
 * Curves of one quantity against another. Places along are in per cent, so that the picture takes any width
 * and its text keeps its size; only the paths are stretched.
 */
export function CurvePlot(props: Props) {
  const { id, title, description, height, x, y, curves, bands = [], level, upright, gaps = [] } = props
  const { settings = [] } = props
  const strip = settings.length > 0 ? STRIP : 0
  const along = (value: number) => Number((LEFT + x.share(value) * WIDTH).toFixed(2))
  const up = (value: number) => Number((TOP + (1 - y.share(value)) * height).toFixed(1))
  return (
    <svg
      class="curves"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width="100%"
      height={String(TOP + height + FOOT + strip)}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <defs>
        <pattern id={`${id}-open`} width="14" height="7" patternUnits="userSpaceOnUse">
          <path d="M0 7L14 0" class="hatch" />
        </pattern>
      </defs>
      <Grid x={x} y={y} along={along} up={up} height={height} />
      <svg
        x={`${LEFT}%`}
        y={String(TOP)}
        width={`${WIDTH}%`}
        height={String(height)}
        viewBox={`0 0 ${STRETCH} ${height}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        {bands.map((band) => (
          <BandPath band={band} x={x} y={y} height={height} hatch={`${id}-open`} />
        ))}
        {curves.map((curve) => (
          <>
            <path class={classOf(curve)} d={pathOf(curve, x, y, height)} vector-effect="non-scaling-stroke" />
            {curve.places.some(({ newSetting }) => newSetting) ? (
              <path
                class="curve between"
                d={betweenOf(curve, x, y, height)}
                vector-effect="non-scaling-stroke"
              />
            ) : null}
          </>
        ))}
      </svg>
      <Numbers x={x} y={y} along={along} up={up} height={height} />
      {level ? <Level {...{ level, x, y, curves, height, up }} upright={upright ?? null} /> : null}
      {upright ? (
        <g class="present">
          <line x1={`${along(upright.x)}%`} x2={`${along(upright.x)}%`} y1={TOP - 8} y2={TOP + height} />
          <text x={`${along(upright.x)}%`} y={TOP - 13} text-anchor={anchorAt(along(upright.x))}>
            {upright.words}
          </text>
        </g>
      ) : null}
      {curves.map((curve) => (
        <Dots curve={curve} along={along} up={up} />
      ))}
      {gaps.map((gap) => (
        <text
          class="gap"
          x={`${along(gap.x)}%`}
          y={TOP + height - 7}
          text-anchor={anchorAt(along(gap.x), 35, 65)}
        >
          {gap.words}
        </text>
      ))}
      <Marks curves={curves} along={along} up={up} height={height} />
      {strip > 0 ? <SettingStrip runs={settings} along={along} top={TOP + height + FOOT} /> : null}
    </svg>
  )
}

type Position = (value: number) => number

const anchorAt = (percent: number, low = 30, high = 70) =>
  percent < low ? 'start' : percent > high ? 'end' : 'middle'

const classOf = ({ dash, thin }: Curve): string => `curve dash-${dash}${thin ? ' thin' : ''}`

function pathOf({ places }: Curve, x: Axis, y: Axis, height: number): string {
  return stretches(places)
    .map((stretch) => drawer(x, y, height)([...stretch]) ?? '')
    .join('')
}

const drawer = (x: Axis, y: Axis, height: number) =>
  line<Place>()
    .defined((place) => place.y !== null)
    .x((place) => x.share(place.x) * STRETCH)
    .y((place) => (1 - y.share(place.y ?? y.from)) * height)
    .digits(1)

/** Places in runs of one setting: a thick line joins none that were set differently. */
function stretches(places: readonly Place[]): Place[][] {
  const runs: Place[][] = []
  for (const place of places) {
    const last = runs.at(-1)
    if (last && !place.newSetting) last.push(place)
    else runs.push([place])
  }
  return runs
}

/** The joins over which the setting changes. */
function betweenOf({ places }: Curve, x: Axis, y: Axis, height: number): string {
  return places
    .flatMap((place, at) => {
      const before = places[at - 1]
      return place.newSetting && before && before.y !== null && place.y !== null
        ? [drawer(x, y, height)([before, place]) ?? '']
        : []
    })
    .join('')
}

/** The words of a level stand where neither a curve nor the upright runs through them. */
function Level({ level, x, y, curves, height, up, upright }: LevelProps) {
  const shares = curves.map(({ places }) =>
    places.flatMap((place) => (place.y === null ? [] : [{ along: x.share(place.x), up: y.share(place.y) }])),
  )
  const width = (level.words.length * CHARACTER) / NARROWEST
  const [at, high] = [y.share(level.y), 20 / height]
  if (upright) shares.push([-high / 2, high / 2].map((off) => ({ along: x.share(upright.x), up: at + off })))
  const { along, anchor, above } = clearPlace(shares, at, width, high)
  return (
    <g class="must-find">
      <line x1={`${LEFT}%`} x2={`${LEFT + WIDTH}%`} y1={up(level.y)} y2={up(level.y)} />
      <text x={`${LEFT + along * WIDTH}%`} y={up(level.y) + (above ? -6 : 16)} text-anchor={anchor}>
        {level.words}
      </text>
    </g>
  )
}

interface LevelProps {
  readonly level: { readonly y: number; readonly words: string }
  readonly x: Axis
  readonly y: Axis
  readonly curves: readonly Curve[]
  readonly height: number
  readonly up: Position
  readonly upright: { readonly x: number } | null
}

interface GridProps {
  readonly x: Axis
  readonly y: Axis
  readonly along: Position
  readonly up: Position
  readonly height: number
}

function Grid({ x, y, along, up, height }: GridProps) {
  return (
    <g class="grid">
      {y.ticks.map(({ value }) => (
        <line x1="0" x2={`${LEFT + WIDTH}%`} y1={up(value)} y2={up(value)} />
      ))}
      {x.ticks.map(({ value }) => (
        <line x1={`${along(value)}%`} x2={`${along(value)}%`} y1={TOP + height} y2={TOP + height + 5} />
      ))}
    </g>
  )
}

/** Numbers and titles of both axes, over everything that is drawn. */
function Numbers({ x, y, along, up, height }: GridProps) {
  return (
    <>
      <g class="grid">
        {y.ticks.map(({ value, words }) => (
          <text x="0" y={up(value) - 4}>
            {words}
          </text>
        ))}
        {x.ticks.map(({ value, words }) => (
          <text x={`${along(value)}%`} y={TOP + height + 19} text-anchor={anchorAt(along(value), 4, 94)}>
            {words}
          </text>
        ))}
      </g>
      <g class="axis-titles">
        <text x="0" y="13">
          {y.title}
        </text>
        <text x={`${LEFT + WIDTH}%`} y={TOP + height + 37} text-anchor="end">
          {x.title}
        </text>
      </g>
    </>
  )
}

function BandPath({ band, x, y, height, hatch }: BandProps) {
  type At = Band['lower'][number]
  const along = (place: At) => x.share(place.x) * STRETCH
  const edge = (places: readonly At[], value: (place: At) => number) =>
    line<At>().x(along).y(value).digits(1)([...places]) ?? ''
  const lower = edge([...band.lower].reverse(), (place) => (1 - y.share(place.y)) * height)
  const upper = band.open
    ? edge(band.lower, () => 0)
    : edge(band.upper, (place) => (1 - y.share(place.y)) * height)
  const d = `${upper}${lower.replace('M', 'L')}Z`
  return band.open ? <path class="band open" d={d} fill={`url(#${hatch})`} /> : <path class="band" d={d} />
}

interface BandProps {
  readonly band: Band
  readonly x: Axis
  readonly y: Axis
  readonly height: number
  readonly hatch: string
}

function Dots({ curve, along, up }: { curve: Curve; along: Position; up: Position }) {
  return (
    <g class="dots">
      {curve.dots
        ? curve.places.map(({ x, y }) =>
            y === null ? null : <circle cx={`${along(x)}%`} cy={up(y)} r="2.2" />,
          )
        : null}
      {curve.ring && curve.ring.y !== null ? (
        <circle class="ring" cx={`${along(curve.ring.x)}%`} cy={up(curve.ring.y)} r="6" />
      ) : null}
    </g>
  )
}

function markPlace({ places, markAt }: Curve): Place | undefined {
  const reached = markAt === undefined ? undefined : places.find(({ y }) => y !== null && y >= markAt)
  return reached ?? places.findLast(({ y }) => y !== null)
}

/** Marks of the curves, moved apart where they would lie on each other. */
function Marks({
  curves,
  along,
  up,
  height,
}: {
  curves: readonly Curve[]
  along: Position
  up: Position
  height: number
}) {
  const ends = curves.flatMap((curve) => {
    const place = markPlace(curve)
    return curve.mark && place && place.y !== null
      ? [{ mark: curve.mark, x: along(place.x), y: up(place.y) }]
      : []
  })
  const placed = spreadLabels(
    ends.map(({ y }) => y),
    15,
    TOP + 6,
    TOP + height - 2,
  )
  return (
    <g class="marks">
      {ends.map(({ mark, x }, at) => (
        <text x={`${x}%`} dx="7" y={(placed[at] ?? 0) + 4}>
          {mark}
        </text>
      ))}
    </g>
  )
}
