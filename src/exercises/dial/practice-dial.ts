import { practiceCard } from '../../card/practice-card.ts'
import { dialAt } from './dial.ts'

/** Places of the control that are practised on, from the middle outwards. */
const STOPS = [4, 3, 5]

/** Goes through what every place of the live control goes through: whoever has done it does the next in half the time. */
export function practiceDial(): void {
  const { brief } = practiceCard()
  const asked = { point: 0, machine: 'xray-single', contaminant: 1, input: 'height' as const }
  for (const stop of STOPS) for (const draft of [true, false]) dialAt(brief, { ...asked, stop }, draft)
}
