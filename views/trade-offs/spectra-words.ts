import type { TubeSpectrum } from '../../src/trade-offs/spectra.ts'

/** A curve's value in the bin that holds an energy. */
export function atKeV(curve: readonly number[], energiesKeV: readonly number[], keV: number): number {
  const at = energiesKeV.findIndex((centre) => centre + 0.5 > keV)
  return curve[at < 0 ? curve.length - 1 : at] ?? 0
}

export function passingWords({ passing, meanSentKeV, meanThroughKeV, kV }: TubeSpectrum): string {
  const of1000 = passing >= 0.001 ? Math.round(passing * 1000) : 'fewer than 1'
  return `${kV} kV: of 1,000 photons ${of1000} come through; mean energy ${meanSentKeV.toFixed(0)} keV before, ${meanThroughKeV.toFixed(0)} keV behind`
}
