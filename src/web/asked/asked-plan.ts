import type { Context } from 'hono'
import {
  CONFIDENCE_CHOICES,
  type PlanPageProps,
  type PlanTyped,
  POWER_CHOICES,
} from '../../../views/plan/props.ts'
import { pieceWords } from '../../../views/words/contaminant.ts'
import { readMeasure } from '../../brief/form/measure.ts'
import type { Advice, Brief } from '../../contract/index.ts'
import { planTrial } from '../../runs/index.ts'
import type { Advisor } from '../advisor.ts'
import { materialNames } from '../shown/choices.ts'
import { goodBrief } from './asked-brief.ts'

export interface AskedPlan extends Omit<PlanPageProps, 'title' | 'names'> {
  readonly brief: Brief
}

const among = (given: string | undefined, known: readonly string[], usual: string) =>
  known.find((one) => one === given) ?? usual

/** Machines of the brief that are expected to find the contaminant, each at its point. */
function machineChoices(advice: Advice, contaminant: number) {
  const several = advice.points.length > 1
  const placed = advice.points.flatMap(({ name, options }, point) =>
    options
      .filter(({ findings }) => findings.some((one) => one.contaminant === contaminant && one.expectedMm))
      .map(({ equipment, label }) => ({
        value: `${point}.${equipment}`,
        words: several ? `${label}, ${name}` : label,
      })),
  )
  return [{ value: '', words: 'As recommended' }, ...placed]
}

/** What the address asks of a plan, and the plan; no plan before a piece is chosen. */
export async function askedPlan(c: Context, advisor: Advisor): Promise<AskedPlan> {
  const { packed, brief } = goodBrief(c)
  const advice = await advisor.quick(brief)
  const said = (name: string) => c.req.query(name)
  const count = brief.contaminants.length
  const first = Math.max(
    0,
    brief.contaminants.findIndex(({ mustFindMm }) => mustFindMm !== null),
  )
  const index = Number(said('contaminant') ?? first)
  const contaminant = Number.isInteger(index) && index >= 0 && index < count ? index : first
  const typed: PlanTyped = {
    contaminant: String(contaminant),
    size: (said('size') ?? '').trim(),
    machine: said('machine') ?? '',
    power: among(said('power'), POWER_CHOICES, '0.8'),
    confidence: among(said('confidence'), CONFIDENCE_CHOICES, '0.95'),
  }
  const shown = {
    packed,
    brief,
    typed,
    contaminants: brief.contaminants.map((piece, i) => ({
      value: String(i),
      words: pieceWords(piece, materialNames),
    })),
    machines: machineChoices(advice, contaminant),
  }
  if (said('contaminant') === undefined) return { ...shown, problems: new Map(), plan: null }
  const size = typed.size === '' ? null : readMeasure(typed.size, 'mm')
  if (size && !size.ok)
    return { ...shown, problems: new Map([['size', `Size to show: ${size.because}`]]), plan: null }
  if (!shown.machines.some(({ value }) => value === typed.machine))
    return {
      ...shown,
      problems: new Map([
        ['machine', 'Machine: no such machine of this brief is expected to find this; choose one.'],
      ]),
      plan: null,
    }
  const [point, ...id] = typed.machine.split('.')
  const planned = planTrial(brief, advice, {
    contaminant,
    power: Number(typed.power),
    confidence: Number(typed.confidence),
    ...(size ? { sizeMm: size.value } : {}),
    ...(typed.machine === '' ? {} : { point: Number(point), equipment: id.join('.') }),
  })
  if (planned.ok) return { ...shown, problems: new Map(), plan: planned.plan }
  const problems = planned.problems.map(({ path, message }): [string, string] => [
    path === 'equipment' ? 'machine' : path === 'sizeMm' ? 'size' : path,
    message.charAt(0).toUpperCase() + message.slice(1),
  ])
  return { ...shown, problems: new Map(problems), plan: null }
}
