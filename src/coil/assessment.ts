import type { Calculation, Place, Zone } from '../contract/index.ts'
import type { MissedAgain } from './decide/last-crossing.ts'
import type { FoodConductivity } from './food/food-conductivity.ts'
import type { Arrangement, Opening } from './opening/opening.ts'
import type { LayerKind } from './pack/packaging.ts'
import type { Orientation } from './piece/target.ts'

/** Why a machine cannot take this product at all, with the figure and what is allowed. */
export interface CoilRefusal {
  readonly id: 'too-wide' | 'too-high' | 'over-full'
  readonly given: number
  readonly allowed: number
  readonly unit: string
}

/** One choice of frequencies and what it makes of all contaminants. */
export interface FrequencyStep {
  readonly frequenciesKHz: readonly number[]
  /** Sizes it is judged by; null: not found, or iron that it does not suit at every permeability it may have. */
  readonly judgedMm: readonly (number | null)[]
  /** (Σ (size / size to find)⁸)^⅛; null where no choice finds anything. */
  readonly norm: number | null
}

/** How much of the opening the product takes. */
export interface Filling {
  /** Height of the product over the opening's (its shorter side). */
  readonly heightShare: number
  /** Section of the product over the section of the opening or pipe. */
  readonly areaShare: number
  readonly basis: 'pack' | 'flow' | 'full, throughput not known'
  /** Speed at the coil, m/s. */
  readonly speedMPerS: number
}

/** What the food and the pack add to the signal at one frequency. */
export interface Background {
  readonly frequencyKHz: number
  readonly productM3: number
  readonly productPhaseDeg: number | null
  /** Product over a 1 mm ball of mild steel. */
  readonly productOverSteelBall: number
  readonly layersM3: number
  readonly layersOverSteelBall: number
  /** |T²| of closed layers: 1 where there is none. */
  readonly insideShare: number
}

export interface CoilLayer {
  readonly material: string
  readonly place: Place
  readonly kind: LayerKind
  readonly conductanceS: number
  readonly mostConductanceS: number
  readonly magnetic: boolean
  readonly film: boolean
}

export type Widest =
  | 'product conductivity'
  | 'product and pack residual'
  | 'noise'
  | 'orientation'
  | 'grade of the metal'
  | 'permeability of iron'
  | 'common-practice floor'
  | 'film resistance'
  | ''

export interface OrientationSize {
  readonly orientation: Orientation
  readonly bestMm: number | null
  readonly expectedMm: number | null
}

export interface CoilFinding {
  readonly contaminant: number
  /** A material the coil has an answer from; false: not a metal, or no electrical data. */
  readonly answers: boolean
  readonly bestMm: number | null
  /** The same with the noise of the machine on its favourable and its unfavourable side; null where it finds nothing. */
  readonly bestRangeMm: readonly [number, number] | null
  readonly halfMm: number | null
  readonly expectedMm: number | null
  readonly sureMm: number | null
  readonly cautiousMm: number | null
  readonly chanceAtMustFind: number | null
  readonly chanceAnyOrientation: number | null
  readonly curve: { readonly sizesMm: readonly number[]; readonly chance: readonly number[] }
  /** Largest size the model speaks of: 12 mm, what the bore lets through, and the shape's own limit. */
  readonly limitMm: number
  /** The orientation that needs the larger piece; null for spheres. */
  readonly weakOrientation: Orientation | null
  readonly orientations: readonly OrientationSize[]
  /** Sizes missed although a smaller one is found. */
  readonly missedAgain: readonly MissedAgain[]
  /**
   * Iron that would have to be so large that it turns flux-expelling at every frequency in use, or above a third of
   * the opening: no size is given.
   */
  readonly frequencyUnsuitable: boolean
  /** Common-practice floor under cautiousMm, as a size of this shape; null where it does not apply. */
  readonly floorMm: number | null
  /** Which assumption widens the range from expected to cautious most. */
  readonly widest: Widest
  readonly zones: readonly Zone[]
  readonly calculation: string
}

/** What the physics says of one metal detector at one inspection point. */
export interface CoilAssessment {
  readonly family: 'coil' | 'static-field'
  readonly arrangement: Arrangement
  readonly refusals: readonly CoilRefusal[]
  readonly opening: Opening
  /** Smallest usual opening for the pack and what it would find, where the one used is larger; else null. */
  readonly fitting: { readonly opening: Opening; readonly expectedMm: readonly (number | null)[] } | null
  /** Frequencies that run together. */
  readonly frequenciesKHz: readonly number[]
  readonly frequencySteps: readonly FrequencyStep[]
  /** The next best choice outside what counts as equal; null where there is none. */
  readonly frequencyRunnerUp: FrequencyStep | null
  readonly conductivity: FoodConductivity
  /** What the machine cannot learn of the food, assumed or read on the line; null where the food gives no signal. */
  readonly residual: {
    readonly amplitudePct: number
    readonly phaseDeg: number
    readonly read: boolean
  } | null
  /** True where the food enters as a signal (conducts, or carries iron powder). */
  readonly productSignal: boolean
  readonly susceptibility: number
  readonly background: readonly Background[]
  readonly layers: readonly CoilLayer[]
  readonly filling: Filling
  readonly metalFreeZone: { readonly fixedMm: number; readonly movingMm: number }
  /** Gap the coil wants between packs and the one there is (null where no pack rate is given). */
  readonly packGap: { readonly neededMm: number; readonly givenMm: number | null }
  readonly thresholdZ: number
  readonly spread: number
  readonly findings: readonly CoilFinding[]
  /** Share of the section the throughput would need at this speed; above 1 it cannot pass. */
  readonly streamShare: number
  readonly calculations: readonly Calculation[]
}
