import type { FieldOpening } from './noise.ts'

type Vector = readonly [x: number, y: number, z: number]

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]]
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
]

/**
 * Field per ampere of a straight piece of wire from a to b at a place, 1/m (Biot–Savart, exact):
 * (r1 × r2)(|r1| + |r2|) / (4π·|r1||r2|·(|r1||r2| + r1·r2)).
 */
function segmentField(a: Vector, b: Vector, place: Vector): Vector {
  const r1 = minus(place, a)
  const r2 = minus(place, b)
  const l1 = Math.sqrt(dot(r1, r1))
  const l2 = Math.sqrt(dot(r2, r2))
  const factor = (l1 + l2) / (4 * Math.PI * l1 * l2 * (l1 * l2 + dot(r1, r2)))
  const [x, y, z] = cross(r1, r2)
  return [x * factor, y * factor, z * factor]
}

/** Field per ampere of a rectangular loop w × h in the plane z = 0 at any place off its wire, 1/m. */
export function loopFieldAt(widthM: number, heightM: number, place: Vector): Vector {
  const w = widthM / 2
  const h = heightM / 2
  const corners: readonly Vector[] = [
    [-w, -h, 0],
    [w, -h, 0],
    [w, h, 0],
    [-w, h, 0],
  ]
  const total: [number, number, number] = [0, 0, 0]
  corners.forEach((corner, k) => {
    const [x, y, z] = segmentField(corner, corners[(k + 1) % 4]!, place)
    total[0] += x
    total[1] += y
    total[2] += z
  })
  return total
}

/** Receivers stand this share of the opening's height before and behind the transmitter (model). */
const SPACING = 0.4
/** How far along the travel the strongest place is looked for, in heights, and in how many steps. */
const REACH = 1.5
const STEPS = 60

/** Largest coupling a small ball meets on its way through at a place of the opening, 1/m². */
function strongest({ widthM, heightM }: FieldOpening, xM: number, yM: number): number {
  const s = SPACING * heightM
  let most = 0
  for (let k = 1; k <= STEPS; k++) {
    const z = (REACH * heightM * k) / STEPS
    const field = (along: number) => loopFieldAt(widthM, heightM, [xM, yM, along])
    const difference = minus(field(z - s), field(z + s))
    most = Math.max(most, Math.abs(dot(field(z), difference)))
  }
  return most
}

/** A place in the opening and how strongly a ball is heard there, the centre being 1. */
export interface OpeningPlace {
  /** −0.5 to 0.5: share of the width from the centre, and of the height. */
  readonly across: number
  readonly up: number
  readonly relative: number
}

/**
 * Relative response of a small ball over the section of the opening: peak of h_tx·(h_rx(z − s) − h_rx(z + s))
 * along the travel, by reciprocity, over its value at the centre. Three rectangular loops, receivers 0.4
 * heights away; no case, no shield. Places on a grid that keeps off the wire.
 */
export function openingMap(
  opening: FieldOpening,
  across: readonly number[],
  up: readonly number[],
): OpeningPlace[] {
  const centre = strongest(opening, 0, 0)
  return up.flatMap((y) =>
    across.map((x) => ({
      across: x,
      up: y,
      relative: strongest(opening, Math.abs(x) * opening.widthM, Math.abs(y) * opening.heightM) / centre,
    })),
  )
}
