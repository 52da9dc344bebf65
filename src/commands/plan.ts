import { parseArgs } from 'node:util'
import { advise } from '../advise.ts'
import type { OneSizeRoute, Plan } from '../contract/index.ts'
import { type PlanAsked, planTrial } from '../runs/index.ts'
import { InputError } from './input.ts'
import { loadBrief } from './load-brief.ts'
import { measured } from './measured.ts'
import { textTable } from './text/text-table.ts'

/** gritwise plan BRIEF.json --contaminant N [--size MM] [--confidence 0.95] [--power 0.8] [--equipment ID] … */
export async function planCommand(args: string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args,
    allowPositionals: true,
    options: {
      contaminant: { type: 'string' },
      size: { type: 'string' },
      confidence: { type: 'string' },
      power: { type: 'string' },
      equipment: { type: 'string' },
      point: { type: 'string' },
      seed: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0) throw new InputError('plan takes one brief: a file, or - for standard input')
  if (values.contaminant === undefined)
    throw new InputError('plan needs --contaminant, its number in the brief, from 0')
  const asked = {
    contaminant: numberOf('contaminant', values.contaminant, 0, 39),
    sizeMm: measured('size', values.size, 'mm'),
    confidence: optional('confidence', values.confidence, 0.8, 0.99),
    power: optional('power', values.power, 0.5, 0.99),
    equipment: values.equipment,
    point: optional('point', values.point, 0, 11),
    seed: optional('seed', values.seed, 0, 2 ** 31 - 1),
  }
  const brief = await loadBrief(path)
  const advice = await advise(brief, { withoutChanges: true, withoutMissing: true })
  const planned = planTrial(brief, advice, given(asked))
  if (!planned.ok) {
    const lines = planned.problems.map(({ path: field, message }) => `${field}: ${message}`)
    throw new InputError(lines.join('\n'))
  }
  const { plan } = planned
  process.stdout.write(values.json ? `${JSON.stringify(plan, null, 2)}\n` : planText(plan))
  return plan.chosen ? 0 : 1
}

const given = (asked: Record<string, unknown>): PlanAsked =>
  Object.fromEntries(Object.entries(asked).filter(([, value]) => value !== undefined)) as unknown as PlanAsked

function numberOf(name: string, typed: string, from: number, to: number): number {
  const value = Number(typed.replace(',', '.'))
  if (typed.trim() === '' || !(value >= from && value <= to))
    throw new InputError(`--${name} must be a number from ${from} to ${to}; ${typed} was given`)
  return value
}

const optional = (name: string, typed: string | undefined, from: number, to: number) =>
  typed === undefined ? undefined : numberOf(name, typed, from, to)

const percent = (chance: number) => (chance > 0.995 ? 'over 99 %' : `${Math.round(chance * 100)} %`)
const powers = ({ power }: Pick<OneSizeRoute, 'power'>) => [
  percent(power.asPredicted),
  percent(power.fiveWorse),
  percent(power.tenWorse),
]

function planText(plan: Plan): string {
  const routes = [
    ...plan.curve.map((route) => [
      `curve, ${route.sizesMm.join(' ')} mm, ${route.perSize} each`,
      String(route.pieces),
      ...powers(route),
    ]),
    ...plan.oneSize.map((route) => [
      `${route.sizeMm} mm only, ${route.misses === 0 ? 'none' : `at most ${route.misses}`} missed`,
      String(route.pieces),
      ...powers(route),
    ]),
  ]
  return `${[
    `${plan.label} [${plan.equipment}] at ${plan.point}: ${plan.material}, ${plan.shape}`,
    plan.words,
    '',
    textTable(['route', 'pieces', 'as predicted', '5 % larger', '10 % larger'], routes),
    '',
    ...plan.steps.map((step) => `- ${step}`),
    ...(plan.clause ? ['', `Clause: ${plan.clause}`] : []),
  ].join('\n')}\n`
}
