import { parseBrief } from '../../../src/brief/index.ts'
import type { BriefInput } from '../../../src/contract/brief.ts'
import type { Brief, XrayMachine } from '../../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../../src/reference/index.ts'
import { buildOf } from '../../../src/xray/beam/exposure.ts'
import { settingAt } from '../../../src/xray/beam/settings.ts'
import { exposePack } from '../../../src/xray/image/pack/exposed-pack.ts'

/** An invented brief with one pack from above, small enough to be drawn quickly. */
export function sampleBrief(
  food: string,
  more: Partial<BriefInput['points'][number]> = {},
  product: Partial<BriefInput['product']> = {},
): Brief {
  const parsed = parseBrief({
    title: 'Sample pack',
    product: { food, ...product },
    points: [
      {
        name: 'after packing',
        stage: 'packed',
        heightMm: 40,
        widthMm: 110,
        lengthMm: 150,
        speedMPerMin: 20,
        parts: [{ material: 'pe', mm: 0.06, place: 'wrap' }],
        falseRejectsPerPack: 0.001,
        ...more,
      },
    ],
    contaminants: [
      { material: 'ss304', shape: 'sphere', mustFindMm: 1 },
      { material: 'glass_container', shape: 'sphere', mustFindMm: 3 },
    ],
    equipment: ['xray-single', 'xray-dual'],
  })
  if (!parsed.ok) throw new Error(parsed.problems.map((p) => `${p.path}: ${p.message}`).join('; '))
  return parsed.brief
}

export function archetype(id: string): XrayMachine {
  const figures = figuresOf(archetypes.get(id)!)
  return figures as XrayMachine
}

/** A machine set before the brief's first point. */
export function exposedFor(brief: Brief, id: string, kV: number) {
  const machine = archetype(id)
  const build = buildOf(machine)
  const point = brief.points[0]!
  return exposePack(machine, build, point, settingAt(machine, build, kV, point.speedMPerMin))
}
