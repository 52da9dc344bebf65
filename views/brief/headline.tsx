import type { Advice } from '../../src/contract/advice.ts'
import { listed } from '../words/listed.ts'
import { shortName } from '../words/machine.ts'
import { VERDICT_WORDS } from '../words/verdict.ts'

interface Props {
  readonly advice: Advice | null
  /** What is still missing for an answer. */
  readonly needed: readonly string[]
}

/** The answer in short, beside the form while it is being filled; before there is one, what it still needs. */
export function Headline({ advice, needed }: Props) {
  if (advice === null)
    return (
      <p class="quiet-text">
        {needed.length > 0
          ? `Still needed: ${listed(needed)}.`
          : 'The answer stands here as soon as the form can be read.'}
      </p>
    )
  return (
    <>
      <p class="answer">{advice.answer.sentence}</p>
      {advice.points.map((point) => (
        <div class="short-point">
          <h3>{point.name}</h3>
          <ul>
            {point.options
              .filter((option) => option.rank !== null && option.verdict !== 'not-suitable')
              .slice(0, 3)
              .map((option) => (
                <li>
                  <span aria-hidden="true">{VERDICT_WORDS[option.verdict].mark}</span> {shortName(option)}:{' '}
                  {VERDICT_WORDS[option.verdict].words}
                </li>
              ))}
          </ul>
        </div>
      ))}
    </>
  )
}
