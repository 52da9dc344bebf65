import type { Advice } from '../../src/contract/advice.ts'
import { VERDICT_WORDS } from '../words/verdict.ts'

/** The answer in short, beside the form while it is being filled. */
export function Headline({ advice }: { advice: Advice | null }) {
  if (advice === null)
    return (
      <p class="quiet-text">
        The answer stands here as soon as there is a food, a point with its sizes and a contaminant.
      </p>
    )
  return (
    <>
      <p class="answer">{advice.summary}</p>
      {advice.points.map((point) => (
        <div class="short-point">
          <h3>{point.name}</h3>
          <ul>
            {point.options
              .filter((option) => option.verdict !== 'not-suitable')
              .slice(0, 3)
              .map((option) => (
                <li>
                  <span aria-hidden="true">{VERDICT_WORDS[option.verdict].mark}</span> {option.label}:{' '}
                  {option.verdict === 'conditional' ? option.because : VERDICT_WORDS[option.verdict].words}
                </li>
              ))}
          </ul>
        </div>
      ))}
    </>
  )
}
