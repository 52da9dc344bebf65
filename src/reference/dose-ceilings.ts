import { dataFile } from './data-file.ts'

/** The dose up to which x-ray inspection stays outside the irradiation law of one market, Gy. */
export interface DoseCeiling {
  readonly market: string
  readonly gray: number
  readonly rule: string
  /** Id in `sources`. */
  readonly source: string
}

interface DoseFile {
  readonly rows: readonly DoseCeiling[]
  /** What inspected objects are said to receive (µGy) and from where preservation of food begins (Gy). */
  readonly statement: {
    readonly typicalAtMostMicroGy: number
    readonly preservationFromGray: number
    readonly source: string
  }
}

const file = dataFile<DoseFile>('dose-ceilings.json')

/** By market of the brief; a market without a row has no ceiling known here. */
export const doseCeilings: ReadonlyMap<string, DoseCeiling> = new Map(
  file.rows.map((row) => [row.market, row]),
)

export const doseStatement = file.statement
