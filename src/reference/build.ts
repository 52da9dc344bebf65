import { createHash } from 'node:crypto'
import { writeFileSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { buildMaterials } from './build/materials.ts'
import { rawJson } from './build/raw-files.ts'
import { stableJson } from './build/stable-json.ts'
import { buildAttenuation, buildBremsstrahlung, buildGranularTexture } from './build/tables.ts'

/** The built data files, by name: pure from the raw folder, the same text every time. */
export function buildReference(): Readonly<Record<string, string>> {
  const files: Record<string, string> = {
    'archetypes.json': stableJson(rawJson<{ rows: unknown[] }>('archetypes.json').rows, 1),
    'attenuation.json': stableJson(buildAttenuation(), 3),
    'bremsstrahlung.json': stableJson(buildBremsstrahlung(), 2),
    'dose-ceilings.json': stableJson(rawJson('dose-ceilings.json'), 2),
    'food-conductivity.json': stableJson(rawJson('food-conductivity.json'), 2),
    'granular-texture.json': stableJson(buildGranularTexture(), 1),
    'inserts.json': stableJson(rawJson('inserts.json'), 2),
    'materials.json': stableJson(buildMaterials(), 1),
    'metals.json': stableJson(rawJson('metals.json'), 2),
    'practice-range.json': stableJson(rawJson('practice-range.json'), 2),
    'separation.json': stableJson(rawJson('separation.json'), 2),
    'sources.json': stableJson(rawJson<{ rows: unknown[] }>('sources.json').rows, 1),
  }
  const digest = createHash('sha256')
  for (const name of Object.keys(files).sort()) digest.update(files[name]!)
  files['version.json'] = stableJson({ version: digest.digest('hex').slice(0, 12) }, 1)
  return files
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  for (const [name, text] of Object.entries(buildReference()))
    writeFileSync(new URL(`./data/${name}`, import.meta.url), text)
}
