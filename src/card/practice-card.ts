import { parseBrief } from '../brief/index.ts'
import type { Brief } from '../contract/index.ts'
import type { CardOptions } from './card.ts'

/**
 * A small card that goes through what every card goes through (grain, two energies, balls and a wire): who has drawn it
 * draws the next one in half the time, as the engine has translated by then what runs often.
 */
export function practiceCard(): { readonly brief: Brief; readonly options: CardOptions } {
  const parsed = parseBrief({
    product: { food: 'hazelnut', grainMm: 13 },
    points: [{ heightMm: 30, widthMm: 70, lengthMm: 90, speedMPerMin: 30 }],
    contaminants: [{ material: 'ss304', shape: 'wire', lengthMm: 10 }, { material: 'glass_any' }],
  })
  if (!parsed.ok) throw new Error(parsed.problems[0]!.message)
  return { brief: parsed.brief, options: { equipment: ['xray-single', 'xray-dual', 'xray-dual-fine'] } }
}
