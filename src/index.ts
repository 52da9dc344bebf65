/**
 * The public face of the package: a brief is read and checked by `parseBrief`, advice given by `advise`. Schemas
 * (zod) and types describe both. Everything else is the inside of the house and may move.
 */
export { type AdviseOptions, advise } from './advise.ts'
export { type Parsed, parseBrief } from './brief/index.ts'
export * from './contract/index.ts'
