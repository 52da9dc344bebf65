import type { Option, OptionGroup } from '../../../views/brief/sheet.ts'
import { CHOICE_WORDS } from '../../../views/words/choices.ts'
import { NEAREST_KINDS } from '../../brief/form/quoted-fields.ts'
import { archetypes, type Material, type MaterialKind, materials } from '../../reference/index.ts'

const KINDS: Partial<Record<MaterialKind, string>> = {
  metal: 'Metal',
  glass: 'Glass',
  stone: 'Stone and ceramics',
  bone: 'Bone and cartilage',
  polymer: 'Plastic and rubber',
  organic: 'Wood, shell, insect',
  paper: 'Paper and board',
}

const all = [...materials.values()]
const option = ({ id, label }: Material): Option => ({ value: id, words: label })
const byLabel = (a: Option, b: Option) => a.words.localeCompare(b.words, 'en')

function grouped(kinds: readonly MaterialKind[]): OptionGroup[] {
  return kinds.map((kind) => ({
    words: KINDS[kind] ?? kind,
    options: all.filter((material) => material.kind === kind).map(option),
  }))
}

/** Foods by their structure, contaminants and packaging by kind, machines as listed. */
export const foods: readonly OptionGroup[] = Object.entries(CHOICE_WORDS.structure ?? {})
  .map(([structure, words]) => ({
    words,
    options: all
      .filter((material) => material.food?.structure === structure)
      .map(option)
      .sort(byLabel),
  }))
  .filter((group) => group.options.length > 0)

export const contaminants = grouped(['metal', 'glass', 'stone', 'bone', 'polymer', 'organic'])
export const packaging = grouped(['polymer', 'paper', 'glass', 'metal'])
export const machines: readonly Option[] = [...archetypes.values()].map(({ id, label }) => ({
  value: id,
  words: label,
}))
export const detectors: readonly Option[] = machines.filter(({ value }) => NEAREST_KINDS.includes(value))
export const materialNames: ReadonlyMap<string, string> = new Map(all.map(({ id, label }) => [id, label]))
