import type { BriefInput } from '../contract/brief.ts'
import { beans } from './demo-briefs/beans.ts'
import { cheddar } from './demo-briefs/cheddar.ts'
import { chicken } from './demo-briefs/chicken.ts'
import { chocolate } from './demo-briefs/chocolate.ts'
import { hazelnuts } from './demo-briefs/hazelnuts.ts'
import { milkPowder } from './demo-briefs/milk-powder.ts'
import { mince } from './demo-briefs/mince.ts'
import { sauce } from './demo-briefs/sauce-jar.ts'

export interface Demo {
  readonly id: string
  readonly title: string
  /** What this brief shows, in one line. */
  readonly shows: string
  readonly brief: BriefInput
}

/** Invented briefs to start from; no plant or brand stands behind them. */
export const demos: readonly Demo[] = [
  {
    id: 'hazelnuts',
    title: hazelnuts.title!,
    shows: 'Loose on the sorting belt or in the bag: grain against size.',
    brief: hazelnuts,
  },
  {
    id: 'cheddar',
    title: cheddar.title!,
    shows: 'A thick, salted, cold block: metal detector against x-ray.',
    brief: cheddar,
  },
  {
    id: 'sauce-jar',
    title: sauce.title!,
    shows: 'Glass in glass: what the base and the heel hide.',
    brief: sauce,
  },
  {
    id: 'chocolate',
    title: chocolate.title!,
    shows: 'Thin food, before and after the foil.',
    brief: chocolate,
  },
  {
    id: 'beans',
    title: beans.title!,
    shows: 'A deep bed of grains, and what a thinner one would bring.',
    brief: beans,
  },
  {
    id: 'chicken',
    title: chicken.title!,
    shows: 'Bone in an uneven fillet sold as boneless.',
    brief: chicken,
  },
  {
    id: 'milk-powder',
    title: milkPowder.title!,
    shows: 'Powder in free fall, for infants.',
    brief: milkPowder,
  },
  {
    id: 'mince',
    title: mince.title!,
    shows: 'Pumped in a pipe: bone for x-rays, metal for either.',
    brief: mince,
  },
]
