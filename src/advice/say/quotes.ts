import type { Advice } from '../../contract/index.ts'
import type { LineOutcome, Quoted } from '../stages.ts'
import { joined, saidOf } from './said.ts'

/** A quote in the words of the rules: how it was judged, and what to ask the one who quoted. */
export function quoteWords(
  { index, judgement }: Pick<Quoted, 'index' | 'judgement'>,
  said: readonly LineOutcome[],
): Advice['quotes'][number] {
  const asked = said.filter(({ type }) => type === 'asks')
  return {
    quote: index,
    judgement,
    text: joined(said.filter(({ type }) => type === 'judges')),
    questions: asked.map(({ text }) => text),
    grounds: said.map(saidOf),
  }
}
