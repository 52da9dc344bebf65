import type { Vector } from './grain-chords.ts'
import type { GrainShape } from './grain-shapes.ts'

/** A grain as a body of several balls, in its own axes (long, middle, short), mm. */
export interface GrainBody {
  readonly at: readonly Vector[]
  readonly radiusMm: readonly number[]
  /** Half axes of the whole (ellipsoid), or half length and radius twice (bar), mm. */
  readonly half: Vector
  /** Mean square distance of its matter from its middle, mm²: how hard it is to turn. */
  readonly gyrationMm2: number
}

/** Most balls of a body: a large flake is a sieve of them. */
const MOST_BALLS = 36

/**
 * The balls of a grain of a shape with the volume of a ball of a radius (mm). Those of an ellipsoid sit on its
 * medial ellipse, where the ball about (x, y) that touches its skin has the radius c√(1 − x²/(a²−c²) − y²/(b²−c²));
 * those of a rod stand along its axis, those of a disc on rings.
 */
export function grainBody(shape: GrainShape, radiusMm: number): GrainBody {
  const [long, middle, short] = shape.axesMm
  if (shape.kind === 'ellipsoid') {
    const scale = radiusMm / Math.cbrt(long * middle * short)
    return ellipsoidBody([long * scale, middle * scale, short * scale])
  }
  const scale = (2 * radiusMm) / Math.cbrt(1.5 * long * middle * short)
  const halfLength = (long * scale) / 2
  const radius = (middle * scale) / 2
  return halfLength >= radius ? rodBody(halfLength, radius) : discBody(halfLength, radius)
}

function ellipsoidBody(half: Vector): GrainBody {
  const [a, b, c] = half
  const at: Vector[] = [[0, 0, 0]]
  const radii = [c]
  const [u, v] = [Math.sqrt(Math.max(0, a * a - c * c)), Math.sqrt(Math.max(0, b * b - c * c))]
  const rings = u < 0.1 * c ? 0 : Math.min(3, Math.ceil(u / (1.1 * c)))
  for (let ring = 1; ring <= rings; ring++) {
    const share = (0.92 * ring) / rings
    const around = v < 0.5 * c ? 2 : 4 + 2 * ring
    for (let k = 0; k < around; k++) {
      const angle = (2 * Math.PI * k) / around
      at.push([share * u * Math.cos(angle), share * v * Math.sin(angle), 0])
      radii.push(c * Math.sqrt(1 - share * share))
    }
  }
  return { at, radiusMm: radii, half, gyrationMm2: (a * a + b * b + c * c) / 5 }
}

function rodBody(halfLength: number, radius: number): GrainBody {
  const reach = halfLength - radius
  const n = Math.min(MOST_BALLS, 1 + Math.ceil((2 * reach) / (0.9 * radius)))
  const at = Array.from(
    { length: n },
    (_, k): Vector => [n === 1 ? 0 : -reach + (2 * reach * k) / (n - 1), 0, 0],
  )
  return {
    at,
    radiusMm: at.map(() => radius),
    half: [halfLength, radius, radius],
    gyrationMm2: (halfLength * halfLength) / 3 + (radius * radius) / 2,
  }
}

function discBody(halfThickness: number, radius: number): GrainBody {
  const reach = radius - halfThickness
  const at: Vector[] = [[0, 0, 0]]
  const rings = Math.max(1, Math.min(3, Math.ceil(reach / (1.6 * halfThickness))))
  for (let ring = 1; ring <= rings; ring++) {
    const r = (reach * ring) / rings
    const around = Math.min(6 * ring, Math.max(6, Math.ceil((2 * Math.PI * r) / (1.6 * halfThickness))))
    for (let k = 0; k < around; k++) {
      const angle = (2 * Math.PI * (k + ring / 2)) / around
      at.push([0, r * Math.cos(angle), r * Math.sin(angle)])
    }
  }
  return {
    at,
    radiusMm: at.map(() => halfThickness),
    half: [halfThickness, radius, radius],
    gyrationMm2: (halfThickness * halfThickness) / 3 + (radius * radius) / 2,
  }
}
