/** A grid of square cells over the picture plane: cell (column, row) has its centre at left + (column + ½)·pitch. */
export interface Raster {
  readonly pitchMm: number
  readonly columns: number
  readonly rows: number
  readonly leftMm: number
  readonly topMm: number
}

/** The grid that covers a rectangle with cells of a size, starting at its left top corner. */
export function rasterOver(
  leftMm: number,
  topMm: number,
  widthMm: number,
  heightMm: number,
  pitchMm: number,
): Raster {
  return {
    pitchMm,
    columns: Math.max(1, Math.ceil(widthMm / pitchMm - 1e-9)),
    rows: Math.max(1, Math.ceil(heightMm / pitchMm - 1e-9)),
    leftMm,
    topMm,
  }
}

/** The same grid with every cell cut into k × k. */
export function finerRaster(raster: Raster, k: number): Raster {
  return { ...raster, pitchMm: raster.pitchMm / k, columns: raster.columns * k, rows: raster.rows * k }
}

export const columnMm = (raster: Raster, column: number) => raster.leftMm + (column + 0.5) * raster.pitchMm
export const rowMm = (raster: Raster, row: number) => raster.topMm + (row + 0.5) * raster.pitchMm
