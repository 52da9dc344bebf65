import type { Option } from '../../src/contract/advice.ts'
import { type Names, pieceWords } from '../words/contaminant.ts'
import { sizeWords } from '../words/size.ts'
import { type Links, trailLink } from './links.ts'

const STATE_WORDS = { findable: 'findable', degraded: 'worse than elsewhere', blind: 'blind' } as const

/** Places in a container where a piece hides, per contaminant; nothing where there are none. */
export function Zones({
  option,
  point,
  names,
  links,
}: {
  option: Option
  point: number
  names: Names
  links: Links
}) {
  const rows = option.findings.flatMap((finding) => finding.zones.map((zone) => ({ finding, zone })))
  if (rows.length === 0) return null
  const caption = `zones-${point}-${option.equipment}`
  return (
    <section class="scroll" tabindex={0} aria-labelledby={caption}>
      <table>
        <caption id={caption}>Where in the container</caption>
        <thead>
          <tr>
            <th scope="col">Contaminant</th>
            <th scope="col">Zone</th>
            <th scope="col">State</th>
            <th scope="col" class="n">
              Container in the beam, mm
            </th>
            <th scope="col" class="n">
              Expected size there, mm
            </th>
            <th scope="col">Because</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ finding, zone }) => (
            <tr>
              <th scope="row">
                <a href={trailLink(links, finding.calculation)}>{pieceWords(finding, names)}</a>
              </th>
              <td>{zone.name}</td>
              <td>{STATE_WORDS[zone.state]}</td>
              <td class="n">{sizeWords(zone.pathMm)}</td>
              <td class="n">{sizeWords(zone.sizeMm)}</td>
              <td class="prose">{zone.because}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
