import type { Advice, Quote } from '../../contract/index.ts'
import { runsToDemonstrate } from '../../numerics/binomial.ts'

/** What a quoted size should be shown with: nine in ten, at the usual confidence, none missed. */
const SHOWN = { chance: 0.9, confidence: 0.95 } as const

const shapeWords = ({ shape = 'sphere', lengthMm, faceMm2 }: Quote) =>
  shape === 'wire'
    ? `wire of ${lengthMm ?? '…'} mm, in both orientations`
    : shape === 'flake'
      ? `flake of ${faceMm2 ?? '…'} mm², flat and on edge`
      : 'sphere'

/** What to ask the one who quoted, by what the quote leaves open and how it was judged. */
export function questionsOf(
  quote: Quote,
  judgement: Advice['quotes'][number]['judgement'],
  mustFindMm: number | null,
): string[] {
  const runs = runsToDemonstrate(SHOWN, 0)
  const asked: (string | false)[] = [
    (quote.obtained ?? 'unknown') !== 'in-product' &&
      `Will you show ${quote.sizeMm} mm in our product, packed as we pack it, at our line speed and temperature?`,
    !quote.position &&
      `Where in the pack or opening was the ${shapeWords(quote)} placed, and was that the worst place?`,
    quote.runs === undefined || quote.runs < runs
      ? `How many runs in fresh packs, and how many found? ${runs} of ${runs} shows 9 in 10 with 95 % confidence; fewer shows less.`
      : false,
    quote.falseRejectsPerPack === undefined &&
      'How many good packs were rejected, out of how many, at the same setting?',
    judgement === 'better-than-possible' &&
      'By the physics no machine of this build does better than the best possible given here. What differs: another product, a thinner pack, another setting, a different piece?',
    judgement === 'loose' && 'Which smaller size will you put into the acceptance clause?',
    mustFindMm !== null &&
      quote.sizeMm > mustFindMm &&
      `We must find ${mustFindMm} mm. What in the machine or on the line would have to change?`,
  ]
  return asked.filter((question) => question !== false)
}
