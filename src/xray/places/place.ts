import type { CrossedPart, PackInBeam } from '../detector/channels.ts'

/** Where in the pack a place is, for what sinks and what floats. */
export type Level = 'middle' | 'bottom' | 'top' | 'beside'

/** A place of the pack with what a beam crosses there. */
export interface PackPlace {
  readonly name: string
  readonly level: Level
  /** Share of the inside; null where geometry does not give it. */
  readonly share: number | null
  /** Container material in the beam there, mm; null where it cannot be worked out. */
  readonly pathMm: number | null
  /** The pack as the beam meets it there; null where the container closes it off. */
  readonly pack: PackInBeam | null
  readonly why: string
}

/** Container material in the beam, mm. */
export const containerMm = (parts: readonly CrossedPart[]): number =>
  parts.reduce((sum, part) => sum + part.mm * part.crossings, 0)

/** A place whose ray the model follows: what it crosses of the container, and how much food. */
export function seenPlace(
  name: string,
  level: Level,
  share: number | null,
  pack: PackInBeam,
  why: string,
): PackPlace {
  return { name, level, share, pathMm: containerMm(pack.parts), pack, why }
}

/** A place that the container hides. */
export function hiddenPlace(
  name: string,
  level: Level,
  share: number | null,
  pathMm: number | null,
  why: string,
): PackPlace {
  return { name, level, share, pathMm, pack: null, why }
}

/** A pack whose ray runs at a slant: everything in it crossed that many times as long. */
export const slanted = (pack: PackInBeam, slant: number): PackInBeam => ({
  ...pack,
  pathMm: pack.pathMm * slant,
  parts: pack.parts.map((part) => ({
    ...part,
    mm: part.mm * slant,
    unevennessMm: part.unevennessMm * slant,
  })),
})

/** A pack whose ray meets no food: what lies there displaces none, and no grain stands in front of it. */
export const withoutFood = (pack: PackInBeam, parts: readonly CrossedPart[]): PackInBeam => ({
  ...pack,
  packing: 0,
  grainMm: 0,
  unevennessMm: 0,
  parts,
})
