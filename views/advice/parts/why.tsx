import type { Advice, Option } from '../../../src/contract/advice.ts'
import type { Names } from '../../words/contaminant.ts'
import { VERDICT_WORDS } from '../../words/verdict.ts'
import { settingsWords } from '../first/settings-words.ts'
import { type Links, rulesLink } from '../links.ts'
import type { Citations } from '../reasons/citations.ts'
import { Cited } from '../reasons/cited.tsx'
import { ReasonLists } from '../reasons/reason-list.tsx'
import { WhyLinks } from '../reasons/why-links.tsx'
import { Zones } from '../sizes/zones.tsx'

interface Props {
  readonly advice: Advice
  readonly option: Option
  readonly point: number
  readonly names: Names
  readonly links: Links
  readonly citations: Citations
}

/** Why one machine stands where it stands: verdict, what it misses, what the rules say, places of the pack. */
export function Why({ advice, option, point, names, links, citations }: Props) {
  const verdict = VERDICT_WORDS[option.verdict]
  const settings = settingsWords(option)
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  return (
    <>
      <h3>
        {option.label} <span aria-hidden="true">{verdict.mark}</span> {verdict.words}
      </h3>
      <p>
        {option.because}
        <WhyLinks grounds={option.grounds} packed={links.packed} /> {settings ? `Settings: ${settings}.` : ''}
      </p>
      {option.whyNot.length > 0 ? (
        <>
          <h4>Why it is not the best fit</h4>
          <ul>
            {option.whyNot.map((one) => (
              <li>
                {one.text}
                {one.kind === 'size' ? <WhyLinks grounds={one.grounds} packed={links.packed} /> : null}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      <ReasonLists option={option} citations={citations} rules={rules} packed={links.packed} print={false} />
      <OtherCautions option={option} citations={citations} />
      <Zones option={option} point={point} names={names} links={links} />
      <p class="small">
        <a href={rulesLink(links, point, option.equipment)}>Every rule that was tried, with its conditions</a>
      </p>
    </>
  )
}

/** Cautions that no rule among the reasons has said already. */
function OtherCautions({ option, citations }: { option: Option; citations: Citations }) {
  const said = new Set(option.reasons.map((reason) => reason.rule))
  const others = option.cautions.filter((caution) => !said.has(caution.id))
  if (others.length === 0) return null
  return (
    <>
      <h4>Cautions</h4>
      <ul>
        {others.map((caution) => (
          <li>
            {caution.text}
            <Cited ids={caution.sources} citations={citations} />
          </li>
        ))}
      </ul>
    </>
  )
}
