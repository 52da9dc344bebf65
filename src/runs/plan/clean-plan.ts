import type { Plan } from '../../contract/index.ts'
import { binomialAtMost, runsToDemonstrate } from '../../numerics/binomial.ts'

/** A machine is hoped to reject this share of what is allowed (assumed; a question to the supplier). */
const HOPED_SHARE = 0.3
const MOST_ALLOWED = 60

/**
 * Clean packs that show at most `limit` false rejects a pack with this confidence, with so many rejects allowed that
 * a machine at the rate hoped for comes through with the power asked.
 */
export function cleanPlan(
  limit: number,
  confidence: number,
  power: number,
  packsPerMin: number | null,
  hoped = limit * HOPED_SHARE,
): Plan['clean'] {
  for (let allowed = 0; ; allowed++) {
    const packs = runsToDemonstrate({ chance: 1 - limit, confidence }, allowed)
    const passes = binomialAtMost(allowed, packs, hoped)
    if (passes < power && allowed < MOST_ALLOWED) continue
    return {
      packs,
      allowed,
      limit,
      hoped,
      power: passes,
      minutes: packsPerMin === null ? null : packs / packsPerMin,
    }
  }
}
