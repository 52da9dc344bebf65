import { linearAxis, sizeAxis } from '../../../src/charts/axis.ts'
import { CurvePlot } from '../../../src/charts/curve-plot.tsx'
import { TurnedSketch } from '../../../src/charts/turned-sketch.tsx'
import type { TurnedPiece } from '../../../src/trade-offs/turned-piece.ts'
import { capital } from '../../words/capital.ts'
import { sizeWords } from '../../words/size.ts'
import type { MetalPicture } from '../metal-props.ts'

/** A wire or flake turned from along the travel to across it. */
export function TurnedSection({ picture, print }: { picture: MetalPicture; print: boolean }) {
  const { words, measure, steps, here } = picture.turned
  const sizes = steps.map(({ expectedMm }) => expectedMm)
  return (
    <section aria-labelledby="turned">
      <h2 id="turned">A piece turned</h2>
      <p>
        {capital(words)}, at {here.angleDeg}° to the travel: {sizeText(here)}. Its answer there is{' '}
        {Math.round(here.response * 100)} % of the strongest it can give at {picture.frequenciesKHz[0]} kHz.
        Iron wire answers best lying along the travel, copper and austenitic stainless wire lying across it.
      </p>
      <div class="ladders">
        <figure class="curve-figure">
          <TurnedSketch
            id="turned-sketch"
            angleDeg={here.angleDeg}
            words={`${words} at ${here.angleDeg} degrees to the travel, between three coils`}
          />
        </figure>
        <figure class="curve-figure">
          <figcaption>
            <h3>Expected {measure} against the angle</h3>
          </figcaption>
          <CurvePlot
            id="turned-curve"
            title={`Expected ${measure} against the angle to the travel`}
            description={steps.map((step) => `${step.angleDeg}°: ${sizeText(step)}.`).join(' ')}
            height={170}
            x={linearAxis(0, 90, 'angle to the travel, degrees', String, 6)}
            y={sizeAxis(sizes, `expected ${measure}, mm`)}
            curves={[
              {
                mark: '',
                dash: 0,
                dots: true,
                places: steps.map((step) => ({ x: step.angleDeg, y: step.expectedMm })),
                ring: { x: here.angleDeg, y: here.expectedMm },
              },
            ]}
            upright={{ x: here.angleDeg, words: `${here.angleDeg}°` }}
          />
        </figure>
      </div>
      <details {...(print ? { open: true } : {})}>
        <summary>Numbers of this picture</summary>
        <section class="scroll" tabindex={0} aria-labelledby="numbers-turned">
          <table class="numbers">
            <caption id="numbers-turned">By angle to the travel</caption>
            <thead>
              <tr>
                <th scope="col" class="n">
                  Angle, degrees
                </th>
                <th scope="col" class="n">
                  Expected {measure}, mm
                </th>
                <th scope="col" class="n">
                  Answer, % of the strongest
                </th>
              </tr>
            </thead>
            <tbody>
              {steps.map((step) => (
                <tr>
                  <th scope="row" class="n">
                    {step.angleDeg}
                  </th>
                  <td class="n">{step.expectedMm === null ? 'no size' : sizeWords(step.expectedMm)}</td>
                  <td class="n">{Math.round(step.response * 100)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </section>
  )
}

const sizeText = ({ expectedMm }: TurnedPiece) =>
  expectedMm === null ? 'no size to expect' : `${sizeWords(expectedMm)} mm expected`
