import type { Advice } from '../../../src/contract/advice.ts'
import { type Names, pieceWords } from '../../words/contaminant.ts'
import { grouped } from '../../words/grouped.ts'
import { type Links, rulesLink, trailLink } from '../links.ts'
import type { Citations } from '../reasons/citations.ts'
import { ReasonLists } from '../reasons/reason-list.tsx'
import { wantedOf } from '../sizes/findings.ts'

const percent = (share: number) => `${Math.round(share * 100)}`

type Removal = Advice['points'][number]['removals'][number]

function Share({ removal, links }: { removal: Removal; links: Links }) {
  const words = `${percent(removal.shareRemoved[0])} to ${percent(removal.shareRemoved[1])}`
  if (!links.calculations.has(removal.calculation)) return <>{words}</>
  return <a href={trailLink(links, removal.calculation)}>{words}</a>
}

/** "0.1 to 0.4 % of the product", "2 to 8 g per piece thrown out", or a dash. */
function lostWords({ goodProductLost, goodProductLostUnit }: Removal): string {
  if (!goodProductLost) return '–'
  const share = goodProductLostUnit === 'share of the product'
  const [low, high] = goodProductLost.map((value) => Number((share ? value * 100 : value).toPrecision(2)))
  return `${low} to ${high} ${share ? '% of the product' : goodProductLostUnit}`
}

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  readonly citations: Citations
  readonly print: boolean
}

/** What takes a share out before a detector sees it; never ranked against one. */
export function Removals({ advice, names, links, citations, print }: Props) {
  const wanted = wantedOf(advice)
  const points = advice.points.filter((point) => point.removals.length > 0)
  if (points.length === 0) return null
  return (
    <section aria-labelledby="removals">
      <h2 id="removals">Upstream removal</h2>
      <p>
        These take out a share per run, not a size; however large the piece, no more than the ceiling leaves.
      </p>
      {points.map((point, at) => (
        <>
          <section class="scroll" tabindex={0} aria-labelledby={`removals-${at}`}>
            <table>
              <caption id={`removals-${at}`}>{point.name}</caption>
              <thead>
                <tr>
                  <th scope="col">Equipment</th>
                  <th scope="col">Contaminant</th>
                  <th scope="col" class="n">
                    Share removed, %
                  </th>
                  <th scope="col" class="n">
                    Ceiling, %
                  </th>
                  <th scope="col">Good product lost</th>
                  <th scope="col">Condition</th>
                  <th scope="col">Never removes</th>
                </tr>
              </thead>
              <tbody>
                {point.removals.map((removal) => {
                  const piece = wanted[removal.contaminant]
                  return (
                    <tr>
                      <th scope="row">{removal.label}</th>
                      <td>{piece ? pieceWords(piece, names) : ''}</td>
                      <td class="n">
                        <Share removal={removal} links={links} />
                      </td>
                      <td class="n">{percent(removal.ceiling)}</td>
                      <td>{lostWords(removal)}</td>
                      <td class="prose">
                        {removal.unsuitable === '' ? (
                          `${removal.condition} ${removal.because}`
                        ) : (
                          <>
                            <strong>Not for this.</strong> {removal.unsuitable}
                          </>
                        )}
                      </td>
                      <td class="prose">{removal.neverRemoves}</td>
                    </tr>
                  )
                })}
              </tbody>
            </table>
          </section>
          <RemovalReasons
            point={point}
            at={advice.points.indexOf(point)}
            {...{ advice, links, citations, print }}
          />
        </>
      ))}
    </section>
  )
}

/** What the rules say of each machine of a point, one to open at a time. */
function RemovalReasons({
  point,
  at,
  advice,
  links,
  citations,
  print,
}: Omit<Props, 'names'> & { point: Advice['points'][number]; at: number }) {
  const rules = new Map(advice.trace.rules.map((rule) => [rule.key, rule]))
  return (
    <>
      {[...grouped(point.removals, (removal) => removal.equipment)].map(([equipment, rows]) => {
        const reasons = [
          ...new Map(rows.flatMap((row) => row.reasons).map((one) => [one.trace, one])).values(),
        ]
        return (
          <details class="why" {...(print ? { open: true } : {})}>
            <summary>
              <span class="why-name">{rows[0]?.label}</span>{' '}
              <span class="why-said">
                {reasons.length === 0 ? 'no rule speaks of it here' : 'what the rules say'}
              </span>
            </summary>
            <ReasonLists
              option={{ reasons }}
              citations={citations}
              rules={rules}
              packed={links.packed}
              print={print}
            />
            {print ? null : (
              <p class="small">
                <a class="target" href={rulesLink(links, at, equipment)}>
                  Every rule that was tried, with its conditions<span class="unseen">: {rows[0]?.label}</span>
                </a>
              </p>
            )}
          </details>
        )
      })}
    </>
  )
}
