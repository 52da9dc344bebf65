import { chanceAxis, sizeAxis } from '../../../src/charts/axis.ts'
import { CurvePlot } from '../../../src/charts/curve-plot.tsx'
import type { Present } from '../../../src/trade-offs/present.ts'
import { capital } from '../../words/capital.ts'
import { chanceWords, sizeWords } from '../../words/size.ts'
import { letterOf, type TradeOffsProps } from '../props.ts'

/** Chance of finding against size, the brief as it stands. */
export function ChanceSection({ present, mustFindMm, measure, asked, choices, print }: TradeOffsProps) {
  const drawn = present
    .map((one, at) => ({ one, letter: letterOf(at) }))
    .filter(({ one }) => one.finding.curve.sizesMm.length > 0)
  if (drawn.length === 0) return null
  const sizes = drawn.flatMap(({ one }) => one.finding.curve.sizesMm)
  return (
    <section aria-labelledby="chances">
      <h2 id="chances">Chance of finding, the brief as it stands</h2>
      <p>
        {capital(choices.pieces[asked.contaminant]!)}; its size is the {measure}. A steep curve finds or
        misses by size; a shallow one also by where in the food the piece lies.
      </p>
      <figure class="curve-figure">
        <figcaption>
          <ul class="letters">
            {drawn.map(({ one, letter }) => (
              <li>
                <strong>{letter}</strong> {one.label}
              </li>
            ))}
          </ul>
        </figcaption>
        <CurvePlot
          id="chance-curves"
          title={`Chance of finding against ${measure}`}
          description={drawn.map(({ one, letter }) => `${letter}: ${curveWords(one)}`).join(' ')}
          height={220}
          x={sizeAxis([...sizes, mustFindMm], `${measure}, mm`)}
          y={chanceAxis()}
          curves={drawn.map(({ one, letter }, at) => ({
            mark: letter,
            markAt: 0.35 + 0.15 * at,
            dash: at,
            dots: false,
            places: one.finding.curve.sizesMm.map((x, k) => ({ x, y: one.finding.curve.chance[k] ?? null })),
          }))}
          level={{ y: 0.9, words: 'found 9 times in 10' }}
          upright={mustFindMm === null ? null : { x: mustFindMm, words: `you must find ${mustFindMm} mm` }}
        />
      </figure>
      <details {...(print ? { open: true } : {})}>
        <summary>Numbers of this picture</summary>
        {drawn.map(({ one, letter }) => (
          <ChanceNumbers present={one} letter={letter} />
        ))}
      </details>
    </section>
  )
}

function curveWords({ label, finding }: Present): string {
  const { halfMm, expectedMm, sureMm, mustFindMm, chanceAtMustFind } = finding
  const asked = mustFindMm === null ? '' : ` Chance at ${mustFindMm} mm: ${chanceWords(chanceAtMustFind)}.`
  return `${label}: half the time at ${sizeWords(halfMm)} mm, 9 times in 10 at ${sizeWords(expectedMm)} mm, 995 times in 1,000 at ${sizeWords(sureMm)} mm.${asked}`
}

function ChanceNumbers({ present, letter }: { present: Present; letter: string }) {
  const caption = `numbers-chance-${letter}`
  const { sizesMm, chance } = present.finding.curve
  return (
    <section class="scroll" tabindex={0} aria-labelledby={caption}>
      <table class="numbers">
        <caption id={caption}>
          {letter}: {curveWords(present)}
        </caption>
        <thead>
          <tr>
            <th scope="col" class="n">
              Size, mm
            </th>
            <th scope="col" class="n">
              Chance of finding
            </th>
          </tr>
        </thead>
        <tbody>
          {sizesMm.map((size, at) => (
            <tr>
              <th scope="row" class="n">
                {size.toPrecision(3)}
              </th>
              <td class="n">{chanceWords(chance[at] ?? null)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
