import { materials } from '../../reference/index.ts'

/** Materials by the names people use. */
export const materialNames: ReadonlyMap<string, string> = new Map(
  [...materials.values()].map(({ id, label }) => [id, label]),
)
