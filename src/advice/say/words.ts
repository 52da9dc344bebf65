import type { Brief } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'

/** A contaminant in words: "quartz sphere", "316 wire 10 mm long". */
export function contaminantWords(brief: Brief, index: number): string {
  const c = brief.contaminants[index]!
  const name = materials.get(c.material)?.label ?? c.material
  if (c.shape === 'wire') return `${name} wire ${c.lengthMm} mm long`
  if (c.shape === 'flake') return `${name} flake of ${c.faceMm2} mm²`
  return `${name} sphere`
}

/** "a", "a and b", "a, b and c". */
export function wordList(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}

/** A length as a reader sees it: 0.85 mm, 2.9 mm. */
export const mm = (value: number) => `${value.toFixed(value < 1 ? 2 : 1)} mm`
