import type { Frame } from '../../xray/image/card/machine-card.ts'

/** Squares laid over a picture, about as many as make one about as wide as a fingertip on a projected screen. */
const ALONG = 12

/** A grid over a picture: columns A, B, C … and rows 1, 2, 3 …. */
export interface Grid {
  readonly frame: Frame
  readonly columns: number
  readonly rows: number
  readonly sideMm: number
}

export function gridOver(frame: Frame): Grid {
  const sideMm = Math.max(frame.widthMm, frame.heightMm) / ALONG
  return {
    frame,
    sideMm,
    columns: Math.max(1, Math.ceil(frame.widthMm / sideMm - 1e-6)),
    rows: Math.max(1, Math.ceil(frame.heightMm / sideMm - 1e-6)),
  }
}

/** "C4" for the third column and fourth row. */
export const squareName = (column: number, row: number) => `${String.fromCharCode(65 + column)}${row + 1}`

export interface Square {
  readonly name: string
  readonly column: number
  readonly row: number
}

/** Every square of a grid, row by row. */
export function squaresOf(grid: Grid): Square[] {
  return Array.from({ length: grid.columns * grid.rows }, (_, i) => {
    const [column, row] = [i % grid.columns, Math.floor(i / grid.columns)]
    return { name: squareName(column, row), column, row }
  })
}

/** Squares a person named, such as "C4, f7", each once; what is no square of the grid apart. */
export function readSquares(text: string, grid: Grid): { squares: Square[]; unknown: string[] } {
  const all = new Map(squaresOf(grid).map((square) => [square.name, square]))
  const names = [
    ...new Set(
      text
        .toUpperCase()
        .split(/[^A-Z0-9]+/)
        .filter(Boolean),
    ),
  ]
  return {
    squares: names.flatMap((name) => all.get(name) ?? []),
    unknown: names.filter((name) => !all.has(name)),
  }
}

/** The square the middle of something lies in. */
export function squareAt(grid: Grid, { u, v }: { readonly u: number; readonly v: number }): string {
  const within = (at: number, most: number) => Math.min(most - 1, Math.max(0, Math.floor(at / grid.sideMm)))
  return squareName(within(u - grid.frame.leftMm, grid.columns), within(v - grid.frame.topMm, grid.rows))
}

/** Whether something at a place, reaching so far, lies in a square. */
export function touches(
  grid: Grid,
  { column, row }: Square,
  at: { readonly u: number; readonly v: number; readonly halfU: number; readonly halfV: number },
): boolean {
  const { frame, sideMm } = grid
  const left = frame.leftMm + column * sideMm
  const top = frame.topMm + row * sideMm
  return (
    at.u + at.halfU >= left &&
    at.u - at.halfU <= left + sideMm &&
    at.v + at.halfV >= top &&
    at.v - at.halfV <= top + sideMm
  )
}
