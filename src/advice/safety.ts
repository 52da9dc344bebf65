import type { Caution } from '../contract/index.ts'

/** Cautions every advice carries, whatever the rules say. */
export const STANDING_CAUTIONS: readonly Caution[] = [
  {
    id: 'sizes-are-estimates',
    text: 'Every size here is computed from physics and stated assumptions. Only a test on the real product, on the real line, decides.',
    sources: [],
  },
  {
    id: 'moving-machinery',
    text: 'Conveyors, reject devices and drop flaps trap and strike. Guards, interlocks and lock-off before any hand goes in belong to the machine and to local law.',
    sources: [],
  },
  {
    id: 'competent-person',
    text: 'This is not a substitute for a competent person, a hazard analysis of your own line or the local authority.',
    sources: [],
  },
]
