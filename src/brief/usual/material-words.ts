import type { BriefInput } from '../../contract/index.ts'

/** Words people use for a contaminant, and the listed material each stands for. */
const WORDS: Readonly<Record<string, string>> = {
  stone: 'stone_any',
  glass: 'glass_any',
  bone: 'bone_any',
  rubber: 'rubber_any',
  stainless: 'stainless_any',
  metal: 'stainless_any',
  plastic: 'pp',
}

/** Words that name no kind, and why the material was taken that stands for them. */
export const TAKEN_FOR: Readonly<Record<string, string>> = {
  metal:
    'metal names no kind: of common metals stainless steel is the one a metal detector finds worst; name aluminium where it can occur, x-rays find that worst',
  plastic: 'plastic names no kind: polypropylene is the lightest of the usual ones, and found worst',
}

/** The word behind such a reason; undefined where the reason is another's. */
export const wordTaken = (because: string): string | undefined =>
  Object.keys(TAKEN_FOR).find((word) => TAKEN_FOR[word] === because)

export const materialOf = (word: string): string => WORDS[word.trim().toLowerCase()] ?? word

/** A brief in which such words are the ids of their materials. */
export const withMaterialIds = (given: BriefInput): BriefInput => ({
  ...given,
  contaminants: given.contaminants.map((one) => ({ ...one, material: materialOf(one.material) })),
  ...(given.quotes
    ? { quotes: given.quotes.map((one) => ({ ...one, material: materialOf(one.material) })) }
    : {}),
})
