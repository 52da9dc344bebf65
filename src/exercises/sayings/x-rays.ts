import { mm } from '../numbers.ts'
import { withXray } from '../practice.ts'
import { alike, expected, SAME, type Saying } from './saying.ts'

const nutsAt = (speedMPerMin: number) =>
  withXray({
    product: { food: 'hazelnut' },
    point: { heightMm: 45, speedMPerMin },
    contaminants: [{ material: 'quartz' }],
  })
const usual = nutsAt(40)
const slow = nutsAt(20)
const foiled = withXray({
  product: { food: 'chocolate' },
  point: { heightMm: 10, parts: [{ material: 'aluminium_foil', mm: 0.009, place: 'wrap' }] },
  contaminants: [{ material: 'quartz' }],
})
const bare = withXray({
  product: { food: 'chocolate' },
  point: { heightMm: 10 },
  contaminants: [{ material: 'quartz' }],
})
const bones = withXray({
  product: { food: 'chicken_breast' },
  point: { heightMm: 25 },
  contaminants: [{ material: 'bone_poultry_soft' }, { material: 'bone_poultry' }],
})

export const halfSpeedHalfSize: Saying = {
  claim: [
    'Half the belt speed finds stones of half the size.',
    'Run the belt half as fast, and it finds stones half as big.',
  ],
  check: ({ say, share }) => {
    const [fast, half] = [usual(), slow()]
    const [a, b] = [expected(fast), expected(half)]
    return {
      holds: (b ?? 99) < 0.6 * (a ?? 99),
      outcome: `At 40 m/min ${mm(a)}, at 20 m/min ${mm(b)}.`,
      because: say(
        `Half the speed gives each line twice the x-rays, and noise from x-rays falls with the root of two. But ${share(fast.assessment.findings[0]!.noise.grain)} of what hides the stone is the pattern of the nuts, and that stays.`,
        'A slower belt gives more light. But the pattern of the nuts is what hides the stone, and the pattern stays.',
      ),
      title: 'Smallest stone expected to be found',
      unit: 'mm',
      bars: [
        { words: '40 m/min', value: a },
        { words: '20 m/min', value: b },
      ],
    }
  },
}

export const foilAsIfNotThere: Saying = {
  claim: [
    'X-ray looks through the foil of a chocolate bar as if it were not there.',
    'X-rays go through the foil of a chocolate bar as if it were not there.',
  ],
  check: ({ say, share }) => {
    const [a, b] = [expected(bare()), expected(foiled())]
    return {
      holds: alike(a, b),
      outcome: `Without foil ${mm(a)}, with it ${mm(b)}.`,
      because: say(
        `Two layers of 9 µm aluminium let ${share(foiled().assessment.packagingTransmission)} of the x-rays through. It is the metal detector that the foil closes.`,
        'The foil is far too thin to stop x-rays. It is the metal detector that cannot look through it.',
      ),
      title: 'Smallest stone expected to be found in a chocolate bar',
      unit: 'mm',
      bars: [
        { words: 'bare', value: a },
        { words: 'in foil', value: b },
      ],
    }
  },
}

export const hardBoneShows: Saying = {
  claim: [
    'A rib of a grown bird shows better to x-rays than the young rib of a chicken.',
    'Hard old bone shows better than soft young bone.',
  ],
  check: ({ say }) => {
    const [soft, hard] = [expected(bones(), 0), expected(bones(), 1)]
    return {
      holds: hard !== null && (soft === null || hard < soft / SAME),
      outcome: `Soft young bone ${mm(soft)}, rib of a grown bird ${mm(hard)}.`,
      because: say(
        'It is the calcium that shows. Young bone has little of it and much water; cartilage has next to none.',
        'What shows is the chalk in the bone. Young bone has little of it.',
      ),
      title: 'Smallest piece of bone expected to be found in a fillet',
      unit: 'mm',
      bars: [
        { words: 'soft young bone', value: soft, none: 'not found' },
        { words: 'rib of a grown bird', value: hard, none: 'not found' },
      ],
    }
  },
}
