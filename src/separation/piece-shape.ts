import type { Contaminant } from '../contract/index.ts'
import { figures } from '../reference/separation.ts'

/** Outline of a piece, mm. A flake is a square plate of the stated face. */
export type PieceShape =
  | { readonly kind: 'sphere'; readonly diameterMm: number }
  | { readonly kind: 'wire'; readonly diameterMm: number; readonly lengthMm: number }
  | { readonly kind: 'flake'; readonly thicknessMm: number; readonly faceMm2: number }

function shapeAt(contaminant: Contaminant, sizeMm: number): PieceShape {
  switch (contaminant.shape) {
    case 'sphere':
      return { kind: 'sphere', diameterMm: sizeMm }
    case 'wire': {
      const lengthMm = contaminant.lengthMm ?? figures['unsized-wire-length'].value
      return { kind: 'wire', diameterMm: sizeMm, lengthMm }
    }
    case 'flake': {
      const faceMm2 = contaminant.faceMm2 ?? figures['unsized-flake-face'].value
      return { kind: 'flake', thicknessMm: sizeMm, faceMm2 }
    }
  }
}

/**
 * The outlines a contaminant stands for: at its size to find, or, where the brief gives none, at both ends of
 * the range of figure `unsized-piece`. A missing length or face is the listed stand-in.
 */
export function shapesOf(contaminant: Contaminant): readonly PieceShape[] {
  const sizes =
    contaminant.mustFindMm === null ? [...figures['unsized-piece'].range] : [contaminant.mustFindMm]
  return sizes.map((sizeMm) => shapeAt(contaminant, sizeMm))
}

/** Volume, mm³. */
export function volumeMm3(shape: PieceShape): number {
  switch (shape.kind) {
    case 'sphere':
      return (Math.PI / 6) * shape.diameterMm ** 3
    case 'wire':
      return (Math.PI / 4) * shape.diameterMm ** 2 * shape.lengthMm
    case 'flake':
      return shape.faceMm2 * shape.thicknessMm
  }
}

function surfaceMm2(shape: PieceShape): number {
  switch (shape.kind) {
    case 'sphere':
      return Math.PI * shape.diameterMm ** 2
    case 'wire':
      return Math.PI * shape.diameterMm * (shape.lengthMm + shape.diameterMm / 2)
    case 'flake':
      return 2 * shape.faceMm2 + 4 * Math.sqrt(shape.faceMm2) * shape.thicknessMm
  }
}

/** Diameter of the sphere of the same volume, mm: (6V/π)^⅓. */
export const equivalentDiameterMm = (shape: PieceShape): number => Math.cbrt((6 * volumeMm3(shape)) / Math.PI)

/** Surface of the sphere of the same volume over the surface of the piece (Wadell's sphericity), 0 to 1. */
export const sphericityOf = (shape: PieceShape): number =>
  (Math.PI * equivalentDiameterMm(shape) ** 2) / surfaceMm2(shape)

/**
 * The second-smallest dimension, mm, which decides at a square opening: of a sphere its diameter, of a wire
 * its diameter, of a flake the side of its face (square root of the face; the thickness where that is more).
 */
export function secondSmallestMm(shape: PieceShape): number {
  switch (shape.kind) {
    case 'sphere':
    case 'wire':
      return shape.diameterMm
    case 'flake':
      return Math.sqrt(shape.faceMm2)
  }
}

/** What a camera above sees across its narrow side, mm: a flake lies flat. */
export const visibleWidthMm = secondSmallestMm

/** The shape in words, with its sizes. */
export function shapeWords(shape: PieceShape): string {
  const at = (value: number) => Number(value.toPrecision(3))
  switch (shape.kind) {
    case 'sphere':
      return `sphere ${at(shape.diameterMm)} mm`
    case 'wire':
      return `wire ${at(shape.diameterMm)} × ${at(shape.lengthMm)} mm`
    case 'flake':
      return `flake ${at(shape.thicknessMm)} mm, face ${at(shape.faceMm2)} mm²`
  }
}
