import { dataFile } from './data-file.ts'
import type { Material } from './material.ts'
import { ownMaterial } from './own-material.ts'

/** The listed materials; asked for an id that describes a material itself, gives that one. */
class Materials extends Map<string, Material> {
  override get(id: string): Material | undefined {
    return super.get(id) ?? ownMaterial(id)
  }
  override has(id: string): boolean {
    return this.get(id) !== undefined
  }
}

/** Contaminants, packaging, detector materials and foods, by id. */
export const materials: ReadonlyMap<string, Material> = new Materials(
  dataFile<readonly Material[]>('materials.json').map((row) => [row.id, row]),
)
