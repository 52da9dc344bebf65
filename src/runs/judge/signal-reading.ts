import type { RunRow, SignalFit } from '../../contract/index.ts'
import { fitSignal, type SignalReading, signalBound, signalSize } from '../fit/signal-line.ts'

const FEWEST_READINGS = 8
const FEWEST_SIZES = 3

/** Rows as readings: a number where there is one, else only that it lay below or above the threshold. */
function readingsOf(rows: readonly RunRow[], threshold: number): SignalReading[] {
  return rows.flatMap((row): SignalReading[] => {
    const x = Math.log(row.sizeMm!)
    if (row.signal !== undefined && row.signal > 0) return [{ x, y: Math.log(row.signal), seen: 'number' }]
    const y = Math.log(row.threshold ?? threshold)
    return [{ x, y, seen: row.found === row.runs ? 'above' : 'below' }]
  })
}

/** Sizes that pieces have, mm; null outside: a line carried that far says nothing. */
const sizeBetween = (mm: number): number | null => (mm >= 0.05 && mm <= 50 ? mm : null)

/**
 * Size by the machine's signal (the route of MIL-HDBK-1823A and ASTM E3023 for readings): ln signal along ln size,
 * censored at the threshold. Null with fewer than 8 numbers, 3 sizes or no threshold.
 */
export function readSignal(rows: readonly RunRow[], clean: readonly RunRow[]): SignalFit | null {
  const thresholds = rows.flatMap(({ threshold }) => (threshold ? [threshold] : []))
  if (thresholds.length === 0) return null
  // The highest setting met: the size shown holds at all of them.
  const threshold = Math.max(...thresholds)
  const readings = readingsOf(rows, threshold)
  const numbers = readings.filter(({ seen }) => seen === 'number')
  const sizes = new Set(rows.map(({ sizeMm }) => sizeMm))
  if (numbers.length < FEWEST_READINGS || sizes.size < FEWEST_SIZES) return null
  const line = fitSignal(readings)
  if (!line || !(line.b1 > 0)) return null
  const at = Math.log(threshold)
  const a90 = Math.exp(signalSize(line, at, 0.9))
  const bound = Math.exp(signalBound(readings, at, 0.9))
  const largest = Math.max(...rows.map(({ sizeMm }) => sizeMm!))
  const a9095 = bound <= largest ? bound : null
  const peaks = clean.flatMap(({ signal }) => (signal === undefined ? [] : [signal]))
  const productSignal = peaks.length > 0 ? Math.max(...peaks) : null
  const ofPiece = Math.exp(line.b0 + line.b1 * Math.log(a9095 ?? a90))
  return {
    pieces: readings.length,
    censored: readings.length - numbers.length,
    b0: line.b0,
    b1: line.b1,
    spread: line.spread,
    threshold,
    a50: Math.exp(signalSize(line, at, 0.5)),
    a90,
    a9095,
    productSignal,
    productSignalMm: productSignal
      ? sizeBetween(Math.exp((Math.log(productSignal) - line.b0) / line.b1))
      : null,
    margin: productSignal ? ofPiece / productSignal : null,
  }
}
