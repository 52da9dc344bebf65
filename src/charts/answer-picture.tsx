import type { MmAxis } from './mm-axis.ts'
import { type BarSizes, labelled } from './size-bar.tsx'

export interface PicturedRow {
  readonly name: string
  readonly asked: string
  readonly expected: string
  readonly promised: string
  /** "● met". */
  readonly answer: string
  readonly sizes: BarSizes
  readonly askedMm: number | null
}

interface Props {
  readonly title: string
  readonly sentence: string
  readonly axis: MmAxis
  readonly rows: readonly PicturedRow[]
}

const WIDE = 960
const EDGE = 28
const COLUMNS = { asked: 300, bars: 330, expected: 680, promised: 790, answer: 820 }
const BARS_WIDE = 270
const HEAD = 46
const LINE = 28
const ROW = 30
/** Letters of the sentence that fit on a line. */
const LETTERS = 78

/** Words in lines of at most so many letters. */
function lines(words: string, letters: number): string[] {
  const all: string[] = []
  for (const word of words.split(' ')) {
    const last = all.at(-1)
    if (last !== undefined && last.length + word.length < letters) all[all.length - 1] = `${last} ${word}`
    else all.push(word)
  }
  return all
}

const SANS = 'Liberation Sans, Helvetica Neue, Arial, sans-serif'
const SERIF = 'Georgia, Liberation Serif, serif'

/** The answer of an advice as one picture that stands by itself: the sentence, then a row for each contaminant. */
export function AnswerPicture({ title, sentence, axis, rows }: Props) {
  const said = lines(sentence, LETTERS)
  const top = HEAD + said.length * LINE + 34
  const high = top + rows.length * ROW + 44
  const x = (mm: number) => COLUMNS.bars + (axis.percent(mm) / 100) * BARS_WIDE
  const cell = { 'font-size': 14, 'text-anchor': 'end' } as const
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${WIDE} ${high}`}
      width={WIDE}
      height={high}
      font-family={SANS}
      fill="#221f1a"
      role="img"
      aria-labelledby="answer-picture"
    >
      <title id="answer-picture">{`${title}: ${sentence}`}</title>
      <rect width={WIDE} height={high} fill="#f8f4ec" />
      <text x={EDGE} y={30} font-size={13} fill="#5a5347">
        {title}
      </text>
      {said.map((line, at) => (
        <text x={EDGE} y={HEAD + 16 + at * LINE} font-size={22} font-family={SERIF}>
          {line}
        </text>
      ))}
      <g font-size={12} fill="#5a5347">
        <text x={EDGE} y={top - 8}>
          What must not be in it
        </text>
        <text x={COLUMNS.asked} y={top - 8} text-anchor="end">
          asked, mm
        </text>
        {labelled(axis).map((mm) => (
          <text x={x(mm)} y={top - 8} text-anchor="middle">
            {mm}
          </text>
        ))}
        <text x={COLUMNS.expected} y={top - 8} text-anchor="end">
          expected
        </text>
        <text x={COLUMNS.promised} y={top - 8} text-anchor="end">
          safe to promise
        </text>
        <text x={COLUMNS.answer} y={top - 8}>
          answer
        </text>
      </g>
      {rows.map((row, at) => {
        const y = top + at * ROW
        const middle = y + ROW / 2
        const { expectedMm, cautiousMm, bestMm } = row.sizes
        return (
          <g>
            <line x1={EDGE} x2={WIDE - EDGE} y1={y} y2={y} stroke={at === 0 ? '#221f1a' : '#d3caba'} />
            <text x={EDGE} y={middle + 5} font-size={14} font-weight="600">
              {row.name}
            </text>
            <text x={COLUMNS.asked} y={middle + 5} {...cell}>
              {row.asked}
            </text>
            {axis.ticksMm.map((mm) => (
              <line x1={x(mm)} x2={x(mm)} y1={y} y2={y + ROW} stroke="#d3caba" />
            ))}
            {bestMm === null ? null : (
              <line x1={x(bestMm)} x2={x(bestMm)} y1={middle - 5} y2={middle + 5} stroke="#827968" />
            )}
            {expectedMm === null ? null : (
              <>
                <rect
                  x={x(expectedMm)}
                  width={Math.max(
                    1,
                    (cautiousMm === null ? COLUMNS.bars + BARS_WIDE : x(cautiousMm)) - x(expectedMm),
                  )}
                  y={middle - 4}
                  height={8}
                  fill={cautiousMm === null ? 'none' : '#827968'}
                  stroke="#827968"
                />
                <line
                  x1={x(expectedMm)}
                  x2={x(expectedMm)}
                  y1={middle - 9}
                  y2={middle + 9}
                  stroke="#221f1a"
                  stroke-width={2}
                />
              </>
            )}
            {row.askedMm === null ? null : (
              <line
                x1={x(row.askedMm)}
                x2={x(row.askedMm)}
                y1={y}
                y2={y + ROW}
                stroke="#8c3214"
                stroke-width={1.6}
                stroke-dasharray="4 2"
              />
            )}
            <text x={COLUMNS.expected} y={middle + 5} {...cell}>
              {row.expected}
            </text>
            <text x={COLUMNS.promised} y={middle + 5} {...cell}>
              {row.promised}
            </text>
            <text x={COLUMNS.answer} y={middle + 5} font-size={14}>
              {row.answer}
            </text>
          </g>
        )
      })}
      <text x={EDGE} y={high - 16} font-size={12} fill="#5a5347">
        Upright stroke: expected; bar: up to safe to promise; dashed: asked; mm on a log axis. A prediction; a
        test on the real product decides.
      </text>
    </svg>
  )
}
