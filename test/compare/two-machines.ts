import { advise } from '../../src/advise.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Laid as LaidPack } from '../../src/compare/laid.ts'
import { wantedIn } from '../../src/compare/laid.ts'
import { type Side, sidesOf } from '../../src/compare/sides.ts'
import type { Advice, Brief, BriefInput } from '../../src/contract/index.ts'

/** A thick bag of nuts at two ways of looking, with two quotes for the one of them. */
export const input: BriefInput = {
  title: 'Kernels in a bag',
  product: { food: 'hazelnut' },
  points: [
    {
      name: 'after packing',
      heightMm: 45,
      widthMm: 170,
      lengthMm: 220,
      massG: 1000,
      speedMPerMin: 30,
      packsPerMin: 50,
      hoursPerDay: 16,
      falseRejectsPerPack: 0.001,
    },
  ],
  contaminants: [
    { material: 'quartz', mustFindMm: 4 },
    { material: 'ss304', shape: 'wire', lengthMm: 10, mustFindMm: 0.6 },
    { material: 'wood', basis: 'best-achievable' },
  ],
  equipment: ['xray-single', 'xray-dual', 'coil-single'],
  quotes: [
    {
      equipment: 'xray-dual',
      material: 'quartz',
      sizeMm: 2.5,
      obtained: 'in-product',
      position: 'middle',
      runs: 29,
      falseRejectsPerPack: 0.001,
    },
    { equipment: 'xray-dual', material: 'quartz', sizeMm: 1, obtained: 'empty', runs: 10 },
  ],
}

export interface Laid {
  readonly brief: Brief
  readonly advice: Advice
  readonly sides: Side[]
  readonly side: (key: string) => Side
}

/** Advice on a brief, and its sides by key. */
export async function laid(given: BriefInput = input): Promise<Laid> {
  const parsed = parseBrief(given)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const advice = await advise(parsed.brief, { withoutChanges: true })
  const only: LaidPack = { mark: '', brief: parsed.brief, advice }
  const sides = sidesOf([only], wantedIn([only]))
  return { brief: parsed.brief, advice, sides, side: (key) => sides.find((one) => one.key === key)! }
}
