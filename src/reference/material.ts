export type Mark = 'V' | 'V2' | 'C' | 'M' | 'A'

export type MaterialKind =
  | 'glass'
  | 'stone'
  | 'bone'
  | 'polymer'
  | 'organic'
  | 'metal'
  | 'paper'
  | 'scintillator'
  | 'semiconductor'
  | 'gas'
  | 'food'

/** g per 100 g; carbohydrate is by difference and includes the fibre. */
export interface Proximate {
  readonly waterPct: number
  readonly proteinPct: number
  readonly fatPct: number
  readonly carbohydratePct: number
  readonly ashPct: number
  readonly fibrePct: number
}

export interface Food {
  readonly proximate: Proximate | null
  /** Share of the volume that is food, 0 to 1; 1 for a block or a liquid. */
  readonly packing: number
  /** Diameter of the equal-volume grain; thickness of a plate; null where there is no grain. */
  readonly grainMm: number | null
  readonly bulkDensityGPerCm3: number
  readonly structure:
    | 'solid'
    | 'granular'
    | 'powder'
    | 'liquid'
    | 'pieces-in-liquid'
    | 'inclusions'
    | 'plates'
  /** Start value of the thickness variation, rms (source `unevenness-judgement`, mark A). */
  readonly unevennessMm: number
  /** Where that of its structure does not hold: holes and folds of a crumb (judgement, mark A). */
  readonly unevennessRangeMm?: readonly [number, number]
  /** Always false here: only a person can declare a food free of voids. */
  readonly voidFree: boolean
}

export interface Material {
  readonly id: string
  readonly label: string
  readonly kind: MaterialKind
  /** Of the pore-free material; of bread, biscuits, flakes and kibble the body with its own pores. */
  readonly densityGPerCm3: number
  readonly densityRange: readonly [number, number] | null
  /** Element symbol to mass fraction; sums to 1 within 2e-3. */
  readonly massFractions: Readonly<Record<string, number>>
  /** Id in `sources`. */
  readonly source: string
  /** How good the composition is; where density or packing are weaker the source or note says so. */
  readonly mark: Mark
  readonly note: string
  readonly food: Food | null
  /** Ids of the materials a person may mean by this word, itself included. */
  readonly family: readonly string[]
}
