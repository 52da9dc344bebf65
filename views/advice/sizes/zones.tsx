import type { Finding, Option, Zone } from '../../../src/contract/advice.ts'
import { type Names, pieceWords } from '../../words/contaminant.ts'
import { grouped } from '../../words/grouped.ts'
import { sizeWords } from '../../words/size.ts'
import { type Links, trailLink } from '../links.ts'
import { ZonePicture } from './zone-picture.tsx'

interface Props {
  readonly option: Option
  readonly point: number
  readonly names: Names
  readonly links: Links
}

/** Places in a container where a piece hides, a column per contaminant; nothing where there are none. */
export function Zones({ option, point, names, links }: Props) {
  const findings = option.findings.filter((finding) => finding.zones.length > 0)
  if (findings.length === 0) return null
  const zones = grouped(
    findings.flatMap((finding) => finding.zones),
    (zone) => zone.name,
  )
  const caption = `zones-${point}-${option.equipment}`
  return (
    <>
      <ZonePicture
        id={`container-${point}-${option.equipment}`}
        label={option.label}
        fromAbove={option.beam === 'down'}
        zones={[...zones].map(([name, same]) => ({ name, state: worstOf(same) }))}
      />
      <section class="scroll" tabindex={0} aria-labelledby={caption}>
        <table>
          <caption id={caption}>Where in the container: expected size there, mm</caption>
          <thead>
            <tr>
              <th scope="col">Zone</th>
              <th scope="col" class="n">
                Container in the beam, mm
              </th>
              {findings.map((finding) => (
                <th scope="col" class="n">
                  <a href={trailLink(links, finding.calculation)}>{pieceWords(finding, names)}</a>
                </th>
              ))}
              <th scope="col">Because</th>
            </tr>
          </thead>
          <tbody>
            {[...zones].map(([name, same]) => (
              <tr>
                <th scope="row">{name}</th>
                <td class="n">{sizeWords(same[0]?.pathMm ?? null)}</td>
                {findings.map((finding) => (
                  <td class="n">{zoneWords(zoneOf(finding, name))}</td>
                ))}
                <td class="prose">{same[0]?.why}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  )
}

/** The worst state of a zone over the contaminants. */
const worstOf = (zones: readonly Zone[]): Zone['state'] =>
  (['blind', 'degraded'] as const).find((state) =>
    zones.some((zone) => zone.canLieThere && zone.state === state),
  ) ?? 'findable'

const zoneOf = (finding: Finding, name: string): Zone | undefined =>
  finding.zones.find((zone) => zone.name === name)

function zoneWords(zone: Zone | undefined): string {
  if (!zone) return '–'
  if (!zone.canLieThere) return 'not there'
  if (zone.state === 'blind') return 'blind'
  const size = zone.sizes.expectedMm === null ? 'no size' : sizeWords(zone.sizes.expectedMm)
  return zone.state === 'degraded' ? `${size}, worse` : size
}
