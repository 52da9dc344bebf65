import type { Advice } from '../../../src/contract/advice.ts'
import { grouped } from '../../words/grouped.ts'
import { type Links, type PartName, partLink } from '../links.ts'
import { Opens } from '../parts/opens.tsx'
import { cautionsOf, lawOf } from '../reasons/cautions.tsx'

interface Fold {
  readonly part: PartName
  readonly words: string
  /** What is inside, in a line. */
  readonly inside: string
}

/** What can be opened below: each with what it holds; nothing is listed that would open empty. */
export function foldsOf(advice: Advice, hasDose: boolean): Fold[] {
  const rivals = advice.points.flatMap(({ contrasts }) => contrasts).length
  const enters = advice.combination.stillEnters.length
  const ofPoints = new Set(advice.points.flatMap(({ reasons }) => reasons.map(({ rule }) => rule))).size
  const folds: (Fold | null)[] = [
    ofPoints > 0
      ? { part: 'points', words: 'Whichever machine stands there', inside: `${ofPoints} rules of the points` }
      : null,
    rivals > 0
      ? {
          part: 'rivals',
          words: 'Compare two machines',
          inside: `${rivals} pairs, one line each`,
        }
      : null,
    advice.prevention.length > 0
      ? {
          part: 'prevent',
          words: 'Kept out before',
          inside: `${advice.prevention.length} that no machine here finds at the size asked`,
        }
      : null,
    {
      part: 'enters',
      words: 'What can still enter behind each point',
      inside: enters === 1 ? 'the point' : `${enters} points, and whether misses multiply`,
    },
    advice.missing.length > 0
      ? {
          part: 'missing',
          words: 'What to find out',
          inside: `${advice.missing.length} values not given, by how much they matter`,
        }
      : null,
    advice.quotes.length > 0
      ? { part: 'quotes', words: 'Sizes quoted to you', inside: `${advice.quotes.length} claims judged` }
      : null,
    {
      part: 'cautions',
      words: `Cautions (${cautionsOf(advice).length})`,
      inside: 'before anybody acts on this',
    },
    lawOf(advice).length > 0
      ? {
          part: 'law',
          words: `Law, guidance and standards (${lawOf(advice).length})`,
          inside: 'what the market and its schemes ask',
        }
      : null,
    {
      part: 'assumed',
      words: `Assumed (${advice.assumed.length})`,
      inside: advice.assumed.length === 0 ? 'nothing' : 'each with its range and why',
    },
    hasDose
      ? { part: 'dose', words: 'Tube and dose', inside: 'x-raying is not irradiating: what one pass leaves' }
      : null,
    {
      part: 'sources',
      words: `Sources (${advice.trace.sources.length})`,
      inside: sourceKinds(advice),
    },
  ]
  return folds.filter((fold) => fold !== null)
}

function sourceKinds(advice: Advice): string {
  const rules = new Set(advice.trace.rules.filter(({ outcome }) => outcome === 'fired').map(({ id }) => id))
    .size
  return `of ${advice.trace.calculations.length} calculations and ${rules} rules that apply`
}

/** What can be opened, a line each. */
export function Folds({ advice, links, hasDose }: { advice: Advice; links: Links; hasDose: boolean }) {
  return (
    <section aria-labelledby="more">
      <h2 id="more">More</h2>
      {foldsOf(advice, hasDose).map(({ part, words, inside }) => (
        <Opens id={`fold-${part}`} href={partLink(links, part)} words={words} inside={inside} />
      ))}
    </section>
  )
}

/** The contents of the page, in view on wide screens. */
export function Contents({ advice }: { advice: Advice }) {
  const upstream = grouped(
    advice.points.flatMap(({ removals }) => removals),
    ({ equipment }) => equipment,
  ).size
  return (
    <nav class="below" aria-label="On this page">
      <b>Below:</b>
      <a href="#sizes">Sizes by machine</a>
      <a href="#machines">Machines, ranked</a>
      {upstream > 0 ? <a href="#upstream">Upstream removal</a> : null}
      <a href="#changes">What would change it</a>
      <a href="#more">Cautions, assumptions, sources</a>
    </nav>
  )
}
