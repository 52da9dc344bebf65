import type { CoilParameters } from '../parameters.ts'
import { geometryFactor } from './geometry-factor.ts'

/** Opening of the coil as the field sees it: h the shorter side, w the longer. */
export interface FieldOpening {
  readonly widthM: number
  readonly heightM: number
}

/** Electronic noise of one axis at one frequency, m³: N0·g·(h/h0)^2.5·(f0/f)^0.5. */
export function electronicNoiseM3(
  opening: FieldOpening,
  frequencyHz: number,
  parameters: CoilParameters,
): number {
  return (
    parameters.noiseM3 *
    geometryFactor(opening.widthM / opening.heightM) *
    (opening.heightM / parameters.referenceOpeningM) ** parameters.openingExponent *
    (parameters.referenceFrequencyHz / frequencyHz) ** parameters.frequencyExponent
  )
}

/**
 * Mechanical noise, m³: v·N0·g·(h/h0)³, on the reactive axis only (the direct coupling from transmitter to
 * receiver has the phase of a magnetic target).
 */
export function mechanicalNoiseM3(opening: FieldOpening, parameters: CoilParameters): number {
  return (
    parameters.mechanicalRatio *
    parameters.noiseM3 *
    geometryFactor(opening.widthM / opening.heightM) *
    (opening.heightM / parameters.referenceOpeningM) ** 3
  )
}

/**
 * Variances of (Re, Im) per frequency, m⁶, in that order: n(sX² + sV²) and n·sX². The drive power is shared
 * by the n frequencies that run together.
 */
export function noiseVariances(
  opening: FieldOpening,
  frequenciesHz: readonly number[],
  parameters: CoilParameters,
): Float64Array {
  const n = frequenciesHz.length
  const mechanical = mechanicalNoiseM3(opening, parameters) ** 2
  const variances = new Float64Array(2 * n)
  frequenciesHz.forEach((frequencyHz, i) => {
    const electronic = electronicNoiseM3(opening, frequencyHz, parameters) ** 2
    variances[2 * i] = n * (electronic + mechanical)
    variances[2 * i + 1] = n * electronic
  })
  return variances
}
