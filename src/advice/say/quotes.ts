import type { Advice, Brief, Contaminant, Finding, Option, Quote } from '../../contract/index.ts'
import { questionsOf } from './quote-questions.ts'
import { mm } from './words.ts'

/** The finding of a quoted piece, if the brief asks for the same material and shape. */
function matching(brief: Brief, options: readonly Option[], quote: Quote) {
  const same = (c: Contaminant) =>
    c.material === quote.material &&
    c.shape === (quote.shape ?? 'sphere') &&
    (quote.lengthMm === undefined || c.lengthMm === quote.lengthMm) &&
    (quote.faceMm2 === undefined || c.faceMm2 === quote.faceMm2)
  const index = brief.contaminants.findIndex(same)
  const option = options.find((o) => o.equipment === quote.equipment)
  return option?.findings.find((f) => f.contaminant === index) ?? null
}

type Judged = Pick<Advice['quotes'][number], 'judgement' | 'text'>

const OBTAINED_WORDS = {
  'in-product': 'in the product',
  empty: 'with an empty machine',
  unknown: 'in a way not stated',
} as const

function judge(finding: Finding | null, quote: Quote): Judged {
  if (!finding) {
    return {
      judgement: 'cannot-tell',
      text: `Nothing to compare with: add the machine ${quote.equipment} and a contaminant ${quote.material} ${quote.shape ?? 'sphere'} to the brief.`,
    }
  }
  const { bestMm, cautiousMm } = finding
  if (bestMm === null) {
    return {
      judgement: 'better-than-possible',
      text: `Quoted ${quote.sizeMm} mm; by the physics this machine finds no size of it in this product.`,
    }
  }
  const obtained = quote.obtained ?? 'unknown'
  const lowest = finding.bestRangeMm?.[0] ?? bestMm
  if (quote.sizeMm < lowest) {
    return {
      judgement: 'better-than-possible',
      text: `Quoted ${quote.sizeMm} mm, obtained ${OBTAINED_WORDS[obtained]}; the best possible in this product is ${mm(bestMm)}${lowest < bestMm ? `, and not below ${mm(lowest)} with less of it in the beam` : ''}.`,
    }
  }
  if (obtained !== 'in-product') {
    return {
      judgement: 'cannot-tell',
      text: `Quoted ${quote.sizeMm} mm, obtained ${OBTAINED_WORDS[obtained]}: that says little of your product, where ${mm(bestMm)} is the best possible${cautiousMm === null ? '' : ` and ${mm(cautiousMm)} can be promised`}.`,
    }
  }
  if (cautiousMm !== null && quote.sizeMm > cautiousMm) {
    return {
      judgement: 'loose',
      text: `Quoted ${quote.sizeMm} mm; ${mm(cautiousMm)} can be promised. There is room to ask for less.`,
    }
  }
  if (quote.sizeMm < bestMm) {
    return {
      judgement: 'inside',
      text: `Quoted ${quote.sizeMm} mm is about the best possible here (${mm(bestMm)}, ${mm(lowest)} with less of it in the beam)${cautiousMm === null ? '; nothing can be promised' : `; ${mm(cautiousMm)} can be promised`}.`,
    }
  }
  return {
    judgement: 'inside',
    text: `Quoted ${quote.sizeMm} mm lies between the best possible ${mm(bestMm)} and what can be promised${cautiousMm === null ? '' : ` (${mm(cautiousMm)})`}.`,
  }
}

/** Each quote held against the computed sizes of the last inspection point that has its machine. */
export function judgeQuotes(
  brief: Brief,
  points: readonly { readonly options: readonly Option[] }[],
): Advice['quotes'] {
  return brief.quotes.map((quote, index) => {
    const at = [...points]
      .reverse()
      .find(({ options }) => options.some((o) => o.equipment === quote.equipment))
    const finding = matching(brief, at?.options ?? [], quote)
    const judged = judge(finding, quote)
    return {
      quote: index,
      ...judged,
      questions: finding ? questionsOf(quote, judged.judgement, finding.mustFindMm) : [],
    }
  })
}
