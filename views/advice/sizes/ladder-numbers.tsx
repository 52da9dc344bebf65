import type { Advice, Finding } from '../../../src/contract/advice.ts'
import { chanceWords, sizeWords } from '../../words/size.ts'
import { MEETS_WORDS } from '../../words/verdict.ts'
import { type Links, type SizeName, sizeLink } from '../links.ts'
import { findingOf, type Wanted } from './findings.ts'

interface Props {
  readonly advice: Advice
  readonly wanted: Wanted
  readonly links: Links
  readonly print: boolean
}

/** The numbers of one ladder, each leading to its calculation. */
export function LadderNumbers({ advice, wanted, links, print }: Props) {
  const caption = `numbers-${wanted.contaminant}`
  return (
    <details {...(print ? { open: true } : {})}>
      <summary>Numbers of this picture</summary>
      <section class="scroll" tabindex={0} aria-labelledby={caption}>
        <table class="numbers">
          <caption id={caption}>Findable sizes in mm, rounded up</caption>
          <thead>
            <tr>
              <th scope="col">Point and machine</th>
              <th scope="col" class="n">
                Best possible, mm
              </th>
              <th scope="col" class="n">
                Found half the time, mm
              </th>
              <th scope="col" class="n">
                Expected, mm
              </th>
              <th scope="col" class="n">
                Found 995 in 1,000, mm
              </th>
              <th scope="col" class="n">
                Promise no better than, mm
              </th>
              <th scope="col" class="n">
                Chance of finding the size asked
              </th>
              <th scope="col">Size asked</th>
              <th scope="col">What limits it; weak places; what widens the range most</th>
            </tr>
          </thead>
          <tbody>
            {advice.points.flatMap((point) =>
              point.options.flatMap((option) => {
                const finding = findingOf(option, wanted.contaminant)
                if (!finding) return []
                return [
                  <tr>
                    <th scope="row">{`${point.name}: ${option.label}`}</th>
                    <Size finding={finding} size="best" links={links} />
                    <Size finding={finding} size="half" links={links} />
                    <Size finding={finding} size="expected" links={links} />
                    <Size finding={finding} size="sure" links={links} />
                    <Size finding={finding} size="cautious" links={links} />
                    <td class="n">{chanceWords(finding.chanceAtMustFind)}</td>
                    <td>{MEETS_WORDS[finding.meets].words}</td>
                    <td class="prose">{backgroundWords(finding)}</td>
                  </tr>,
                ]
              }),
            )}
          </tbody>
        </table>
      </section>
    </details>
  )
}

const STATE_WORDS = { findable: 'findable', degraded: 'weak', blind: 'blind' } as const

/** What stands behind a size, in words: its note, the weak places of the container, the widest assumption. */
function backgroundWords(finding: Finding): string {
  const weak = finding.zones.filter((zone) => zone.canLieThere && zone.state !== 'findable')
  const places = weak.map((zone) => `${zone.name} ${STATE_WORDS[zone.state]}`).join(', ')
  return [
    finding.note,
    weak.length > 0 && finding.bestMm !== null ? `Weak places: ${places}.` : '',
    finding.widest && finding.cautiousMm !== null ? `Widest assumption: ${finding.widest}.` : '',
  ]
    .filter(Boolean)
    .join(' ')
}

function Size({ finding, size, links }: { finding: Finding; size: SizeName; links: Links }) {
  const mm = finding[`${size}Mm`]
  return (
    <td class="n">
      {mm === null ? (
        '–'
      ) : (
        <a class="target" href={sizeLink(links, finding, size)}>
          {sizeWords(mm)}
        </a>
      )}
    </td>
  )
}
