import type { Advice, Removal } from '../../../src/contract/advice.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { type Links, rulesLink } from '../links.ts'
import type { Citations } from '../reasons/citations.ts'
import { ReasonLists } from '../reasons/reason-list.tsx'
import { wantedOf } from '../sizes/findings.ts'

interface Props {
  readonly advice: Advice
  readonly rows: readonly Removal[]
  readonly point: number
  readonly names: Names
  readonly links: Links
  readonly citations: Citations
}

/** "0.1 to 0.4 % of the product", "2 to 8 g per piece thrown out"; empty where nothing is lost. */
function lostWords({ goodProductLost, goodProductLostUnit }: Removal): string {
  if (!goodProductLost) return ''
  const share = goodProductLostUnit === 'share of the product'
  const [low, high] = goodProductLost.map((value) => Number((share ? value * 100 : value).toPrecision(2)))
  return `Good product lost: ${low} to ${high} ${share ? '% of the product' : goodProductLostUnit}.`
}

/** One device of upstream removal: what it does for each contaminant, what the rules say of it. */
export function Device({ advice, rows, point, names, links, citations }: Props) {
  const wanted = wantedOf(advice)
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  const reasons = [...new Map(rows.flatMap((row) => row.reasons).map((one) => [one.trace, one])).values()]
  return (
    <>
      <h3>{rows[0]!.label}</h3>
      <ul>
        {rows.map((row) => (
          <li>
            <strong>{pieceShort(wanted[row.contaminant]!, names)}:</strong>{' '}
            {row.unsuitable === ''
              ? `${Math.round(100 * row.shareRemoved[0])} to ${Math.round(100 * row.shareRemoved[1])} %, never more than ${Math.round(100 * row.ceiling)} %. ${row.because} ${row.neverRemoves ? `Never removes: ${row.neverRemoves}` : ''}`
              : `not suitable. ${row.unsuitable}`}
          </li>
        ))}
      </ul>
      <p>{lostWords(rows[0]!)}</p>
      <ReasonLists
        option={{ reasons }}
        citations={citations}
        rules={rules}
        packed={links.packed}
        print={false}
      />
      <p class="small">
        <a href={rulesLink(links, point, rows[0]!.equipment)}>
          Every rule that was tried, with its conditions
        </a>
      </p>
    </>
  )
}
