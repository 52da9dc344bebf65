import type { Grain, Vector } from './grain-chords.ts'
import type { GrainShape } from './grain-shapes.ts'
import type { Random } from './random.ts'

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
function directions(tilt: number, beam: 'down' | 'side', random: Random): [Vector, Vector, Vector] {
  const up = tilt * random.normal() + (1 - tilt)
  const flat = [random.normal() * tilt, random.normal() * tilt, up] as const
  const short = unit(beam === 'down' ? [flat[0], flat[1], flat[2]] : [flat[0], flat[2], flat[1]])
  const any = unit([random.normal(), random.normal(), random.normal()])
  const long = unit(cross(short, any))
  return [long, cross(short, long), short]
}

/** A grain of a shape with the volume of a sphere of the given radius (mm), centred at (u, v), lying as it fell. */
export function layGrain(
  shape: GrainShape,
  radiusMm: number,
  u: number,
  v: number,
  beam: 'down' | 'side',
  random: Random,
): Grain {
  const [long, middle, short] = directions(shape.tilt, beam, random)
  const [a, b, c] = shape.axesMm
  if (shape.kind === 'ellipsoid') {
    const scale = radiusMm / Math.cbrt(a * b * c)
    return {
      kind: 'ellipsoid',
      u,
      v,
      halfAxes: [a * scale, b * scale, c * scale],
      directions: [long, middle, short],
    }
  }
  const scale = (2 * radiusMm) / Math.cbrt(1.5 * a * b * c)
  const direction = a > b ? long : short
  return { kind: 'bar', u, v, radius: (b * scale) / 2, length: a * scale, direction }
}

/** Diameter of the sphere with a plate's volume, mm, for a plate of a thickness with the shape's proportions. */
export function plateSphereMm(shape: GrainShape, thicknessMm: number): number {
  const [a, b, c] = shape.axesMm
  const thinnest = Math.min(a, b, c)
  const volume = shape.kind === 'bar' ? 1.5 * a * b * c : a * b * c
  return Math.cbrt(volume) * (thicknessMm / thinnest)
}
