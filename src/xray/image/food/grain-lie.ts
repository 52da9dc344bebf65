import type { GrainBody } from './grain-body.ts'
import type { Grain, Vector } from './grain-chords.ts'
import type { GrainShape } from './grain-shapes.ts'
import type { Random } from './random.ts'

/** Directions of a grain's long, middle and short axis. */
export type Axes = readonly [Vector, Vector, Vector]

function unit([x, y, z]: Vector): Vector {
  const length = Math.hypot(x, y, z) || 1
  return [x / length, y / length, z / length]
}

function cross([a, b, c]: Vector, [x, y, z]: Vector): Vector {
  return [b * z - c * y, c * x - a * z, a * y - b * x]
}

/**
 * Three directions for a grain's long, middle and short axis: the short one near the vertical as far as the
 * tilt allows (1: any direction), the long one anywhere around it. The vertical is the beam for a beam from
 * above and the picture's v for a beam from the side.
 */
function directions(tilt: number, beam: 'down' | 'side', random: Random): Axes {
  const up = tilt * random.normal() + (1 - tilt)
  const flat = [random.normal() * tilt, random.normal() * tilt, up] as const
  const short = unit(beam === 'down' ? [flat[0], flat[1], flat[2]] : [flat[0], flat[2], flat[1]])
  const any = unit([random.normal(), random.normal(), random.normal()])
  const long = unit(cross(short, any))
  return [long, cross(short, long), short]
}

/** A body that lies at (u, v) with its axes as given, as the picture draws it. */
export function lyingGrain(
  kind: GrainShape['kind'],
  body: GrainBody,
  u: number,
  v: number,
  axes: Axes,
  { roundEnds = false, form }: Pick<GrainShape, 'roundEnds' | 'form'> = {},
): Grain {
  if (kind === 'ellipsoid')
    return { kind, u, v, halfAxes: body.half, directions: axes, ...(form ? { form } : {}) }
  return { kind, u, v, radius: body.half[1], length: 2 * body.half[0], direction: axes[0], roundEnds }
}

/** Axes of a body of a shape as it fell; a disc's first is the one it is thin along. */
export function fallenAxes(shape: GrainShape, beam: 'down' | 'side', random: Random): Axes {
  const [long, middle, short] = directions(shape.tilt, beam, random)
  const disc = shape.kind === 'bar' && shape.axesMm[0] < shape.axesMm[1]
  return disc ? [short, long, middle] : [long, middle, short]
}

/** Diameter of the sphere with a plate's volume, mm, for a plate of a thickness with the shape's proportions. */
export function plateSphereMm(shape: GrainShape, thicknessMm: number): number {
  const [a, b, c] = shape.axesMm
  const thinnest = Math.min(a, b, c)
  const volume = shape.kind === 'bar' ? 1.5 * a * b * c : a * b * c
  return Math.cbrt(volume) * (thicknessMm / thinnest)
}
