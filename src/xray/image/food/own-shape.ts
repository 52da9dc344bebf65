/**
 * What makes a block of food look like itself in a picture: the outline and fibres of a fillet, the squares of
 * a moulded bar. Drawing only; proportions from memory (mark M).
 */

const FILLETS: ReadonlySet<string> = new Set(['chicken_breast', 'cod', 'salmon'])
const MOULDED: ReadonlySet<string> = new Set(['chocolate'])

/** Single pieces of muscle that lie in their own outline. */
export const isFillet = (food: string): boolean => FILLETS.has(food)

/** Fibres run along the piece: the pattern is so many times as long as it is wide, against an even one. */
export const fibreStretch = (food: string): number => (isFillet(food) ? 2.2 : 1)

/** Half width of a fillet at x from its blunt (−1) to its pointed end (1), of the half width of its box. */
export function filletHalfWidth(x: number): number {
  const round = Math.max(0, 1 - x * x) ** 0.45
  return Math.min(1, round * (1 - 0.28 * x - 0.1 * Math.cos(2.2 * (x + 0.4))) * 1.03)
}

const SQUARE_ALONG_MM = 25
const SQUARE_ACROSS_MM = 19
/** Grooves: this share of the bar's height deep, sloping over so many mm to either side. */
const GROOVE_DEPTH = 0.5
const GROOVE_MM = 3.5

/** Height of a moulded bar at a place over its full height; null for food that is not moulded. */
export function mouldOf(food: string, uMm: number, vMm: number): ((u: number, v: number) => number) | null {
  if (!MOULDED.has(food)) return null
  const squares = (length: number, usual: number) => length / Math.max(1, Math.round(length / usual))
  const [along, across] = [squares(uMm, SQUARE_ALONG_MM), squares(vMm, SQUARE_ACROSS_MM)]
  const fromGroove = (at: number, pitch: number) => Math.abs(at - pitch * Math.round(at / pitch))
  return (u, v) => {
    const nearest = Math.min(fromGroove(u, along), fromGroove(v, across))
    return 1 - GROOVE_DEPTH * Math.max(0, 1 - nearest / GROOVE_MM)
  }
}
