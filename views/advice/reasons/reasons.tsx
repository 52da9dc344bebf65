import type { Advice, Option, Reason, RuleTrace } from '../../../src/contract/advice.ts'
import type { Names } from '../../words/contaminant.ts'
import { VERDICT_WORDS } from '../../words/verdict.ts'
import { settingsWords } from '../first/settings-words.ts'
import { type Links, reasonsAnchor, rulesLink, rulesPartLink } from '../links.ts'
import { Zones } from '../sizes/zones.tsx'
import type { Citations } from './citations.ts'
import { Cited } from './cited.tsx'
import { ReasonLists } from './reason-list.tsx'

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  readonly citations: Citations
  readonly print: boolean
}

/** Why each machine stands where it stands, one to open at a time. */
export function Reasons(props: Props) {
  const { advice } = props
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  if (advice.points.every((point) => point.options.length === 0)) return null
  return (
    <section aria-labelledby="reasons">
      <h2 id="reasons">Reasons</h2>
      {advice.points.map((point, at) => (
        <>
          {advice.points.length > 1 ? <h3>{point.name}</h3> : null}
          <PointReasons reasons={point.reasons} rules={rules} {...props} />
          {point.options.map((option) => (
            <OptionReasons option={option} point={at} rules={rules} {...props} />
          ))}
        </>
      ))}
    </section>
  )
}

/** What the rules ask of the point itself, said once whichever machine stands there. */
function PointReasons({
  reasons,
  rules,
  links,
  citations,
  print,
}: Props & { reasons: readonly Reason[]; rules: ReadonlyMap<string, RuleTrace> }) {
  if (reasons.length === 0) return null
  return (
    <details class="why" {...(print ? { open: true } : {})}>
      <summary>
        <span class="why-name">Whichever machine stands here</span>
      </summary>
      <ReasonLists
        option={{ reasons: [...reasons] }}
        citations={citations}
        rules={rules}
        packed={links.packed}
        print={print}
      />
    </details>
  )
}

function OptionReasons({
  option,
  point,
  rules,
  names,
  links,
  citations,
  print,
}: Props & { option: Option; point: number; rules: ReadonlyMap<string, RuleTrace> }) {
  const verdict = VERDICT_WORDS[option.verdict]
  const settings = settingsWords(option)
  return (
    <details class="why" id={reasonsAnchor(point, option.equipment)} {...(print ? { open: true } : {})}>
      <summary>
        <span class="why-name">{option.label}</span>{' '}
        <span class="why-verdict">
          <span aria-hidden="true">{verdict.mark}</span> {verdict.words}
        </span>
      </summary>
      <p>
        {option.because} {settings ? `Settings: ${settings}.` : ''}
      </p>
      <WhyNot option={option} />
      <ReasonLists option={option} citations={citations} rules={rules} packed={links.packed} print={print} />
      <OtherCautions option={option} citations={citations} />
      <Zones option={option} point={point} names={names} links={links} />
      {print ? null : <EveryRule option={option} point={point} links={links} />}
    </details>
  )
}

function WhyNot({ option }: { option: Option }) {
  if (option.whyNot.length === 0) return null
  return (
    <>
      <h4>Why it is not the best fit</h4>
      <ul>
        {option.whyNot.map((one) => (
          <li>{one.text}</li>
        ))}
      </ul>
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

/** A link to every rule tried; with script the rules open in its place. */
function EveryRule({ option, point, links }: { option: Option; point: number; links: Links }) {
  const place = `rules-${point}-${option.equipment}`
  return (
    <div id={place} class="every-rule">
      <a
        class="target"
        href={rulesLink(links, point, option.equipment)}
        hx-get={rulesPartLink(links, point, option.equipment)}
        hx-target={`#${place}`}
        hx-swap="innerHTML"
      >
        Every rule that was tried, with its conditions<span class="unseen">: {option.label}</span>
      </a>
    </div>
  )
}
