import type { Series, SizeStep } from '../../src/trade-offs/size-against.ts'
import { sizeWords, valueWords } from '../words/size.ts'
import { GAP_WORDS, INPUT_WORDS, inputValueWords } from '../words/trade-offs.ts'

/** One table: its heading, and an id for its caption that stands once on the page. */
export interface NumbersRow {
  readonly id: string
  readonly heading: string
  readonly series: Series
  readonly unit: string
}

/** The numbers behind the curves, a table each. */
export function SizeNumbers({ rows, print }: { rows: readonly NumbersRow[]; print: boolean }) {
  return (
    <details {...(print ? { open: true } : {})}>
      <summary>Numbers of these pictures</summary>
      {rows.map((row) => (
        <Numbers {...row} />
      ))}
    </details>
  )
}

function Numbers({ id, heading, series, unit }: NumbersRow) {
  const { input, present, steps } = series
  const caption = `numbers-sizes-${id}`
  const xray = steps.some(({ kV }) => kV !== null)
  return (
    <section class="scroll" tabindex={0} aria-labelledby={caption}>
      <table class="numbers">
        <caption id={caption}>{heading}, sizes in mm, rounded up</caption>
        <thead>
          <tr>
            <th scope="col" class="n">
              {INPUT_WORDS[input].name}
            </th>
            {input === 'depth-with-speed' ? (
              <th scope="col" class="n">
                Speed, m/min
              </th>
            ) : null}
            <th scope="col" class="n">
              Best possible, mm
            </th>
            <th scope="col" class="n">
              Expected, mm
            </th>
            <th scope="col" class="n">
              Safe to promise, mm
            </th>
            <th scope="col">{xray ? 'Tube' : 'Frequencies'}</th>
            <th scope="col">Without a size because</th>
          </tr>
        </thead>
        <tbody>
          {steps.map((step) => (
            <tr>
              <th scope="row" class="n">
                {inputValueWords(input, unit, step.value)}
                {step.value === present ? ' (the brief)' : ''}
              </th>
              {input === 'depth-with-speed' ? <td class="n">{valueWords(step.speedMPerMin)}</td> : null}
              <td class="n">{sizeWords(step.bestMm)}</td>
              <td class="n">{sizeWords(step.expectedMm)}</td>
              <td class="n">{cautiousWords(step)}</td>
              <td>{settingWords(step)}</td>
              <td>{step.gap === null ? '' : GAP_WORDS[step.gap]}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

function cautiousWords({ expectedMm, cautiousMm, cautiousKnown }: SizeStep): string {
  if (expectedMm === null) return '–'
  if (!cautiousKnown) return 'not computed'
  return cautiousMm === null ? 'nothing' : sizeWords(cautiousMm)
}

function settingWords({ kV, mA, frequenciesKHz }: SizeStep): string {
  if (kV === null || mA === null)
    return `${frequenciesKHz.map((one) => valueWords(Number(one.toPrecision(3)))).join(', ')} kHz`
  return `${valueWords(kV)} kV, ${Number(mA.toPrecision(2))} mA`
}
