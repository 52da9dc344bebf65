import type { Advice, Brief, Plan, PlanRequest, Problem } from '../../contract/index.ts'
import { cleanPlan } from './clean-plan.ts'
import { drawLots } from './draw-lots.ts'
import { liesOf, type Placed, placedMachine, placesOf } from './place.ts'
import { clauseOf, planWords, stepsOf } from './plan-words.ts'
import { type Aim, curveRoutes, oneSizeRoutes, reachableSize } from './routes.ts'

export type PlanAsked = Omit<PlanRequest, 'brief'>
export type Planned = { ok: true; plan: Plan } | { ok: false; problems: Problem[] }

/** Pieces at each other size that draw the curve beside the clause. */
const DRAWN_PER_SIZE = 5

/** Which pieces, where, how many, and the chance that they show the size; from the advice on the same brief. */
export function planTrial(brief: Brief, advice: Advice, asked: PlanAsked): Planned {
  const contaminant = brief.contaminants[asked.contaminant]
  if (!contaminant)
    return refuse(
      'contaminant',
      `the brief has contaminants 0 to ${brief.contaminants.length - 1}; ${asked.contaminant} was given`,
    )
  const sizeMm = asked.sizeMm ?? contaminant.mustFindMm
  if (sizeMm === null) return refuse('sizeMm', 'give the size to show, in mm; the brief asks none')
  const placed = placedMachine(advice, asked)
  if (!placed) return refuse('equipment', noMachine(advice, asked))
  return { ok: true, plan: planOf(brief, placed, asked, sizeMm) }
}

const refuse = (path: string, message: string): Planned => ({ ok: false, problems: [{ path, message }] })

function noMachine(advice: Advice, { equipment, point, contaminant }: PlanAsked): string {
  const known = advice.points.flatMap(({ options }) =>
    options.filter(({ findings }) => findings[contaminant]?.expectedMm).map((option) => option.equipment),
  )
  const here = equipment ? ` ${equipment}` : ''
  const there = point === undefined ? '' : ` at ${advice.points[point]?.name ?? 'that point'}`
  return known.length === 0
    ? 'no machine of this brief is expected to find this contaminant, so there is nothing to plan by'
    : `no expected size of${here || ' a machine'}${there} for this contaminant; machines that have one: ${[...new Set(known)].join(', ')}`
}

function planOf(brief: Brief, placed: Placed, asked: PlanAsked, sizeMm: number): Plan {
  const { option, finding, pointIndex } = placed
  const point = brief.points[pointIndex]!
  const { positions, predicted } = placesOf(placed)
  const { confidence = 0.95, power = 0.8, seed = 1 } = asked
  const lies = liesOf(placed)
  const aim: Aim = { ...predicted, sizeMm, confidence, power, seed, lies: lies.length }
  const curve = curveRoutes(aim)
  const oneSize = oneSizeRoutes(aim)
  const clause = oneSize.find(({ enough }) => enough)
  const drawn = { ...curve[0]!, perSize: DRAWN_PER_SIZE, pieces: DRAWN_PER_SIZE * curve[0]!.sizesMm.length }
  const lots = clause ? drawLots(clause, drawn, predicted.place, lies, seed) : { pieces: [], packs: 0 }
  const plan = {
    equipment: option.equipment,
    label: option.label,
    point: point.name,
    contaminant: asked.contaminant,
    material: finding.material,
    shape: brief.contaminants[asked.contaminant]!.shape,
    lengthMm: finding.lengthMm,
    faceMm2: finding.faceMm2,
    placement: brief.contaminants[asked.contaminant]!.placement,
    sizeMm,
    confidence,
    power,
    predicted,
    curve,
    oneSize,
    chosen: clause ? { clause, drawn } : null,
    reachableMm: clause ? null : reachableSize(aim),
    clean: cleanPlan(point.falseRejectsPerPack, confidence, power, point.packsPerMin),
    positions,
    lies,
    ...lots,
  }
  return {
    ...plan,
    steps: stepsOf(plan, option.family),
    clause: clauseOf(plan, brief),
    words: planWords(plan),
  }
}
