export { geometryProblems, pitchMm } from './geometry.ts'
export { nearestWord } from './nearest.ts'
export { type Parsed, parseBrief } from './parse.ts'
export { HAS_GAPS } from './product-defaults.ts'
