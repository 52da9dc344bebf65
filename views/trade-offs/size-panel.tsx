import { type Band, CurvePlot, type Place as PlotPlace } from '../../src/charts/curve-plot.tsx'
import type { StripRun } from '../../src/charts/setting-strip.tsx'
import {
  isNewSetting,
  type SettingRun,
  settingJumps,
  settingRuns,
} from '../../src/trade-offs/setting-changes.ts'
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
  const jumps = jumpWords(series, unit)
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
            places: expectedPlaces(series),
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
        settings={stripOf(series)}
      />
      {jumps === '' ? null : <p class="small">{jumps}</p>}
    </figure>
  )
}

/** True where the curve runs over the setting itself, so that a change of it is no news. */
const isSetting = ({ input }: Series) => input === 'kV' || input === 'frequency'

/** Expected sizes along a curve, with the places at which the machine is set otherwise. */
export const expectedPlaces = (series: Series): PlotPlace[] =>
  series.steps.map((step, at) => ({
    x: step.value,
    y: step.expectedMm,
    ...(!isSetting(series) && isNewSetting(series.steps, at) ? { newSetting: true } : {}),
  }))

const settingOf = ({ kV, frequenciesKHz }: SettingRun) =>
  kV === null ? `${frequenciesKHz.map(tidy).join(' + ')} kHz` : `${tidy(kV)} kV`
const tidy = (value: number) => String(Number(value.toPrecision(3)))

/** The settings along the axis, each up to half way to the next; none where the setting never changes. */
function stripOf(series: Series): StripRun[] {
  const runs = isSetting(series) ? [] : settingRuns(series.steps)
  if (runs.length < 2) return []
  const log = series.steps.every(({ value }) => value > 0)
  const between = (a: number, b: number) => (log ? Math.sqrt(a * b) : (a + b) / 2)
  return runs.map((run, at) => ({
    from: at === 0 ? run.from.value : between(runs[at - 1]!.to.value, run.from.value),
    to: at === runs.length - 1 ? run.to.value : between(run.to.value, runs[at + 1]!.from.value),
    words: settingOf(run),
  }))
}

/** "The setting jumps from 45 kV to 80 kV between 21 mm and 25 mm." Empty where it never does. */
function jumpWords(series: Series, unit: string): string {
  const at = (value: number) => inputValueWords(series.input, unit, value)
  const jumps = isSetting(series) ? [] : settingJumps(series.steps)
  const told = jumps.map(
    ({ before, after }) =>
      `from ${settingOf(before)} to ${settingOf(after)} between ${at(before.to.value)} and ${at(after.from.value)}`,
  )
  return told.length === 0 ? '' : `The setting jumps ${told.join(', ')}.`
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
