/** The hallway of the Trade-offs pages: findable size against one input, as pure functions of a brief. */

export type { OpeningPlace } from './coil/opening-map.ts'
export type { InputId } from './trade-offs/input.ts'
export { INPUTS, inputOf, knownInput } from './trade-offs/inputs.ts'
export { type Present, presentOf } from './trade-offs/present.ts'
export { type Series, type SizeStep, sizeAgainst, sizedMachinesAt } from './trade-offs/size-against.ts'
export { type Spectra, spectraOf } from './trade-offs/spectra.ts'
