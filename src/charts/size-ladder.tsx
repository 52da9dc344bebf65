import type { MmAxis } from './mm-axis.ts'

/** One machine on the ladder; sizes in mm, null where there is none. */
export interface LadderRow {
  readonly label: string
  readonly bestMm: number | null
  readonly halfMm: number | null
  readonly expectedMm: number | null
  readonly sureMm: number | null
  readonly cautiousMm: number | null
  /** Stands at the end of the label's line, e.g. "● yes". */
  readonly mark: string
  /** Stands beside the bar, e.g. "2.5 to 2.9 mm". */
  readonly numbers: string
  /** True where a rule rules the machine out, whatever its sizes: its bar is left hollow. */
  readonly ruledOut: boolean
}

export interface LadderGroup {
  /** Of the inspection point; empty where there is only one. */
  readonly name: string
  readonly rows: readonly LadderRow[]
}

interface Props {
  readonly id: string
  readonly title: string
  readonly description: string
  readonly axis: MmAxis
  readonly mustFindMm: number | null
  readonly mustFindWords: string
  readonly groups: readonly LadderGroup[]
}

const HEAD = 46
const GROUP = 30
const ROW = 46
const FOOT = 24

const headOf = (group: LadderGroup) => (group.name === '' ? 0 : GROUP)

/**
 * The size ladder: a log axis in mm; for each machine a bar from expected to cautious, a whisker from
 * half to sure, a tick at best possible; one line at the size to find. Positions are in percent, so the
 * picture takes any width and its text keeps its size.
 */
export function SizeLadder({ id, title, description, axis, mustFindMm, mustFindWords, groups }: Props) {
  const heights = groups.map((group) => headOf(group) + group.rows.length * ROW)
  const plot = heights.reduce((sum, height) => sum + height, 0)
  const tops = heights.map((_, at) => HEAD + heights.slice(0, at).reduce((sum, height) => sum + height, 0))
  return (
    <svg
      class="ladder"
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width="100%"
      height={String(HEAD + plot + FOOT)}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-desc`}>{description}</desc>
      <defs>
        <pattern id={`${id}-open`} width="6" height="6" patternUnits="userSpaceOnUse">
          <path d="M0 6L6 0" class="hatch" />
        </pattern>
      </defs>
      <Grid axis={axis} bottom={HEAD + plot} />
      {mustFindMm === null ? null : (
        <MustFind at={axis.percent(mustFindMm)} words={mustFindWords} bottom={HEAD + plot} />
      )}
      {groups.map((group, at) => (
        <g>
          {group.name ? (
            <text class="group" x="0" y={tops[at]! + 20}>
              {group.name}
            </text>
          ) : null}
          {group.rows.map((row, place) => (
            <Row row={row} axis={axis} y={tops[at]! + headOf(group) + place * ROW} hatch={`${id}-open`} />
          ))}
        </g>
      ))}
    </svg>
  )
}

function Grid({ axis, bottom }: { axis: MmAxis; bottom: number }) {
  return (
    <g class="grid">
      {axis.ticksMm.map((mm, at) => {
        const place = axis.percent(mm)
        const x = `${place}%`
        const last = at === axis.ticksMm.length - 1
        return (
          <g>
            <line x1={x} x2={x} y1={HEAD - 8} y2={bottom} />
            <text x={x} y={bottom + 18} text-anchor={place > 92 ? 'end' : place < 4 ? 'start' : 'middle'}>
              {last ? `${mm} mm` : mm}
            </text>
          </g>
        )
      })}
    </g>
  )
}

function MustFind({ at, words, bottom }: { at: number; words: string; bottom: number }) {
  return (
    <g class="must-find">
      <line x1={`${at}%`} x2={`${at}%`} y1={HEAD - 22} y2={bottom} />
      <text x={`${at}%`} y={HEAD - 28} text-anchor={at > 70 ? 'end' : at < 30 ? 'start' : 'middle'}>
        {words}
      </text>
    </g>
  )
}

function Row({ row, axis, y, hatch }: { row: LadderRow; axis: MmAxis; y: number; hatch: string }) {
  const middle = y + 31
  return (
    <g class={row.ruledOut ? 'machine ruled-out' : 'machine'}>
      <text class="name" x="0" y={y + 15}>
        {row.label}
      </text>
      <text class="mark" x="100%" y={y + 15} text-anchor="end">
        <MarkWords mark={row.mark} />
      </text>
      {row.bestMm === null ? null : <Tick at={axis.percent(row.bestMm)} y={middle} half={10} name="best" />}
      {row.halfMm === null || row.sureMm === null ? null : (
        <Whisker from={axis.percent(row.halfMm)} to={axis.percent(row.sureMm)} y={middle} />
      )}
      {row.expectedMm === null ? null : (
        <Bar
          from={axis.percent(row.expectedMm)}
          to={row.cautiousMm === null ? null : axis.percent(row.cautiousMm)}
          y={middle}
          hatch={hatch}
        />
      )}
      <Numbers row={row} axis={axis} y={middle + 4} />
    </g>
  )
}

function Tick({ at, y, half, name }: { at: number; y: number; half: number; name: string }) {
  return <line class={name} x1={`${at}%`} x2={`${at}%`} y1={y - half} y2={y + half} />
}

function Whisker({ from, to, y }: { from: number; to: number; y: number }) {
  return (
    <g class="whisker">
      <line x1={`${from}%`} x2={`${to}%`} y1={y} y2={y} />
      <Tick at={from} y={y} half={4} name="cap" />
      <Tick at={to} y={y} half={4} name="cap" />
    </g>
  )
}

/** From expected to cautious; hatched to the end of the axis where nothing can be promised. */
function Bar({ from, to, y, hatch }: { from: number; to: number | null; y: number; hatch: string }) {
  const width = Number(((to ?? 100) - from).toFixed(2))
  return (
    <g class="bar">
      <rect
        x={`${from}%`}
        width={`${width}%`}
        y={y - 6}
        height="12"
        {...(to === null ? { fill: `url(#${hatch})` } : {})}
        class={to === null ? 'open' : 'closed'}
      />
      <Tick at={from} y={y} half={6} name="edge" />
    </g>
  )
}

/** The numbers beside the bar: right of it where there is room, else left, else on its end. */
function Numbers({ row, axis, y }: { row: LadderRow; axis: MmAxis; y: number }) {
  const marks = [row.bestMm, row.halfMm, row.expectedMm, row.sureMm, row.cautiousMm].filter(
    (mm) => mm !== null,
  )
  if (marks.length === 0)
    return (
      <text class="numbers none" x="0" y={y}>
        {row.numbers}
      </text>
    )
  const start = axis.percent(Math.min(...marks))
  const open = row.expectedMm !== null && row.cautiousMm === null
  const end = open ? 100 : axis.percent(Math.max(...marks))
  const place = end < 64 ? 'right' : start > 36 ? 'left' : 'over'
  const x = { right: end, left: start, over: 100 }[place]
  return (
    <text
      class="numbers"
      x={`${x}%`}
      dx={place === 'right' ? '8' : '-8'}
      y={y}
      text-anchor={place === 'right' ? 'start' : 'end'}
    >
      {row.numbers}
    </text>
  )
}

/** The symbol, then its words, which a narrow screen leaves out so that the name has room. */
function MarkWords({ mark }: { mark: string }) {
  const [symbol = '', ...words] = mark.split(' ')
  return (
    <>
      {symbol}
      {words.length > 0 ? <tspan class="mark-words"> {words.join(' ')}</tspan> : null}
    </>
  )
}
