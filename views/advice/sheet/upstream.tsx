import type { Advice, Removal } from '../../../src/contract/advice.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { grouped } from '../../words/grouped.ts'
import { type Links, partLink, trailLink } from '../links.ts'
import { wantedOf } from '../sizes/findings.ts'

interface Props {
  readonly advice: Advice
  readonly names: Names
  readonly links: Links
  readonly print?: boolean
}

const percent = (share: number) => `${Math.round(share * 100)}`

/** What takes a share out before a detector sees it: devices against contaminants, one condition a device. */
export function Upstream({ advice, names, links, print = false }: Props) {
  const wanted = wantedOf(advice)
  const points = advice.points.map((point, at) => ({ ...point, at })).filter((p) => p.removals.length > 0)
  if (points.length === 0) return null
  return (
    <section aria-labelledby="upstream">
      <h2 id="upstream">Upstream removal</h2>
      <p class="small">
        Per cent taken out in one run, whatever the size; never ranked against a detector.
        {print ? '' : ' Behind a device stands what it needs.'}
      </p>
      {points.map(({ name, removals, at }) => (
        <section class="scroll" tabindex={0} aria-labelledby={`upstream-${at}`}>
          <table class="machines upstream">
            <caption id={`upstream-${at}`}>{name}</caption>
            <thead>
              <tr>
                <th scope="col">device</th>
                {wanted.map((one) => (
                  <th scope="col" class="piece">
                    {pieceShort(one, names)}
                  </th>
                ))}
                {print ? <th scope="col">condition</th> : null}
              </tr>
            </thead>
            <tbody>
              {[...grouped(removals, ({ equipment }) => equipment)].map(([equipment, rows]) => (
                <tr>
                  <th scope="row">
                    {print ? (
                      rows[0]!.label
                    ) : (
                      <a
                        href={partLink(links, 'device', at, equipment)}
                        hx-get={partLink(links, 'device', at, equipment)}
                        hx-target="#device"
                        hx-swap="innerHTML show:top"
                      >
                        {rows[0]!.label}
                      </a>
                    )}
                  </th>
                  {wanted.map(({ contaminant }) => (
                    <td class="piece">
                      <Share removal={rows.find((row) => row.contaminant === contaminant)} links={links} />
                    </td>
                  ))}
                  {print ? <td class="prose">{conditionOf(rows)}</td> : null}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      ))}
      {print ? null : <div id="device" class="fold-place" aria-live="polite" />}
    </section>
  )
}

/** A device ruled out for everything says so; else what it needs, once. */
function conditionOf(rows: readonly Removal[]): string {
  const against = [...new Set(rows.map(({ unsuitable }) => unsuitable))]
  if (against.length === 1 && against[0] !== '') return `Not suitable. ${against[0]}`
  return rows.find(({ unsuitable }) => unsuitable === '')?.condition ?? ''
}

function Share({ removal, links }: { removal: Removal | undefined; links: Links }) {
  if (!removal) return <>–</>
  const [low, high] = removal.shareRemoved
  if (removal.unsuitable !== '') return <>not suitable</>
  if (Math.round(high * 100) === 0) return <>0</>
  const words = percent(low) === percent(high) ? percent(low) : `${percent(low)}–${percent(high)}`
  return links.calculations.has(removal.calculation) ? (
    <a href={trailLink(links, removal.calculation)}>{words}</a>
  ) : (
    words
  )
}
