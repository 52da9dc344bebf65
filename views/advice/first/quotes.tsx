import type { Advice } from '../../../src/contract/advice.ts'
import type { Names } from '../../words/contaminant.ts'
import { WhyLinks } from '../reasons/why-links.tsx'

const JUDGEMENT_WORDS = {
  'better-than-possible': 'better than possible',
  inside: 'inside what is computed',
  loose: 'loose',
  'cannot-tell': 'cannot tell',
} as const

/** Quoted sizes held against the computed ones. */
export function Quotes({ advice, names, packed }: { advice: Advice; names: Names; packed: string | null }) {
  if (advice.quotes.length === 0) return null
  return (
    <section aria-labelledby="quotes">
      <h2 id="quotes">Sizes quoted to you</h2>
      <dl class="uses">
        {advice.quotes.map((one) => {
          const quote = advice.brief.quotes?.[one.quote]
          return (
            <>
              <dt>
                {quote ? `${names.get(quote.material) ?? quote.material} ${quote.sizeMm} mm: ` : ''}
                {JUDGEMENT_WORDS[one.judgement]}
              </dt>
              <dd>
                {one.text}
                <WhyLinks
                  grounds={one.grounds.filter(({ text }) => !one.questions.includes(text))}
                  packed={packed}
                />
                {one.questions.length > 0 ? (
                  <>
                    <p>Ask the supplier:</p>
                    <ul>
                      {one.questions.map((question) => (
                        <li>
                          {question}
                          <WhyLinks
                            grounds={one.grounds.filter(({ text }) => text === question)}
                            packed={packed}
                          />
                        </li>
                      ))}
                    </ul>
                  </>
                ) : null}
              </dd>
            </>
          )
        })}
      </dl>
    </section>
  )
}
