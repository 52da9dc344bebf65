import { dataFile } from './data-file.ts'

interface PracticeRange {
  readonly structures: readonly string[]
  readonly pathMm: readonly [number, number]
  readonly sourceToDetectorMm: readonly [number, number]
  readonly beam: string
  readonly factors: { readonly food: number; readonly depth: number; readonly machine: number }
}

/** Where x-ray sizes were read in practice, and what the size to promise is widened by further away. */
export const practiceRange: PracticeRange = dataFile<PracticeRange>('practice-range.json')
