import { linearAxis, sizeAxis } from '../../../src/charts/axis.ts'
import { CurvePlot } from '../../../src/charts/curve-plot.tsx'
import type { Present, TubeChoice } from '../../../src/trade-offs/present.ts'
import { CURRENT_LIMIT_WORDS } from '../../words/dose.ts'
import { sizeWords } from '../../words/size.ts'
import { letterOf, type TradeOffsProps } from '../props.ts'

/** Which tube voltage each x-ray machine was given and why; each contaminant's size against voltage. */
export function VoltageSection({ present, choices, asked, print }: TradeOffsProps) {
  const drawn = present.flatMap((one, at) =>
    one.tube ? [{ one, tube: one.tube, letter: letterOf(at) }] : [],
  )
  if (drawn.length === 0) return null
  return (
    <section aria-labelledby="voltage">
      <h2 id="voltage">Tube voltage and current</h2>
      <p>
        Where a machine leaves a choice, it is given the voltage at which all contaminants together do best
        against the sizes asked, those hardest to meet weighing most. Expected size of every contaminant, the
        brief as it stands; at voltages not chosen it is estimated with the threshold of the middle one:
      </p>
      <ol class="letters">
        {choices.pieces.map((piece, at) => (
          <li>
            <strong>{at + 1}</strong> {piece}
          </li>
        ))}
      </ol>
      <div class="ladders">
        {drawn.map(({ one, tube, letter }) => (
          <VoltagePanel present={one} tube={tube} letter={letter} wanted={asked.contaminant} />
        ))}
      </div>
      <details {...(print ? { open: true } : {})}>
        <summary>Numbers of these pictures</summary>
        {drawn.map(({ one, tube, letter }) => (
          <VoltageNumbers present={one} tube={tube} letter={letter} pieces={choices.pieces} />
        ))}
      </details>
    </section>
  )
}

interface PanelProps {
  readonly present: Present
  readonly tube: TubeChoice
  readonly letter: string
}

const settingWords = ({ kV, mA, currentLimit }: TubeChoice) =>
  `${kV} kV, ${Number(mA.toPrecision(2))} mA; current limited by: ${CURRENT_LIMIT_WORDS[currentLimit] ?? currentLimit}`

/** How near the next best setting comes. */
function runnerUpWords({ runnerUp, steps }: TubeChoice): string {
  if (steps.length < 2) return ''
  if (runnerUp === null) return 'All other voltages do as well within 3 %.'
  const percent = Math.round(runnerUp.worseBy * 100)
  return `Next best outside the 3 % that count as equal: ${runnerUp.kV} kV, ${percent} % worse over all.`
}

function VoltagePanel({ present, tube, letter, wanted }: PanelProps & { wanted: number }) {
  const { steps } = tube
  const voltages = steps.map(({ kV }) => kV)
  const sizes = steps.flatMap(({ expectedMm }) => expectedMm)
  const count = steps[0]?.expectedMm.length ?? 0
  return (
    <figure class="curve-figure">
      <figcaption>
        <h3>
          {letter}: {present.label}
        </h3>
        <p class="small">
          {settingWords(tube)}. {runnerUpWords(tube)}
        </p>
      </figcaption>
      {steps.length > 1 ? (
        <CurvePlot
          id={`voltage-${letter}`}
          title={`${present.label}: expected size against tube voltage`}
          description={`${settingWords(tube)}. A line per contaminant, numbered as in the list; the numbers stand beneath.`}
          height={190}
          x={linearAxis(Math.min(...voltages), Math.max(...voltages), 'tube voltage, kV')}
          y={sizeAxis(sizes, 'expected size, mm')}
          curves={Array.from({ length: count }, (_, c) => ({
            mark: String(c + 1),
            dash: c === wanted ? 0 : 1,
            thin: c !== wanted,
            dots: false,
            places: steps.map(({ kV, expectedMm }) => ({ x: kV, y: expectedMm[c] ?? null })),
          }))}
          upright={{ x: tube.kV, words: `chosen: ${tube.kV} kV` }}
        />
      ) : (
        <p>This machine runs at one voltage only.</p>
      )}
    </figure>
  )
}

function VoltageNumbers({ present, tube, letter, pieces }: PanelProps & { pieces: readonly string[] }) {
  const caption = `numbers-voltage-${letter}`
  return (
    <section class="scroll" tabindex={0} aria-labelledby={caption}>
      <table class="numbers">
        <caption id={caption}>
          {letter}: {present.label}, expected size in mm, rounded up
        </caption>
        <thead>
          <tr>
            <th scope="col" class="n">
              Voltage, kV
            </th>
            <th scope="col" class="n">
              Current, mA
            </th>
            {pieces.map((piece) => (
              <th scope="col" class="n">
                {piece}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {tube.steps.map(({ kV, mA, expectedMm }) => (
            <tr>
              <th scope="row" class="n">
                {kV}
                {kV === tube.kV ? ' (chosen)' : kV === tube.runnerUp?.kV ? ' (next best)' : ''}
              </th>
              <td class="n">{Number(mA.toPrecision(2))}</td>
              {expectedMm.map((size) => (
                <td class="n">{sizeWords(size)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}
