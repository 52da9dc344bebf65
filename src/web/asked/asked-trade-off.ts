import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import type { Asked } from '../../../views/trade-offs/props.ts'
import type { Brief } from '../../contract/index.ts'
import { quoted } from '../../contract/quoted.ts'
import type { InputId } from '../../trade-offs/input.ts'
import { INPUTS, inputOf } from '../../trade-offs/inputs.ts'
import { sizedMachinesAt } from '../../trade-offs/trade-offs.ts'

/** Machines drawn at once at most: more curves cannot be told apart and take too long. */
export const MOST_MACHINES = 3

/** Inputs that have their own page, because they say something about metal detectors only. */
const COIL_ONLY = (id: InputId) => inputOf(id)!.families.every((family) => family === 'coil')

/** A whole number below `count` in the address; the first where none is given. */
export function askedIndex(c: Context, name: string, count: number): number {
  const given = c.req.query(name) ?? ''
  const index = given === '' ? 0 : Number(given)
  if (!Number.isInteger(index) || index < 0 || index >= count)
    throw new HTTPException(404, {
      message: `This brief has no ${name} ${quoted(given)}; it has 0 to ${count - 1}.`,
    })
  return index
}

/** The inputs that mean something at a point, for the machines that stand there. */
export function inputsAt(brief: Brief, pointIndex: number): InputId[] {
  const families = new Set(sizedMachinesAt(brief, pointIndex).map(({ family }) => family))
  return INPUTS.filter(
    (input) =>
      !COIL_ONLY(input.id) &&
      input.appliesAt(brief.points[pointIndex]!) &&
      input.families.some((family) => families.has(family as 'xray' | 'coil')),
  ).map(({ id }) => id)
}

/** The first two of the line-up, x-ray machines before metal detectors, those for teaching last. */
function usualMachines(brief: Brief, pointIndex: number): string[] {
  const machines = sizedMachinesAt(brief, pointIndex)
  const rank = (one: (typeof machines)[number]) =>
    one.family !== 'xray' ? 1 : one.windowsKeV !== undefined ? 2 : 0
  return [...machines]
    .sort((a, b) => rank(a) - rank(b))
    .slice(0, 2)
    .map(({ id }) => id)
}

/** What the address asks to draw, with what it asks in vain said in `note`; 404 for a point or piece that is not there. */
export function askedTradeOff(c: Context, brief: Brief): { asked: Asked; note: string } {
  const point = askedIndex(c, 'point', brief.points.length)
  const contaminant = askedIndex(c, 'contaminant', brief.contaminants.length)
  const wanted = (c.req.queries('machines') ?? []).flatMap((ids) => ids.split(',')).filter((id) => id !== '')
  const standing = sizedMachinesAt(brief, point).map(({ id }) => id)
  const chosen = standing.filter((id) => wanted.includes(id))
  const machines = (chosen.length > 0 ? chosen : usualMachines(brief, point)).slice(0, MOST_MACHINES)
  const possible = inputsAt(brief, point)
  const given = c.req.query('input') ?? ''
  const input = possible.find((id) => id === given) ?? possible[0] ?? 'false-rejects'
  const notes = [
    chosen.length > MOST_MACHINES ? `Only the first ${MOST_MACHINES} of the machines are drawn.` : '',
    wanted.some((id) => !standing.includes(id)) ? 'A machine that does not stand here is left out.' : '',
    given !== '' && given !== input
      ? 'What was to be moved means nothing here; the first choice is drawn.'
      : '',
  ]
  return { asked: { point, contaminant, machines, input }, note: notes.filter(Boolean).join(' ') }
}
