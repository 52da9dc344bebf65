import { dataFile } from './data-file.ts'
import type { Mark } from './material.ts'
import type { SourceText } from './sources.ts'

/** Names of the figures of upstream removal. */
export const FIGURES = [
  'grain-spread-granular',
  'grain-spread-powder',
  'largest-grain-tail',
  'mesh-clearance',
  'sieve-accepted-loss',
  'sieve-single-run',
  'strainer-mesh',
  'strainer-presentations',
  'magnet-pole-pitch',
  'magnet-length-stream',
  'magnet-length-loose',
  'magnet-half-gap',
  'magnet-holding',
  'magnet-single-pass',
  'bed-resistance-loose',
  'yield-factor',
  'yield-stress-liquid',
  'yield-stress-pieces-in-liquid',
  'yield-stress-solid',
  'yield-stress-inclusions',
  'viscosity-liquid',
  'viscosity-pieces-in-liquid',
  'viscosity-solid',
  'viscosity-inclusions',
  'cold-worked-permeability',
  'cold-worked-saturation',
  'colour-same',
  'colour-similar',
  'colour-transparent',
  'colour-distinct',
  'colour-unknown',
  'pixels-across',
  'face-seen',
  'solid-face-seen',
  'ejection',
  'single-layer-coverage',
  'ejector-pitch',
  'ejector-time',
  'fragment-sphericity',
  'grain-sphericity-round',
  'grain-sphericity-oval',
  'grain-sphericity-flat',
  'grain-sphericity-unknown',
  'slim-tumbling',
  'separator-unevenness',
  'separator-single-run',
  'wet-food-water',
  'unsized-piece',
  'unsized-wire-length',
  'unsized-flake-face',
] as const
export type FigureId = (typeof FIGURES)[number]

/** A figure of the trade or an assumption: central value and what it may be; equal ends where it is fixed. */
export interface Figure {
  readonly label: string
  readonly symbol: string
  readonly unit: string
  readonly value: number
  readonly range: readonly [number, number]
  /** Id in `separationSources`. */
  readonly source: string
  readonly mark: Mark
  readonly note: string
}

/** A fluid that pieces settle in, 20 °C. */
export interface Fluid {
  readonly label: string
  readonly densityKgPerM3: number
  readonly viscosityPaS: number
  readonly source: string
  readonly mark: Mark
}

/** Largest flux density a magnetic material adds of its own, μ0·Ms. */
export interface Saturation {
  readonly id: string
  readonly saturationTesla: number
  readonly range: readonly [number, number]
  readonly source: string
  readonly mark: Mark
  readonly note: string
}

/** Shape classes of food grains, one figure of sphericity each. */
export type GrainShape = 'round' | 'oval' | 'flat'

const file = dataFile<{
  figures: Readonly<Record<FigureId, Figure>>
  sieveOpeningsMm: { readonly mm: readonly number[]; readonly source: string; readonly mark: Mark }
  fluids: Readonly<Record<'air' | 'water', Fluid>>
  saturations: readonly Saturation[]
  colours: readonly string[]
  similarColours: readonly (readonly [string, string])[]
  foreignColours: Readonly<Record<string, readonly string[]>>
  foodColours: Readonly<Record<string, readonly string[]>>
  grainShapes: Readonly<Record<string, GrainShape>>
  sources: readonly SourceText[]
}>('separation.json')

export const figures = file.figures
/** Nominal openings of test sieves, mm, rising. */
export const sieveOpeningsMm = file.sieveOpeningsMm
export const fluids = file.fluids
/** By material id; a material without a row has no saturation of its own. */
export const saturations: ReadonlyMap<string, Saturation> = new Map(
  file.saturations.map((row) => [row.id, row]),
)
/** Words for the colours used below. */
export const colours: ReadonlySet<string> = new Set(file.colours)
/** Pairs of colours a camera may confuse. */
export const similarColours = file.similarColours
/** Colours foreign matter may have, by material id; "any" where the colour is free. */
export const foreignColours: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(file.foreignColours),
)
/** Colours of the catalogue's foods, by food id. */
export const foodColours: ReadonlyMap<string, readonly string[]> = new Map(Object.entries(file.foodColours))
/** Shape of the grains of the catalogue's granular foods, by food id. */
export const grainShapes: ReadonlyMap<string, GrainShape> = new Map(Object.entries(file.grainShapes))
export const separationSources: ReadonlyMap<string, SourceText> = new Map(
  file.sources.map((row) => [row.id, row]),
)
