import type { Advice, Reason } from '../../../src/contract/advice.ts'
import { Leaves, sharedSettling } from '../../trail/short-why.tsx'
import { EVIDENCE_WORDS } from '../../words/evidence.ts'
import { grouped } from '../../words/grouped.ts'
import { listed } from '../../words/listed.ts'
import { shortName } from '../../words/machine.ts'
import type { Citations } from '../reasons/citations.ts'
import { Cited } from '../reasons/cited.tsx'

interface Said {
  readonly reason: Reason
  readonly where: string
}

/** Every rule that applies, once: what it says, of which machines, the condition that decides, its sources. */
export function PaperReasons({
  advice,
  citations,
  packed,
}: {
  advice: Advice
  citations: Citations
  packed: string
}) {
  const several = advice.points.length > 1
  const said = advice.points.flatMap(({ options, removals, reasons }, at) =>
    [
      ...reasons.map((reason) => ({ reason, name: 'any machine' })),
      ...options.flatMap((option) => option.reasons.map((reason) => ({ reason, name: shortName(option) }))),
      ...removals.flatMap(({ label, reasons }) => reasons.map((reason) => ({ reason, name: label }))),
    ].map(({ reason, name }): Said => ({ reason, where: several ? `${name} (point ${at + 1})` : name })),
  )
  // Thousands of rules were asked, a few dozen fired; of those the page tells what settled them.
  const told = new Set(said.map(({ reason }) => reason.trace))
  const traces = new Map(
    advice.trace.rules
      .filter(({ key, outcome }) => outcome === 'fired' && told.has(key))
      .map((rule) => [rule.key, rule] as const),
  )
  return (
    <section aria-labelledby="reasons">
      <h2 id="reasons">Reasons</h2>
      <dl class="paper-reasons">
        {[...grouped(said, ({ reason }) => reason.rule).values()].map((same) => (
          <Rule same={same} {...{ traces, citations, packed }} />
        ))}
      </dl>
    </section>
  )
}

function Rule({
  same,
  traces,
  citations,
  packed,
}: {
  same: readonly Said[]
  traces: ReadonlyMap<string, Advice['trace']['rules'][number]>
  citations: Citations
  packed: string
}) {
  const { reason } = same[0]!
  const keys = new Set(same.map((one) => one.reason.trace))
  const { shared } = sharedSettling([...keys].flatMap((key) => traces.get(key) ?? []))
  const texts = [...grouped(same, (one) => one.reason.text)]
  return (
    <>
      <dt>{reason.title || reason.rule}</dt>
      <dd>
        {texts.map(([text, ones]) => (
          <p>
            {text} <span class="small">({listed([...new Set(ones.map(({ where }) => where))])})</span>
          </p>
        ))}
        <Leaves leaves={shared} packed={packed} />
        <p class="small">
          {reason.because} {EVIDENCE_WORDS[reason.evidence]}, rule {reason.rule}.
          <Cited ids={reason.sources} citations={citations} />
        </p>
      </dd>
    </>
  )
}

/** Why each machine short of a best fit is short of it, machine by machine. */
export function WhyNot({ advice }: { advice: Advice }) {
  return (
    <section aria-labelledby="why-not">
      <h2 id="why-not">Why each other machine is not the best fit</h2>
      {advice.points.map(({ name, options }) => (
        <>
          {advice.points.length > 1 ? <h3>{name}</h3> : null}
          <dl class="paper-reasons">
            {options
              .filter(({ rank, whyNot }) => rank !== null && whyNot.length > 0)
              .map((option) => (
                <>
                  <dt>{shortName(option)}</dt>
                  <dd>
                    {[...new Set([option.because, ...option.whyNot.map(({ text }) => text)])].join(' ')}
                  </dd>
                </>
              ))}
          </dl>
        </>
      ))}
    </section>
  )
}
