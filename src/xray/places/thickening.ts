/**
 * Heel, shoulder, seam and folded corner put 3 to 10 times the plain layer in the beam (common practice, no source);
 * the mild end is computed.
 */
export const THICKENING = 3

export const THICKENING_WORDS = `taken as ${THICKENING} times the plain layer (common practice: 3 to 10 times)`
