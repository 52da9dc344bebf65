/** Where a zone lies in the drawing of its container, and where a line to its name begins. */
export interface ZoneShape {
  /** One closed path, both sides of the container in it. */
  readonly d: string
  readonly at: readonly [x: number, y: number]
}

export type Container = 'jar' | 'can' | 'tray'

export interface ContainerShape {
  /** The whole of it, drawn as a line. */
  readonly outline: string
  readonly zones: Readonly<Record<string, ZoneShape>>
}

/** Middle of the drawing; what stands on the right stands mirrored on the left. */
const MIDDLE = 120

type Corner = readonly [x: number, y: number]

const path = (corners: readonly Corner[]) => `M${corners.map(([x, y]) => `${x} ${y}`).join('L')}Z`
const both = (...right: (readonly Corner[])[]) =>
  right
    .flatMap((corners) => [corners, corners.map(([x, y]): Corner => [2 * MIDDLE - x, y])])
    .map(path)
    .join('')
const box = (x0: number, y0: number, x1: number, y1: number): Corner[] => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
]
const across = (y0: number, y1: number, half: number) => path(box(MIDDLE - half, y0, MIDDLE + half, y1))
/** A closed line through the right half and its mirror image. */
const around = (right: readonly Corner[]) =>
  path([...right, ...[...right].reverse().map(([x, y]): Corner => [2 * MIDDLE - x, y])])

/** Drawn for words, not to scale: walls are far too thick, so that a pattern can be seen in them. */
export const CONTAINERS: Readonly<Record<Container, ContainerShape>> = {
  jar: {
    outline: around([
      [MIDDLE, 44],
      [160, 44],
      [160, 54],
      [190, 92],
      [190, 216],
      [MIDDLE, 216],
    ]),
    zones: {
      body: {
        d: around([
          [MIDDLE, 50],
          [150, 50],
          [150, 58],
          [160, 96],
          [160, 186],
          [150, 196],
          [MIDDLE, 190],
        ]),
        at: [MIDDLE, 130],
      },
      'wall edge': { d: both(box(162, 98, 178, 188)), at: [170, 140] },
      shoulder: {
        d: both([
          [151, 52],
          [160, 54],
          [190, 92],
          [179, 94],
        ]),
        at: [175, 73],
      },
      heel: {
        d: both([
          [179, 190],
          [190, 190],
          [190, 216],
          [164, 216],
          [164, 204],
          [174, 202],
        ]),
        at: [184, 206],
      },
      base: {
        d: around([
          [MIDDLE, 194],
          [146, 200],
          [162, 204],
          [162, 216],
          [146, 212],
          [MIDDLE, 206],
        ]),
        at: [152, 208],
      },
      closure: { d: across(26, 43, 42), at: [150, 34] },
    },
  },
  can: {
    outline: path(box(50, 30, 190, 216)),
    zones: {
      body: { d: path(box(74, 52, 166, 194)), at: [MIDDLE, 130] },
      'wall edge': { d: both(box(168, 56, 182, 190)), at: [175, 140] },
      seam: { d: both(box(182, 24, 196, 46), box(182, 200, 196, 222)), at: [189, 36] },
      closure: { d: across(36, 44, 45), at: [150, 40] },
      base: { d: across(202, 210, 45), at: [150, 206] },
    },
  },
  tray: {
    outline: around([
      [MIDDLE, 196],
      [180, 196],
      [210, 84],
      [222, 84],
      [222, 90],
    ]),
    zones: {
      body: {
        d: around([
          [MIDDLE, 112],
          [186, 112],
          [166, 188],
          [MIDDLE, 188],
        ]),
        at: [MIDDLE, 150],
      },
      corner: {
        d: both([
          [168, 188],
          [171, 178],
          [184, 178],
          [180, 196],
          [166, 196],
        ]),
        at: [178, 188],
      },
      rim: {
        d: both([
          [189, 108],
          [197, 80],
          [224, 80],
          [224, 92],
          [208, 92],
          [203, 108],
        ]),
        at: [212, 88],
      },
    },
  },
}

/** The container whose zones these are; null where they are of none that is drawn. */
export function containerOf(names: readonly string[]): Container | null {
  const kinds = Object.keys(CONTAINERS) as Container[]
  const own: Readonly<Record<Container, readonly string[]>> = {
    jar: ['heel'],
    can: ['seam'],
    tray: ['rim'],
  }
  return (
    kinds.find(
      (kind) =>
        own[kind].some((name) => names.includes(name)) &&
        names.every((name) => name in CONTAINERS[kind].zones),
    ) ?? null
  )
}
