import type { Child } from 'hono/jsx'
import type { CardPiece, DrawnSheet } from '../../src/card/drawn-sheet.ts'

/** Room between a mark and what it surrounds, mm. */
const MARK_ROOM_MM = 1.6

interface Props {
  readonly sheet: DrawnSheet
  /** Where the grey picture is fetched from, or its bytes as a data address. */
  readonly href: string
  readonly alt: string
  /** The part that is drawn, mm; the whole frame unless given. */
  readonly part?: DrawnSheet['frame']
  /** Marks and numbers; a picture without them shows what a person would have to go by. */
  readonly marks?: boolean
  /** Letters beside the picture: so many of them are as high as its longer side. */
  readonly letters?: number
  /** Drawn over the picture, in its millimetres. */
  readonly over?: Child
}

/** A simulated radiograph in its own millimetres; marks around the pieces, numbers of each line beside the picture. */
export function SheetPicture({
  sheet,
  href,
  alt,
  part = sheet.frame,
  marks = true,
  letters = 26,
  over,
}: Props) {
  const { frame, pieces, lines, falseAlarms } = sheet
  const letter = Math.max(part.widthMm, part.heightMm) / letters
  const room = marks && lines.length > 0 ? 4.4 * letter : 0
  const within = (p: CardPiece) => p.v >= part.topMm && p.v <= part.topMm + part.heightMm
  return (
    <svg
      class="sheet-picture"
      viewBox={`0 0 ${round(part.widthMm + room)} ${round(part.heightMm + 2.2 * letter)}`}
      preserveAspectRatio="xMinYMin meet"
      role={over ? 'group' : 'img'}
      aria-label={alt}
    >
      <svg
        aria-hidden="true"
        x="0"
        y="0"
        width={round(part.widthMm)}
        height={round(part.heightMm)}
        viewBox={[part.leftMm, part.topMm, part.widthMm, part.heightMm].map(round).join(' ')}
      >
        <image
          href={href}
          x={round(frame.leftMm)}
          y={round(frame.topMm)}
          width={round(frame.widthMm)}
          height={round(frame.heightMm)}
          preserveAspectRatio="none"
        />
        {marks ? (
          <g class="sheet-marks">
            {pieces.map((piece) => (
              <PieceMark piece={piece} />
            ))}
            {falseAlarms.map(({ u, v, halfMm }) => (
              <Twice d={triangle(u, v, halfMm + MARK_ROOM_MM)} words="false alarm" />
            ))}
          </g>
        ) : null}
        {over}
      </svg>
      {marks ? (
        <g class="sheet-numbers" font-size={round(letter)}>
          {lines.map(({ from, to }) => {
            const line = pieces.filter((p) => p.number >= from && p.number <= to && within(p))
            const last = line.at(-1)
            if (!last) return null
            const y = round(last.v - part.topMm)
            return (
              <g>
                <path
                  class="leader"
                  d={`M${round(last.u + last.halfU + 2 * MARK_ROOM_MM - part.leftMm)} ${y}H${round(part.widthMm + 0.4 * letter)}`}
                />
                <text x={round(part.widthMm + 0.6 * letter)} y={round(y + 0.35 * letter)}>
                  {from === to ? from : `${from}–${to}`}
                </text>
              </g>
            )
          })}
        </g>
      ) : null}
      <ScaleBar y={part.heightMm + 0.9 * letter} letter={letter} />
    </svg>
  )
}

function round(mm: number): number {
  return Math.round(mm * 100) / 100
}

function PieceMark({ piece }: { piece: CardPiece }) {
  const { u, v, number, words, sizeMm, found } = piece
  const [a, b] = [piece.halfU + MARK_ROOM_MM, piece.halfV + MARK_ROOM_MM]
  const told = `${number}: ${words}, ${sizeMm} mm, ${found ? 'found' : 'missed'}`
  return <Twice d={found ? corners(u, v, a, b) : ring(u, v, a, b)} words={told} dashed={!found} />
}

/** A line in dark on light, so that it shows on every grey. */
function Twice({ d, words, dashed = false }: { d: string; words: string; dashed?: boolean }) {
  return (
    <g {...(dashed ? { class: 'dashed' } : {})}>
      <title>{words}</title>
      <path class="mark-under" d={d} />
      <path class="mark-over" d={d} />
    </g>
  )
}

/** The four corners of a box: a piece that was found. */
function corners(u: number, v: number, a: number, b: number): string {
  const leg = Math.min(a, b) * 0.6
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ]
    .map(([x, y]) => {
      const [cu, cv] = [u + x! * a, v + y! * b]
      return `M${round(cu - x! * leg)} ${round(cv)}H${round(cu)}V${round(cv - y! * leg)}`
    })
    .join('')
}

/** A ring: a piece that was missed. */
function ring(u: number, v: number, a: number, b: number): string {
  return `M${round(u - a)} ${round(v)}a${round(a)} ${round(b)} 0 1 0 ${round(2 * a)} 0a${round(a)} ${round(b)} 0 1 0 ${round(-2 * a)} 0`
}

function triangle(u: number, v: number, half: number): string {
  return `M${round(u)} ${round(v - 1.7 * half)}L${round(u + 1.5 * half)} ${round(v + half)}H${round(u - 1.5 * half)}Z`
}

const SCALE_BAR_MM = 20

function ScaleBar({ y, letter }: { y: number; letter: number }) {
  return (
    <g class="sheet-numbers" font-size={round(letter * 0.9)}>
      <path
        class="scale-bar"
        d={`M0 ${round(y)}v${round(0.5 * letter)}h${SCALE_BAR_MM}v${round(-0.5 * letter)}`}
      />
      <text x={round(SCALE_BAR_MM + 0.5 * letter)} y={round(y + 0.7 * letter)}>
        {`${SCALE_BAR_MM} mm; simulated`}
      </text>
    </g>
  )
}
