import { CurvePlot } from '../../../src/charts/curve-plot.tsx'
import type { Series } from '../../../src/trade-offs/size-against.ts'
import { capital } from '../../words/capital.ts'
import { INPUT_WORDS, inputValueWords } from '../../words/trade-offs.ts'
import { inputAxis, sizesAxis } from '../axes-of.ts'
import { HowToRead } from '../how-to-read.tsx'
import { type Axes, letterOf, type TradeOffsProps } from '../props.ts'
import { endsWords } from '../series-words.ts'
import { SizeNumbers } from '../size-numbers.tsx'
import { expectedPlaces, SizePanel } from '../size-panel.tsx'

/** The curves: all machines together by their expected size, then each with its range. */
export function SizeSection(props: TradeOffsProps) {
  const { asked, series, choices, measure } = props
  const { name, held } = INPUT_WORDS[asked.input]
  const drawn = series.map((one, at) => ({ one, letter: letterOf(at) }))
  const moved = drawn.filter(({ one }) => one.steps.length > 0)
  const still = drawn.filter(({ one }) => one.steps.length === 0)
  const axes =
    moved.length > 0
      ? {
          x: inputAxis(series, name, props.unit, props.scale),
          y: sizesAxis(series, props.mustFindMm),
        }
      : null
  return (
    <section aria-labelledby="sizes">
      <h2 id="sizes">Findable size against {name}</h2>
      <p>
        {capital(choices.pieces[asked.contaminant]!)}; its size is the {measure}. {held}
      </p>
      {still.map(({ one }) => (
        <p>
          <strong>{one.label}:</strong> {name} does not enter its sizes here.
        </p>
      ))}
      {series.length === 0 ? <p>No machine with a computed size stands at this point.</p> : null}
      {axes && moved.length > 1 ? <Together {...props} axes={axes} moved={moved} /> : null}
      {axes ? (
        <>
          <HowToRead series={series} />
          <div class="ladders">
            {moved.map(({ one, letter }) => (
              <SizePanel
                id={`sizes-${letter}`}
                heading={`${letter}: ${one.label}`}
                series={one}
                axes={axes}
                unit={props.unit}
                mustFindMm={props.mustFindMm}
              />
            ))}
          </div>
          <SizeNumbers
            rows={moved.map(({ one, letter }) => ({
              id: letter,
              heading: `${letter}: ${one.label}`,
              series: one,
              unit: props.unit,
            }))}
            print={props.print}
          />
        </>
      ) : null}
    </section>
  )
}

interface TogetherProps extends TradeOffsProps {
  readonly axes: Axes
  readonly moved: readonly { readonly one: Series; readonly letter: string }[]
}

function Together({ axes, moved, asked, unit, mustFindMm }: TogetherProps) {
  const { name } = INPUT_WORDS[asked.input]
  const presents = [...new Set(moved.flatMap(({ one }) => one.present ?? []))]
  return (
    <figure class="curve-figure">
      <figcaption>
        <h3>Expected size, all together</h3>
        <ul class="letters">
          {moved.map(({ one, letter }) => (
            <li>
              <strong>{letter}</strong> {one.label}
            </li>
          ))}
        </ul>
      </figcaption>
      <CurvePlot
        id="sizes-together"
        title={`Expected size against ${name}`}
        description={moved.map(({ one, letter }) => `${letter}: ${endsWords(one, unit)}`).join(' ')}
        height={260}
        x={axes.x}
        y={axes.y}
        curves={moved.map(({ one, letter }, at) => ({
          mark: letter,
          dash: at,
          dots: true,
          places: expectedPlaces(one),
          ring: one.present === null ? null : { x: one.present, y: one.now.expectedMm },
        }))}
        level={mustFindMm === null ? null : { y: mustFindMm, words: `you must find ${mustFindMm} mm` }}
        upright={
          presents.length === 1
            ? { x: presents[0]!, words: `the brief: ${inputValueWords(asked.input, unit, presents[0]!)}` }
            : null
        }
      />
    </figure>
  )
}
