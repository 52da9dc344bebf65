import type { Advice } from '../../src/contract/advice.ts'
import { type Ink, Numbers } from '../register/ink.tsx'
import { type Names, pieceWords } from '../words/contaminant.ts'
import { sizeWords } from '../words/size.ts'
import { verdictWords } from './verdict-of.ts'

const mm = (value: number | null) => (value === null ? 'none' : sizeWords(value))

type Option = Advice['points'][number]['options'][number]

/** Sources that all sizes of a machine share. */
function shared(ink: Ink, { findings }: Option): string[] {
  const [first = [], ...others] = findings
    .map(({ calculation }) => ink.sourcesOf('calculation', calculation))
    .filter((sources) => sources.length > 0)
  return first.filter((source) => others.every((sources) => sources.includes(source)))
}

/** What a size rests on besides. */
const ownSources = (ink: Ink, option: Option, { calculation }: Option['findings'][number]): string[] =>
  ink.sourcesOf('calculation', calculation).filter((source) => !shared(ink, option).includes(source))

/** Predicted sizes of every machine that stands in the register, with their range, best possible to safe to promise. */
export function Predicted({ advice, names, ink }: { advice: Advice; names: Names; ink: Ink }) {
  const inPlace = advice.register.lines.flatMap(({ controls }) => controls)
  return (
    <section aria-labelledby="predicted">
      <h2 id="predicted">What the machines are predicted to find</h2>
      <p>
        A size is the smallest test piece above which every piece is found nine times in ten at the accepted
        false rejects. Best possible is a bound of physics, expected the middle, safe to promise the
        unfavourable end. All of it is predicted; none of it is demonstrated.
      </p>
      {advice.points.map((point) => {
        const options = point.options.filter(({ equipment }) =>
          inPlace.some((one) => one.point === point.name && one.equipment === equipment),
        )
        const others = point.options.filter((option) => !options.includes(option))
        return (
          <>
            {options.map((option) => (
              <table>
                <caption>
                  {option.label}, {point.name}: {verdictWords(option.verdict)}. Every size rests on
                  <Numbers ink={ink} sources={shared(ink, option)} />
                  {option.findings.some((finding) => ownSources(ink, option, finding).length > 0)
                    ? '; what a piece adds stands beside it'
                    : ''}
                </caption>
                <thead>
                  <tr>
                    <th scope="col">Piece</th>
                    <th scope="col">Size to find, mm</th>
                    <th scope="col">Best possible, mm</th>
                    <th scope="col">Expected, mm</th>
                    <th scope="col">Safe to promise, mm</th>
                  </tr>
                </thead>
                <tbody>
                  {option.findings.map((finding) => (
                    <tr>
                      <th scope="row">
                        {pieceWords(finding, names)}
                        <Numbers ink={ink} sources={ownSources(ink, option, finding)} />
                      </th>
                      <td>{finding.mustFindMm === null ? '–' : sizeWords(finding.mustFindMm)}</td>
                      <td>{mm(finding.bestMm)}</td>
                      <td>{mm(finding.expectedMm)}</td>
                      <td>{mm(finding.cautiousMm)}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            ))}
            {others.length === 0 ? null : (
              <p class="small">
                Compared at {point.name} and not taken up:{' '}
                {others.map(({ label, verdict }) => `${label} (${verdictWords(verdict)})`).join('; ')}.
              </p>
            )}
          </>
        )
      })}
    </section>
  )
}
