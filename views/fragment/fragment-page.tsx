import type { FragmentAnswer } from '../../src/contract/fragment.ts'
import { ruleLink } from '../advice/links.ts'
import { WhyLinks } from '../advice/reasons/why-links.tsx'
import type { OptionGroup } from '../brief/sheet.ts'
import { Page } from '../page.tsx'
import { sizeWords } from '../words/size.ts'
import { type FragmentAnswers, FragmentForm } from './fragment-form.tsx'
import { optionChance, shareWords, togetherChance } from './fragment-words.ts'

export interface FragmentPageProps {
  readonly title: string
  readonly packed: string
  readonly answers: FragmentAnswers
  readonly problems: ReadonlyMap<string, string>
  readonly contaminants: readonly OptionGroup[]
  /** null until a piece was described. */
  readonly answer: FragmentAnswer | null
}

/** A piece from a complaint and the line it came from: would we have found it? */
export function FragmentPage(props: FragmentPageProps) {
  const { title, packed, answers, problems, contaminants, answer } = props
  return (
    <Page
      title={`${problems.size > 0 ? 'Error: ' : ''}Check a found piece: ${title}`}
      packed={packed}
      here="other"
    >
      {problems.size > 0 ? <Problems problems={problems} /> : null}
      <p class="over-title">
        <a href={`/advice?b=${packed}`}>Advice</a>
      </p>
      <h1>Check a found piece</h1>
      <p class="standfirst">
        {`A piece that came to light, and the line of this brief (${title}): the chance of finding it at each point and machine, each at the settings it runs at.`}
      </p>
      <FragmentForm answers={answers} problems={problems} contaminants={contaminants} packed={packed} />
      {answer ? <Answer answer={answer} packed={packed} /> : null}
    </Page>
  )
}

function Problems({ problems }: { problems: ReadonlyMap<string, string> }) {
  return (
    <div class="summary-of-errors" role="alert" tabindex={-1}>
      <h2>There is a problem</h2>
      <ul>
        {[...problems].map(([name, message]) => (
          <li>
            <a href={`#${name}`}>{message}</a>
          </li>
        ))}
      </ul>
    </div>
  )
}

function Answer({ answer, packed }: { answer: FragmentAnswer; packed: string }) {
  const together = answer.together?.because ?? ''
  return (
    <>
      <section aria-labelledby="answer">
        <h2 id="answer">The answer</h2>
        <p class="answer">
          {answer.summary}
          <WhyLinks
            grounds={answer.grounds.filter(({ text }) => answer.summary.includes(text))}
            packed={packed}
          />
        </p>
        {answer.together ? (
          <p>
            <strong>All together: {togetherChance(answer.together)}.</strong> {answer.together.because}
            <WhyLinks
              grounds={answer.grounds.filter(({ text }) => together.includes(text))}
              packed={packed}
            />
          </p>
        ) : null}
      </section>
      {answer.points.map((point, at) => (
        <PointAnswer point={point} at={at} packed={packed} />
      ))}
      <section aria-labelledby="before-blame">
        <h2 id="before-blame">What no chance tells</h2>
        <ul>
          {answer.questions.map((question) => (
            <li>
              {question}
              <WhyLinks grounds={answer.grounds.filter(({ text }) => text === question)} packed={packed} />
            </li>
          ))}
        </ul>
        <ul class="small">
          {answer.cautions.map(({ text }) => (
            <li>{text}</li>
          ))}
        </ul>
      </section>
    </>
  )
}

function PointAnswer({
  point,
  at,
  packed,
}: {
  point: FragmentAnswer['points'][number]
  at: number
  packed: string
}) {
  return (
    <section aria-labelledby={`at-${at}`}>
      <h2 id={`at-${at}`}>{point.name}</h2>
      <p class="small">{point.stillEnters}</p>
      {point.options.length === 0 ? <p>No detector of the list fits the way the food passes here.</p> : null}
      <dl class="uses">
        {point.options.map((option) => (
          <>
            <dt>
              {option.label}: {optionChance(option)}
              {option.installed ? '' : ' (not named in the brief; if it stood here)'}
            </dt>
            <dd>
              {option.excluded ? `${option.excluded} ` : ''}
              {option.excluded ? '' : option.settings ? `At ${option.settings}. ` : ''}
              {option.excluded ? '' : option.because.join(' ')}
              {option.excluded ? null : <WhyLinks grounds={option.grounds} packed={packed} />}
              {option.chanceAnyOrientation === null || option.excluded !== ''
                ? ''
                : ` Over random orientations: ${optionChance({ ...option, chance: option.chanceAnyOrientation })}.`}
              {option.excluded === '' && option.zones.length > 0 ? (
                <ul>
                  {option.zones.map(({ name, state, sizes, why }) => (
                    <li>
                      {name}: {state}
                      {sizes.expectedMm === null ? '' : `, from ${sizeWords(sizes.expectedMm)} mm`}. {why}
                    </li>
                  ))}
                </ul>
              ) : null}
              {option.excluded === '' && option.rules.length > 0 ? (
                <ul>
                  {option.rules.map(({ rule, title, text }) => (
                    <li>
                      <a href={ruleLink(rule, packed)}>{title}</a>: {text}
                    </li>
                  ))}
                </ul>
              ) : null}
            </dd>
          </>
        ))}
      </dl>
      {point.removals.length > 0 ? (
        <>
          <h3>Upstream removal</h3>
          <ul>
            {point.removals.map(({ label, shareRemoved, because, unsuitable }) => (
              <li>
                {label}:{' '}
                {unsuitable === ''
                  ? `removes ${shareRemoved[1] === 0 ? 'none' : shareWords(shareRemoved)} of such pieces. ${because}`
                  : `not suitable. ${unsuitable}`}
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </section>
  )
}
