import { dataFile } from './data-file.ts'

/**
 * Mass attenuation and mass energy-absorption coefficients of one element, 1 to 200 keV, cm2/g.
 * An edge is a repeated energy: the first value holds below it, the second from it upwards.
 * To be read log-log inside an interval. Source: `xraylib`.
 */
export interface ElementTable {
  readonly symbol: string
  readonly z: number
  readonly energiesKeV: Float64Array
  readonly muRhoCm2PerG: Float64Array
  readonly muEnRhoCm2PerG: Float64Array
}

interface Row {
  readonly symbol: string
  readonly z: number
  readonly energiesKeV: readonly number[]
  readonly muRho: readonly number[]
  readonly muEnRho: readonly number[]
}

/** Elements Z = 1 to 83, by symbol. */
export const elements: ReadonlyMap<string, ElementTable> = new Map(
  dataFile<{ elements: readonly Row[] }>('attenuation.json').elements.map((row) => [
    row.symbol,
    {
      symbol: row.symbol,
      z: row.z,
      energiesKeV: Float64Array.from(row.energiesKeV),
      muRhoCm2PerG: Float64Array.from(row.muRho),
      muEnRhoCm2PerG: Float64Array.from(row.muEnRho),
    },
  ]),
)
