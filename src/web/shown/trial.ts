import type { ShownGroup } from '../../../views/runs/props.ts'
import { groupTitle } from '../../../views/runs/run-words.ts'
import type { RunGroup, RunsAnswer } from '../../contract/index.ts'
import { exactInterval } from '../../numerics/binomial.ts'
import { linkValue } from '../../runs/index.ts'
import { machines, materialNames } from './choices.ts'

const machineNames = new Map(machines.map(({ value, words }) => [value, words]))

/** What the machine is called: its label where the program knows it, else what was written. */
export const machineName = (equipment: string): string => machineNames.get(equipment) ?? equipment

const POINTS = 60

/** Groups of a trial with their pictures' numbers. */
export function shownGroups(answer: RunsAnswer): ShownGroup[] {
  return answer.groups.map((group, index) => ({
    group,
    title: groupTitle({ ...group, equipment: machineName(group.equipment) }, materialNames),
    dots: group.exact.map(({ sizeMm, runs, found }) => {
      const [low, high] = exactInterval(found, runs, 0.95)
      return { sizeMm, share: found / runs, low, high }
    }),
    fitted: fittedCurve(group),
    prediction: answer.prediction?.find((one) => one.group === index) ?? null,
    clause: answer.clause?.find((one) => one.group === index) ?? null,
  }))
}

function fittedCurve({ fit, exact }: RunGroup): (readonly [number, number])[] {
  if (!fit || fit.separated || !(fit.b1 > 0)) return []
  const from = exact[0]!.sizeMm * 0.85
  const to = exact.at(-1)!.sizeMm * 1.1
  return Array.from({ length: POINTS }, (_, i) => {
    const mm = from * (to / from) ** (i / (POINTS - 1))
    const own = linkValue(fit.link, fit.b0 + fit.b1 * Math.log(mm)).found
    return [mm, fit.floor + (1 - fit.floor) * own] as const
  })
}
