import type { Calculation, Zone } from '../contract/index.ts'
import type { Dose } from './beam/dose.ts'
import type { Extrapolation } from './extrapolation.ts'
import type { Settling } from './places/settling.ts'

/** Why a machine cannot take this pack at all, with the figure and what is allowed. */
export interface Refusal {
  readonly id: 'too-wide' | 'too-high' | 'fan-too-wide'
  readonly given: number
  readonly allowed: number
  readonly unit: string
}

export interface XraySetting {
  readonly kV: number
  readonly mA: number
  /** What set the current: the machine's own figure, its power, its current, or a detector ceiling. */
  readonly currentLimit: 'given' | 'power' | 'current' | 'count rate' | 'full well'
}

/** One kV step of the choice: the norm over the contaminants (worst leads) and the expected sizes. */
export interface KvStep {
  readonly kV: number
  readonly mA: number
  /** (Σ (expected / size to find)⁸)^⅛; null where no step finds anything. */
  readonly norm: number | null
  readonly expectedMm: readonly (number | null)[]
}

/** Shares of the noise at the scale of one object (they add up to 1). */
export interface NoiseSplit {
  readonly photon: number
  readonly electronics: number
  readonly grain: number
  readonly unevenness: number
  readonly packaging: number
}

export interface XrayFinding {
  readonly contaminant: number
  readonly bestMm: number | null
  /** What depth, density and attenuation leave the best possible size open by. */
  readonly bestRangeMm: readonly [number, number] | null
  readonly extrapolated: Extrapolation
  readonly halfMm: number | null
  readonly expectedMm: number | null
  readonly sureMm: number | null
  readonly cautiousMm: number | null
  readonly chanceAtMustFind: number | null
  readonly chanceAnyOrientation: number | null
  readonly curve: { readonly sizesMm: readonly number[]; readonly chance: readonly number[] }
  /** Lies inside and attenuates no more than the solid food: looks like a void (null unless void-free). */
  readonly looksLikeVoid: boolean
  /** (mu_object − mu_food as packed) / mu_solid food, weighted in the first channel at this setting. */
  readonly contrast: number
  /** Largest size the model speaks of. */
  readonly limitMm: number
  /** Noise by kind at the scale of the expected size (of limitMm where null). */
  readonly noise: NoiseSplit
  /** Which assumption widens the range from expected to cautious most. */
  readonly widest: string
  /** The place whose sizes these are; empty where no places are told apart. */
  readonly place: string
  readonly settling: Settling
  readonly zones: readonly Zone[]
  readonly calculation: string
}

/** What the physics says of one x-ray machine at one inspection point. */
export interface XrayAssessment {
  readonly refusals: readonly Refusal[]
  readonly setting: XraySetting
  readonly kvSteps: readonly KvStep[]
  /** Which step comes next after the chosen one and its equals; null where there is none. */
  readonly runnerUp: number | null
  readonly channels: number
  readonly ideal: boolean
  /** Food in the beam, mm (height for a down beam, width for a side beam). */
  readonly pathMm: number
  /** pathMm × packing. */
  readonly solidPathMm: number
  /** Share of the open-beam signal that arrives behind food and pack, first channel and last channel. */
  readonly transmission: { readonly first: number; readonly last: number }
  /** Share of the open-beam signal that the packaging alone lets through, first channel. */
  readonly packagingTransmission: number
  readonly meanEnergyKeV: readonly number[]
  readonly openBeamHvlMmAl: number
  readonly objectPixelMm: number
  readonly linesPerSecond: number
  readonly positions: number
  readonly thresholdZ: number
  /** Threshold taken for expected sizes of the finer pieces: at least z, more where grains look like pieces. */
  readonly threshold: number
  /** What one pass leaves in the food; left out by hand-written assessments. */
  readonly dose?: Dose
  readonly findings: readonly XrayFinding[]
  readonly calculations: readonly Calculation[]
}
