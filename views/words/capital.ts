/** The same words with a capital at the start, for the beginning of a sentence. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1)

/** The same words within a sentence: abbreviations, names of countries and of units keep their capital. */
export const midSentence = (words: string): string =>
  /^(?:\p{Lu}[\p{Lu}\d]|(?:Great|Northern|United|American|European|Codex)\b)/u.test(words)
    ? words
    : words.charAt(0).toLowerCase() + words.slice(1)
