import { type Band, CurvePlot } from '../../src/charts/curve-plot.tsx'
import type { Series, SizeStep } from '../../src/trade-offs/size-against.ts'
import { GAP_WORDS, INPUT_WORDS, inputValueWords } from '../words/trade-offs.ts'
import type { Axes } from './props.ts'
import { endsWords } from './series-words.ts'

interface Props {
  readonly id: string
  readonly heading: string
  readonly series: Series
  readonly axes: Axes
  readonly unit: string
  readonly mustFindMm: number | null
}

/** One machine: best possible, expected, and how far the promise may lie above it. */
export function SizePanel({ id, heading, series, axes, unit, mustFindMm }: Props) {
  const { steps, present, input, now } = series
  return (
    <figure class="curve-figure">
      <figcaption>
        <h3>{heading}</h3>
      </figcaption>
      <CurvePlot
        id={id}
        title={`${series.label}: findable size against ${INPUT_WORDS[input].name}`}
        description={endsWords(series, unit)}
        height={220}
        x={axes.x}
        y={axes.y}
        bands={bandsOf(steps)}
        curves={[
          {
            mark: '',
            dash: 2,
            dots: false,
            thin: true,
            places: steps.map((step) => ({ x: step.value, y: step.bestMm })),
          },
          {
            mark: '',
            dash: 0,
            dots: true,
            places: steps.map((step) => ({ x: step.value, y: step.expectedMm })),
            ring: present === null ? null : { x: present, y: now.expectedMm },
          },
        ]}
        level={mustFindMm === null ? null : { y: mustFindMm, words: `you must find ${mustFindMm} mm` }}
        upright={
          present === null
            ? null
            : { x: present, words: `the brief: ${inputValueWords(input, unit, present)}` }
        }
        gaps={gapsOf(steps)}
      />
    </figure>
  )
}

/**
 * Areas from expected to cautious between the steps at which the cautious size is known, broken where there is
 * no expected size; open where nothing can be promised at either end.
 */
export function bandsOf(steps: readonly SizeStep[]): Band[] {
  const bands: { open: boolean; lower: Place[]; upper: Place[] }[] = []
  let from = -1
  steps.forEach((step, at) => {
    if (step.expectedMm === null) from = -1
    else if (step.cautiousKnown) {
      if (from >= 0) bands.push(bandBetween(steps.slice(from, at + 1)))
      from = at
    }
  })
  return bands
}

type Place = Band['lower'][number]

function bandBetween(steps: readonly SizeStep[]): { open: boolean; lower: Place[]; upper: Place[] } {
  const ends = [steps[0]!, steps.at(-1)!]
  const upper = ends.flatMap(({ value, cautiousMm }) =>
    cautiousMm === null ? [] : [{ x: value, y: cautiousMm }],
  )
  return {
    open: upper.length < 2,
    lower: steps.map(({ value, expectedMm }) => ({ x: value, y: expectedMm! })),
    upper,
  }
}

/** Neighbouring places without a size, their reasons said once in their middle. */
export function gapsOf(steps: readonly SizeStep[]): { x: number; words: string }[] {
  const runs: SizeStep[][] = []
  steps.forEach((step, at) => {
    if (step.gap === null) return
    if (at > 0 && steps[at - 1]!.gap !== null) runs.at(-1)!.push(step)
    else runs.push([step])
  })
  return runs.map((run) => ({
    x: run[Math.floor(run.length / 2)]!.value,
    words: [...new Set(run.map(({ gap }) => GAP_WORDS[gap!]))].join(', '),
  }))
}
