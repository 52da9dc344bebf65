/** The hallway of the Trade-offs pages: findable size against one input, as pure functions of a brief. */

export type { OpeningPlace } from '../coil/opening/opening-map.ts'
export type { InputId } from './input.ts'
export { INPUTS, inputOf, knownInput } from './inputs.ts'
export { type Present, presentOf } from './present.ts'
export { type Series, type SizeStep, sizeAgainst, sizedMachinesAt } from './size-against.ts'
export { type Spectra, spectraOf } from './spectra.ts'
