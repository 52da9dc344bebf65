import type { Axis } from '../../src/charts/axis.ts'
import type { InputId } from '../../src/trade-offs/input.ts'
import type { Present } from '../../src/trade-offs/present.ts'
import type { Series } from '../../src/trade-offs/size-against.ts'
import type { Spectra } from '../../src/trade-offs/spectra.ts'

/** What was asked for, as it stands in the address. */
export interface Asked {
  readonly point: number
  readonly contaminant: number
  readonly machines: readonly string[]
  readonly input: InputId
}

/** Everything that can be asked for with this brief at this point. */
export interface Choices {
  readonly points: readonly string[]
  /** The pieces in words, in the order of the brief. */
  readonly pieces: readonly string[]
  readonly machines: readonly { readonly id: string; readonly label: string }[]
  readonly inputs: readonly InputId[]
  /** Machines drawn at once at most. */
  readonly mostMachines: number
  /** True where a metal detector stands at the point, which has a page of its own. */
  readonly metalDetector: boolean
}

export interface TradeOffsProps {
  readonly packed: string
  readonly title: string
  readonly asked: Asked
  readonly choices: Choices
  /** What was asked but cannot be; empty where all could. */
  readonly note: string
  readonly unit: string
  readonly scale: 'log' | 'linear'
  readonly mustFindMm: number | null
  /** What the size measures, e.g. "sphere diameter". */
  readonly measure: string
  readonly series: readonly Series[]
  readonly present: readonly Present[]
  /** Null where no x-ray machine is drawn. */
  readonly spectra: Spectra | null
  readonly print: boolean
}

/** The axes all pictures of the section share, so that they compare across. */
export interface Axes {
  readonly x: Axis
  readonly y: Axis
}

const LETTERS = 'ABCDEFGH'

/** The letter a machine is drawn under, by its place among those drawn. */
export const letterOf = (at: number): string => LETTERS[at % LETTERS.length]!

/** The address of the page for what was asked, as a link; `print` for paper. */
export function addressOf(packed: string, asked: Asked, print = false): string {
  const query = [
    `b=${packed}`,
    `point=${asked.point}`,
    ...asked.machines.map((id) => `machines=${encodeURIComponent(id)}`),
    `contaminant=${asked.contaminant}`,
    `input=${asked.input}`,
    ...(print ? ['print=1'] : []),
  ]
  return `/trade-offs?${query.join('&')}`
}
