import type { Kind } from '../../src/store/kept.ts'

/** What each kind of kept thing is called, one and many. */
export const KIND_WORDS: Readonly<Record<Kind, { readonly one: string; readonly many: string }>> = {
  brief: { one: 'brief', many: 'Briefs' },
  advice: { one: 'advice', many: 'Advice' },
  runs: { one: 'test runs', many: 'Test runs' },
  own: { one: 'machines and materials', many: 'Own machines and materials' },
}
