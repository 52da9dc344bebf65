import type { Advice } from '../../src/contract/advice.ts'
import { chanceWords, sizeWords } from '../words/size.ts'
import { MEETS_WORDS } from '../words/verdict.ts'
import { findingOf, type Wanted } from './findings.ts'
import { type Links, trailLink } from './links.ts'

interface Props {
  readonly advice: Advice
  readonly wanted: Wanted
  readonly links: Links
  readonly print: boolean
}

/** The numbers of one ladder, each row leading to its calculation. */
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
              <th scope="col">Calculation</th>
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
                    <td class="n">{sizeWords(finding.bestMm)}</td>
                    <td class="n">{sizeWords(finding.halfMm)}</td>
                    <td class="n">{sizeWords(finding.expectedMm)}</td>
                    <td class="n">{sizeWords(finding.sureMm)}</td>
                    <td class="n">{sizeWords(finding.cautiousMm)}</td>
                    <td class="n">{chanceWords(finding.chanceAtMustFind)}</td>
                    <td>{MEETS_WORDS[finding.meets].words}</td>
                    <td>
                      <a class="target" href={trailLink(links, finding.calculation)}>
                        trail
                        <span class="unseen">
                          {' '}
                          of {option.label} at {point.name}
                        </span>
                      </a>
                    </td>
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
