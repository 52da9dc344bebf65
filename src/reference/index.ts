import { dataFile } from './data-file.ts'

export * from './archetypes.ts'
export { type ElementTable, elements } from './attenuation-table.ts'
export * from './material.ts'
export * from './materials.ts'
export { ownMaterialId, readElements } from './own-material.ts'
export * from './practice-range.ts'
export { type SourceText, sources } from './sources.ts'
export * from './tube-and-texture.ts'

/** Changes whenever a built data file changes. */
export const referenceVersion = dataFile<{ version: string }>('version.json').version
