import type { BriefInput } from '../../contract/index.ts'

/** Words people use for a contaminant, and the listed material each stands for. */
const WORDS: ReadonlyMap<string, string> = new Map(
  Object.entries({
    stone: 'stone_any',
    glass: 'glass_any',
    bone: 'bone_any',
    rubber: 'rubber_any',
    stainless: 'stainless_any',
    metal: 'stainless_any',
    plastic: 'pp',
  }),
)

/** Words that name no kind, and why the material was taken that stands for them. */
const TAKEN_FOR: ReadonlyMap<string, string> = new Map(
  Object.entries({
    metal:
      'metal names no kind: of common metals stainless steel is the one a metal detector finds worst; name aluminium where it can occur, x-rays find that worst',
    plastic: 'plastic names no kind: polypropylene is the lightest of the usual ones, and found worst',
  }),
)

/** The word behind such a reason; undefined where the reason is another's. */
export const wordTaken = (because: string): string | undefined =>
  [...TAKEN_FOR].find(([, reason]) => reason === because)?.[0]

const bare = (word: string) => word.trim().toLowerCase()

export const materialOf = (word: string): string => WORDS.get(bare(word)) ?? word

/** Why a material was taken for a word that names no kind; undefined where the word names one. */
export const takenBecause = (word: string): string | undefined => TAKEN_FOR.get(bare(word))

/** A brief in which such words are the ids of their materials. */
export const withMaterialIds = (given: BriefInput): BriefInput => ({
  ...given,
  contaminants: given.contaminants.map((one) => ({ ...one, material: materialOf(one.material) })),
  ...(given.quotes
    ? { quotes: given.quotes.map((one) => ({ ...one, material: materialOf(one.material) })) }
    : {}),
})
