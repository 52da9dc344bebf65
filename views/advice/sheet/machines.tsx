import type { Advice, Option } from '../../../src/contract/advice.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { grouped } from '../../words/grouped.ts'
import { shortName } from '../../words/machine.ts'
import { ANSWER_WORDS, VERDICT_WORDS } from '../../words/verdict.ts'
import { type Links, partLink } from '../links.ts'
import { findingOf, type Wanted, wantedOf } from '../sizes/findings.ts'

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  /** Size, speed and false rejects of each point, in words. */
  readonly pointLines: readonly string[]
  readonly print?: boolean
}

/** The machines of each point by rank: verdict, how many sizes they meet, a mark for each contaminant. */
export function Machines({ advice, names, links, pointLines, print = false }: Props) {
  const coils = advice.points.some(({ options }) => options.some(({ family }) => family === 'coil'))
  const wanted = wantedOf(advice)
  const isTaughtBefore = ({ rank, equipment }: Option, at: number) =>
    rank === null &&
    advice.points.slice(0, at).some(({ options }) => options.some((one) => one.equipment === equipment))
  return (
    <section aria-labelledby="machines">
      <h2 id="machines">Machines, ranked</h2>
      {advice.points.map((point, at) =>
        point.options.length === 0 ? (
          <p>
            <strong>{point.name}:</strong> no detector compared here fits the way the food passes.
          </p>
        ) : (
          <section class="scroll" tabindex={0} aria-labelledby={`ranked-${at}`}>
            <table class="machines">
              <caption id={`ranked-${at}`}>
                {advice.points.length > 1 ? `${at + 1}. ` : ''}
                {point.name}
                {pointLines[at] ? <span class="caption-line"> {pointLines[at]}</span> : null}
              </caption>
              <thead>
                <tr>
                  <th scope="col" class="n">
                    rank
                  </th>
                  <th scope="col">machine</th>
                  <th scope="col">verdict</th>
                  <th scope="col">sizes met</th>
                  <th scope="col" class="n">
                    cost and effort, 1 to 5
                  </th>
                  {wanted.map((one) => (
                    <th scope="col" class="piece">
                      {pieceShort(one, names)}
                    </th>
                  ))}
                </tr>
              </thead>
              <tbody>
                {point.options.filter(isCompared).map((option) => (
                  <Row {...{ option, at, wanted, links, print }} />
                ))}
              </tbody>
            </table>
            <Others
              options={point.options.filter((option) => !isCompared(option) && !isTaughtBefore(option, at))}
              {...{ at, links, print }}
            />
          </section>
        ),
      )}
      {print ? null : <div id="why" class="fold-place" aria-live="polite" />}
      <p class="small">
        ● safe to promise · ◕ but for places · ◐ expected · ○ not met · ✕ not found · – no size asked. Cost
        and effort: purchase, upkeep, space and skill; no prices.
        {coils ? ' Detector: metal detector (balanced coil) around belt, stream or pipe.' : ''}
      </p>
    </section>
  )
}

/** "4 promised, 1 expected, 1 not": sizes asked, by how they are met. */
export function metCounts(option: Pick<Option, 'findings'>): string {
  const asked = option.findings.filter((finding) => finding.mustFindMm !== null)
  const count = (...meets: string[]) => asked.filter((finding) => meets.includes(finding.meets)).length
  const parts = [
    [count('yes', 'partly'), 'promised'],
    [count('maybe'), 'expected'],
    [count('no', 'cannot', 'open'), 'not'],
  ] as const
  return parts
    .filter(([n]) => n > 0)
    .map(([n, word]) => `${n} ${word}`)
    .join(', ')
}

function Row({
  option,
  at,
  wanted,
  links,
  print,
}: {
  option: Option
  at: number
  wanted: readonly Wanted[]
  links: Links
  print: boolean
}) {
  const verdict = VERDICT_WORDS[option.verdict]
  return (
    <tr class={option.verdict}>
      <td class="n">{option.rank}</td>
      <th scope="row">
        <Name {...{ option, at, links, print }} />
      </th>
      <td class="verdict">
        <span aria-hidden="true">{verdict.mark}</span> {verdict.words}
      </td>
      <td>{metCounts(option)}</td>
      <td class="n">{option.burden}</td>
      {wanted.map((one) => {
        const finding = findingOf(option, one.contaminant)
        const { mark, words } = finding ? ANSWER_WORDS[finding.meets] : { mark: '–', words: 'not looked at' }
        return (
          <td class="piece">
            <span aria-hidden="true">{mark}</span>
            <span class="unseen">{words}</span>
          </td>
        )
      })}
    </tr>
  )
}

/** The name of a machine, on the screen with its reasons behind it. */
function Name({ option, at, links, print }: { option: Option; at: number; links: Links; print: boolean }) {
  const why = partLink(links, 'why', at, option.equipment)
  if (print) return shortName(option)
  return (
    <a href={why} hx-get={why} hx-target="#why" hx-swap="innerHTML show:top">
      {shortName(option)}
    </a>
  )
}

const isCompared = ({ rank, verdict }: Option) => rank !== null && verdict !== 'not-suitable'

/** The first sentence of a reason; the rest stands behind the machine's name. */
const firstSentence = (reason: string) => reason.split(/(?<=[^.]{3}\.) (?=\p{Lu})/u)[0]!

/** What has no row: machines ruled out, those of one reason together, and what is shown for teaching only. */
function Others({
  options,
  ...shown
}: {
  options: readonly Option[]
  at: number
  links: Links
  print: boolean
}) {
  const reasonOf = ({ rank, because }: Option) =>
    rank === null ? 'Shown for teaching, never ranked.' : firstSentence(because)
  return (
    <>
      {[...grouped(options, reasonOf)].map(([reason, alike]) => (
        <p class="small ruled-out">
          {alike[0]!.rank === null ? null : (
            <>
              <span aria-hidden="true">{VERDICT_WORDS['not-suitable'].mark}</span> Not suitable:{' '}
            </>
          )}
          {alike.map((option, nth) => (
            <>
              {nth > 0 ? '; ' : ''}
              <Name option={option} {...shown} />
            </>
          ))}
          . {reason}
        </p>
      ))}
    </>
  )
}
