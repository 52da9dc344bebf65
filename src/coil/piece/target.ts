import { type Complex, scale } from '../../numerics/complex.ts'
import { flakeFaceOn, flakeInPlane } from './flake.ts'
import { shortFerrousWireAlong } from './short-ferrous-wire.ts'
import type { Conductor } from './skin-argument.ts'
import { spherePolarizability } from './sphere.ts'
import { wireAcrossFieldPerM, wireAlongFieldPerM } from './wire.ts'

/** A piece of metal but for its size: a sphere's diameter, a wire's diameter, a flake's thickness. */
export type TargetShape =
  | { readonly kind: 'sphere' }
  | { readonly kind: 'wire'; readonly lengthMm: number }
  | { readonly kind: 'flake'; readonly faceMm2: number }

/**
 * How the piece lies to the travel, which is the direction of the field: a wire along it or across it; a
 * flake with its plane along it (lying flat) or across it (face to the travel). A sphere has no direction.
 */
export type Orientation = 'along' | 'across'

export const ORIENTATIONS: readonly Orientation[] = ['along', 'across']

export interface TargetMetal extends Conductor {
  /** Ferromagnetic: magnetisation dominates, so a wire's demagnetisation counts. */
  readonly ferromagnetic: boolean
}

/** Polarizability of a piece of the given size (mm), m³. */
export function targetPolarizability(
  shape: TargetShape,
  sizeMm: number,
  orientation: Orientation,
  metal: TargetMetal,
  frequencyHz: number,
): Complex {
  const halfM = sizeMm / 2000
  switch (shape.kind) {
    case 'sphere':
      return spherePolarizability(halfM, metal, frequencyHz)
    case 'wire': {
      const lengthM = shape.lengthMm / 1000
      if (orientation === 'across') return scale(wireAcrossFieldPerM(halfM, metal, frequencyHz), lengthM)
      return metal.ferromagnetic
        ? shortFerrousWireAlong(halfM, lengthM, metal, frequencyHz)
        : scale(wireAlongFieldPerM(halfM, metal, frequencyHz), lengthM)
    }
    case 'flake': {
      const faceM2 = shape.faceMm2 / 1e6
      return orientation === 'along'
        ? flakeInPlane(faceM2, sizeMm / 1000, metal, frequencyHz)
        : flakeFaceOn(faceM2, sizeMm / 1000, metal, frequencyHz)
    }
  }
}

/** Largest size at which the piece is still of its shape, mm: a wire as thick as long, a flake half as thick as wide. */
export function shapeLimitMm(shape: TargetShape): number {
  switch (shape.kind) {
    case 'sphere':
      return Number.POSITIVE_INFINITY
    case 'wire':
      return shape.lengthMm
    case 'flake':
      return Math.sqrt(shape.faceMm2 / Math.PI)
  }
}
