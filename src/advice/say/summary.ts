import type { Ordered, PointHeadline } from '../stages.ts'
import { contaminantWords, wordList } from './words.ts'

function pointWords(headline: PointHeadline): string {
  switch (headline.kind) {
    case 'best-fit':
      return `${headline.option.label} is the best fit: it meets every size you must find, with the least burden.`
    case 'worth-a-test':
      return `no machine can promise every size; ${headline.option.label} is the one worth a test on your product.`
    case 'sizes-open':
      return `${headline.option.label} comes first; set the sizes you must find to get a verdict.`
    case 'closest': {
      const { option, missed, expected } = headline
      const promised = expected > 0 ? `, and ${expected} more can be expected but not promised` : ''
      return `${option.label} comes closest, but ${missed} of ${option.findings.length} contaminants ${missed === 1 ? 'stays' : 'stay'} out of its reach${promised}.`
    }
    case 'no-detector':
      return 'no detector is compared: what removes a share upstream cannot show that a pack is clean.'
    case 'too-small':
      return `no machine compared here takes a pack of this size and finds what is asked. By its sizes ${headline.option.label} would: ask for a build large enough and its sizes there, or look where the food is still in smaller units.`
    case 'none':
      return 'no machine compared here suits this brief.'
  }
}

/** One or two sentences a buyer can repeat: the honest no first, then the fit per point. */
export function summarise({ brief, points, hopeless }: Ordered): string {
  const no =
    hopeless.length > 0
      ? `No machine compared here finds ${wordList(hopeless.map((c) => contaminantWords(brief, c)))} in this product: that needs prevention. `
      : ''
  const sentences = points.map(({ headline }, at) => {
    const text = pointWords(headline)
    return points.length > 1
      ? `At “${brief.points[at]!.name}” ${text}`
      : text.charAt(0).toUpperCase() + text.slice(1)
  })
  return no + sentences.join(' ')
}
