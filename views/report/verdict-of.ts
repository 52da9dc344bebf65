import { VERDICT_WORDS } from '../words/verdict.ts'

export const verdictWords = (verdict: keyof typeof VERDICT_WORDS): string => VERDICT_WORDS[verdict].words
