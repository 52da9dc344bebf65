import type { Advice, BriefInput } from '../../contract/index.ts'

/** Advice on a brief as given, or null when the brief is refused. Handed in: the whole of physics and rules. */
export type AdviseGiven = (given: BriefInput) => Promise<Advice | null>
