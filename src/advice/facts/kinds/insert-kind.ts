/** What an insert of the pack is to a magnetic field, as far as its name tells. */
export const INSERT_KINDS = ['iron', 'metal', 'no metal', 'unknown'] as const
export type InsertKind = (typeof INSERT_KINDS)[number]

/** Asked in this order; the first that matches counts. The project's own list of words. */
const WORDS: readonly (readonly [InsertKind, RegExp])[] = [
  ['no metal', /\b(metal|iron)[- ]?free\b|\bnon[- ]?metal|\bwithout (metal|iron)\b/i],
  ['iron', /\b(oxygen|o2)[- ]?(absorber|scavenger)|\b(iron|steel|staple|magnet|wire)/i],
  ['no metal', /\b(plastic|paper|card|cardboard|wooden|cotton|silicone|nylon|polymer|pe|pp|pet)\b/i],
  ['metal', /\b(metal|alumini?um|brass|copper|foil|clip|ring|crown)/i],
  ['no metal', /\b(desiccant|silica|leaflet|label|straw|pad|napkin)\b/i],
]

/**
 * Kind of an insert by its name: "clip" is metal, "plastic-clip" is not, an oxygen absorber is iron powder,
 * "spoon" may be either and is unknown.
 */
export const insertKind = (name: string): InsertKind =>
  WORDS.find(([, words]) => words.test(name))?.[0] ?? 'unknown'
