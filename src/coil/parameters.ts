/** What a product or a wrapper leaves after the machine has learned it. */
export interface Residual {
  /** Spread of its amplitude, share of the response. */
  readonly amplitude: number
  /** Spread of its phase, rad. */
  readonly phaseRad: number
  /** What nothing removes, share of the response, on both axes. */
  readonly remainder: number
}

/** Constants of the decision model; each says how it is known. */
export interface CoilParameters {
  /** N0, m³: calibrated once (mild steel 0.90 mm, dry, 175 × 350 mm, best single of five frequencies). */
  readonly noiseM3: number
  readonly referenceOpeningM: number
  readonly referenceFrequencyHz: number
  /** Noise of the electronics ∝ h^2.5·f^−0.5 (constant reactive power; assumption). */
  readonly openingExponent: number
  readonly frequencyExponent: number
  /** v: mechanical noise over electronic noise at the reference (assumption, a neutral choice). */
  readonly mechanicalRatio: number
  /** Assumptions, not sourced: 1° and 1 %, 20 % amplitude. */
  readonly product: Residual
  /** Assumptions: a metal layer has no temperature-dependent phase. */
  readonly wrapper: Residual
  /** Standard deviation of ln(size) that position, temperature and orientation bring (judgement). */
  readonly drySpread: number
  readonly wetSpread: number
  /** Independent looks at one pack. */
  readonly looksPerPack: number
}

export const COIL_PARAMETERS: CoilParameters = {
  noiseM3: 1.3046295622598637e-10,
  referenceOpeningM: 0.175,
  referenceFrequencyHz: 300_000,
  openingExponent: 2.5,
  frequencyExponent: 0.5,
  mechanicalRatio: 1,
  product: { amplitude: 0.2, phaseRad: 0.0175, remainder: 0.01 },
  wrapper: { amplitude: 0.2, phaseRad: 0.005, remainder: 0.003 },
  drySpread: 0.1,
  wetSpread: 0.15,
  looksPerPack: 20,
}

/** How far the cautious size moves each assumption to its unfavourable side. */
export const CAUTION = { noise: 1.3, residual: 1.5 } as const

/** The same constants on the unfavourable side: noise × 1.3, phase and remaining residuals × 1.5. */
export function cautiousParameters(parameters: CoilParameters): CoilParameters {
  const wider = (residual: Residual): Residual => ({
    amplitude: residual.amplitude,
    phaseRad: residual.phaseRad * CAUTION.residual,
    remainder: residual.remainder * CAUTION.residual,
  })
  return {
    ...parameters,
    noiseM3: parameters.noiseM3 * CAUTION.noise,
    product: wider(parameters.product),
    wrapper: wider(parameters.wrapper),
  }
}
