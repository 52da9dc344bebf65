import type { MmAxis } from './mm-axis.ts'

/** Sizes of one machine for one contaminant, mm; null where there is none. */
export interface BarSizes {
  readonly bestMm: number | null
  readonly expectedMm: number | null
  readonly cautiousMm: number | null
}

interface Props {
  readonly axis: MmAxis
  readonly sizes: BarSizes
  readonly askedMm: number | null
  /** What the bar shows, for readers who do not see it. */
  readonly words: string
  /** True where a rule rules the machine out: the bar is hollow. */
  readonly ruledOut?: boolean
}

const HIGH = 20
const MIDDLE = HIGH / 2

/**
 * One line of a ladder, to stand in a table cell: tick at best possible, bar from expected to safe to promise,
 * hatched to the edge where nothing can be promised, a dashed upright line at the size asked. The cell's class
 * draws the grid; positions are in per cent, so any width will do. `BarDefs` must stand once on the page.
 */
export function SizeBar({ axis, sizes, askedMm, words, ruledOut = false }: Props) {
  const { bestMm, expectedMm, cautiousMm } = sizes
  const from = expectedMm === null ? null : axis.percent(expectedMm)
  const to = cautiousMm === null ? 100 : axis.percent(cautiousMm)
  return (
    <svg class={ruledOut ? 'size-bar ruled-out' : 'size-bar'} role="img" aria-label={words} height={HIGH}>
      <use href="#size-grid" />
      {bestMm === null ? null : (
        <line class="best" x1={`${axis.percent(bestMm)}%`} x2={`${axis.percent(bestMm)}%`} y1="5" y2="15" />
      )}
      {from === null ? null : (
        <>
          <rect
            class={cautiousMm === null ? 'open' : 'closed'}
            x={`${from}%`}
            width={`${Number(Math.max(0.5, to - from).toFixed(2))}%`}
            y={MIDDLE - 4}
            height="8"
          />
          <line class="expected" x1={`${from}%`} x2={`${from}%`} y1="2" y2="18" />
        </>
      )}
      {askedMm === null ? null : (
        <line
          class="asked-line"
          x1={`${axis.percent(askedMm)}%`}
          x2={`${axis.percent(askedMm)}%`}
          y1="0"
          y2={HIGH}
        />
      )}
    </svg>
  )
}

/** What all bars of a page share: the grid of their axis and the hatching of an open end. */
export function BarDefs({ axis }: { axis: MmAxis }) {
  return (
    <svg class="defs" aria-hidden="true" width="0" height="0">
      <defs>
        <symbol id="size-grid" width="100%" height={HIGH} overflow="visible">
          {axis.ticksMm.map((mm) => (
            <line
              class="grid-line"
              x1={`${axis.percent(mm)}%`}
              x2={`${axis.percent(mm)}%`}
              y1="0"
              y2={HIGH}
            />
          ))}
        </symbol>
        <pattern id="size-open" width="5" height="5" patternUnits="userSpaceOnUse">
          <path d="M0 5L5 0" class="hatch" />
        </pattern>
      </defs>
    </svg>
  )
}

/** Labels nearer than this, in per cent of the width, would touch. */
const CLOSE = 12

/** The ticks that have room for their label, from the left. */
export function labelled({ ticksMm, percent }: MmAxis): number[] {
  const shown: number[] = []
  for (const mm of ticksMm) {
    const last = shown.at(-1)
    if (last === undefined || percent(mm) - percent(last) >= CLOSE) shown.push(mm)
  }
  return shown
}

/** The axis over a column of bars: sizes in mm on a log scale, every second one where they would touch. */
export function BarAxis({ axis }: { axis: MmAxis }) {
  return (
    <svg class="size-axis" role="img" aria-label="size in mm, log axis" height="14">
      {labelled(axis).map((mm) => {
        const at = axis.percent(mm)
        return (
          <text x={`${at}%`} y="11" text-anchor={at > 94 ? 'end' : at < 5 ? 'start' : 'middle'}>
            {mm}
          </text>
        )
      })}
    </svg>
  )
}
