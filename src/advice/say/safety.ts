import type { Caution } from '../../contract/index.ts'

/** Where any x-ray machine is compared. */
export const RADIATION_CAUTION: Caution = {
  id: 'x-rays',
  text: 'X-rays injure. A machine runs only as a closed cabinet with its interlocks working, notified or registered as local law asks, with a qualified radiation expert consulted, and nobody reaches through a curtain. X-ray inspection is x-raying, not irradiating, food; the dose ceilings of local law still apply.',
  sources: [],
}

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
