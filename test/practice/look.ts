import { beforeAll } from 'vitest'
import { advise } from '../../src/advise.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Advice, BriefInput, Option } from '../../src/contract/index.ts'

/** The advice on a brief, asked once for all tests of a group, with short ways to what it says of one machine. */
export const look = (brief: BriefInput) => {
  let advice: Advice
  beforeAll(async () => {
    const parsed = parseBrief(brief)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    advice = await advise(parsed.brief, { withoutChanges: true, withoutMissing: true })
  }, 120_000)
  const option = (equipment: string): Option => {
    const found = advice.points[0]?.options.find((one) => one.equipment === equipment)
    if (!found) throw new Error(`no ${equipment} among the options`)
    return found
  }
  return {
    option,
    verdict: (equipment: string) => option(equipment).verdict,
    /** Rules that speak of the machine, and of the point where it stands. */
    rules: (equipment: string) =>
      [...option(equipment).reasons, ...advice.points[0]!.reasons].map(({ rule }) => rule),
    blocks: (equipment: string) =>
      option(equipment).whyNot.flatMap((why) => (why.kind === 'rule' ? [why.rule] : [])),
    cautions: (equipment: string) => option(equipment).cautions.map(({ id }) => id),
    finding: (equipment: string, material: string) => {
      const found = option(equipment).findings.find((one) => one.material === material)
      if (!found) throw new Error(`no finding of ${material}`)
      return found
    },
    removal: (equipment: string, material: string) => {
      const at = advice.brief.contaminants.findIndex((one) => one.material === material)
      const found = advice.points[0]?.removals.find((r) => r.equipment === equipment && r.contaminant === at)
      if (!found) throw new Error(`no ${equipment} for ${material}`)
      return found
    },
    /** Rules that say how a material is kept out, where nothing meets it. */
    keptOut: (material: string) =>
      advice.prevention.find(
        ({ contaminant }) => advice.brief.contaminants[contaminant]?.material === material,
      )?.rules ?? [],
    /** Lines the answer speaks of. */
    lines: () => advice.answer.rows.map(({ line }) => line),
    general: () => advice.cautions.map(({ id }) => id),
    summary: () => advice.summary,
  }
}
