import type { Family, Point } from '../contract/index.ts'
import type { Setup } from './setup.ts'
import type { Sizes } from './sizes-at.ts'

export const INPUT_IDS = [
  'height',
  'depth-with-speed',
  'speed',
  'grain',
  'packing',
  'unevenness',
  'kV',
  'pixel',
  'false-rejects',
  'frequency',
  'opening',
  'conductivity',
  'temperature',
] as const

export type InputId = (typeof INPUT_IDS)[number]

/** One quantity that a curve runs over, all else as it stands in the brief. */
export interface Input {
  readonly id: InputId
  readonly unit: string
  readonly scale: 'log' | 'linear'
  /** Families of machines whose sizes it can move. */
  readonly families: readonly Family[]
  /** Its value in the brief (`now`: the sizes there); null where it has none, as grain in butter. */
  readonly present: (setup: Setup, now: Sizes) => number | null
  /** False where it means nothing at this point, whatever the machine. */
  readonly appliesAt: (point: Point) => boolean
  /** From where to where the curve runs; the values themselves where only some are possible. */
  readonly range: (setup: Setup, now: Sizes) => readonly [number, number]
  readonly values?: (setup: Setup) => readonly number[]
  /** The setup with the input at a value (`now`: the sizes of the setup as it stands). */
  readonly at: (setup: Setup, value: number, now: Sizes) => Setup
}

/** Where food lies on a belt, loose or in packs. */
export const onBelt = ({ stage }: Point): boolean => stage === 'loose' || stage === 'packed'

export const everywhere = (): boolean => true
