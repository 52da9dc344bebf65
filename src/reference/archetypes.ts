import { dataFile } from './data-file.ts'
import type { Mark } from './material.ts'

export type ArchetypeStage = 'loose' | 'pumped' | 'free-fall' | 'packed'

/** What every archetype says beside the machine's own figures. */
interface Archetype {
  id: string
  label: string
  burden: number
  maxWidthMm?: number
  maxHeightMm?: number
  /** Inspection stages where this class of machine is used. */
  stages: ArchetypeStage[]
  /** False: shown for teaching, never ranked. */
  ranked: boolean
  /** Which figures lie in published ranges and which are assumptions. */
  basis: string
  /** Ids in `sources`. */
  sources: string[]
  mark: Mark
}

export interface ArchetypeLayer {
  copperBeforeMm?: number
  scintillator: 'gos' | 'csi'
  mgPerCm2: number
  swank: number
  electronsPerKeV: number
  noiseElectrons: number
}

/** A usual size of a technology: what of its figures is another's, and words that go after its label. */
export interface ArchetypeBuild {
  build: 'pack' | 'wide' | 'case' | 'bulk'
  label?: string
  maxHeightMm: number
  maxWidthMm: number
  sourceToDetectorMm?: number
  magnification?: number
  kVRange?: [number, number]
  maxPowerW?: number
  maxMA?: number
}

export interface XrayArchetype extends Archetype {
  family: 'xray'
  /** Smallest first; none where the technology is compared in one size only. */
  builds?: ArchetypeBuild[]
  build?: 'pipe'
  tiltDeg?: number
  kVRange: [number, number]
  maxPowerW: number
  maxMA: number
  pixelMm: number
  sourceToDetectorMm: number
  magnification: number
  filterAlMm: number
  windowBeMm: number
  anodeAngleDeg: number
  blurPixels: number
  beam: 'down' | 'side'
  views: number
  beltMm: number
  beamWidthMm: number
  detectorLayers?: ArchetypeLayer[]
  windowsKeV?: [number, number][]
  sensor?: 'cdte'
  sensorMm?: number
  maxCountsPerMm2S?: number
}

export interface CoilArchetype extends Archetype {
  family: 'coil'
  frequenciesKHz: number[]
  use: 'together' | 'choose'
  mostAtOnce?: number
  arrangement: 'tunnel' | 'free-fall' | 'pipe'
}

export interface StaticFieldArchetype extends Archetype {
  family: 'static-field'
}

export interface OpticalArchetype extends Archetype {
  family: 'optical'
  pixelMm: number
  lanesWidthMm: number
}

export interface MagnetArchetype extends Archetype {
  family: 'magnet'
  surfaceTesla: number
  reachMm: number
}

export interface SieveArchetype extends Archetype {
  family: 'sieve'
}

export interface DensityArchetype extends Archetype {
  family: 'density'
  velocityRatio: number
}

/** A machine of a class, in the machine shape of the contract, with what stands behind its figures. */
export type ArchetypeData =
  | XrayArchetype
  | CoilArchetype
  | StaticFieldArchetype
  | OpticalArchetype
  | MagnetArchetype
  | SieveArchetype
  | DensityArchetype

/** The figures of an archetype as a machine has them, in one of its builds; its own without one. */
export function figuresOf(archetype: ArchetypeData, build?: ArchetypeBuild): Record<string, unknown> {
  const {
    stages: _stages,
    ranked: _ranked,
    basis: _basis,
    sources: _sources,
    mark: _mark,
    ...figures
  } = archetype
  const { builds: _builds, ...own } = figures as typeof figures & { builds?: unknown }
  if (!build) return own
  const { label, ...others } = build
  return { ...own, ...others, label: label ? `${archetype.label}, ${label}` : archetype.label }
}

/** Archetypes by id, in the order they are listed to a person. */
export const archetypes: ReadonlyMap<string, ArchetypeData> = new Map(
  dataFile<readonly ArchetypeData[]>('archetypes.json').map((row) => [row.id, row]),
)
