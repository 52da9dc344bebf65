import type { Brief, BriefInput, Lapsed } from '../contract/index.ts'

type Filled = Pick<Brief, 'points' | 'contaminants' | 'equipment'>
type Value = number | string | boolean | null

/** No ";" or ": " inside a value, so that the text can be taken apart again. */
const plain = (value: Value): string =>
  typeof value === 'number'
    ? String(Number(value.toPrecision(6)))
    : String(value ?? 'none').replaceAll(/[;:]/g, ',')

/**
 * What a trial of a piece on a machine ran on, as text: food, pack, speed, rejects asked, piece, and the machine
 * where the brief describes it. Whatever of it changes asks for validation anew.
 */
export function ranOnWords(
  brief: Filled,
  pointIndex: number,
  equipment: string,
  contaminant: number,
): string {
  const { product, parts, inserts, ...point } = brief.points[pointIndex]!
  const piece = brief.contaminants[contaminant]!
  const machine = brief.equipment.find((one) => typeof one === 'object' && one.id === equipment)
  const values: readonly (readonly [string, Value])[] = [
    ['food', product.food],
    ['composition', product.composition ? Object.values(product.composition).join(' ') : 'as listed'],
    ['density, g/cm³', product.densityGPerCm3],
    ['structure', product.structure],
    ['grain, mm', product.grainMm],
    ['packing', product.packing],
    ['unevenness, mm', product.unevennessMm],
    ['temperature, °C', product.temperatureC],
    ['salt, %', product.saltPct],
    ['iron, mg/kg', product.ironMgPerKg],
    ['conductivity, S/m', product.conductivitySPerM],
    ['stage', point.stage],
    ['height, mm', point.heightMm],
    ['filled height, mm', point.filledMm],
    ['width, mm', point.widthMm],
    ['length, mm', point.lengthMm],
    ['outline', point.outline],
    ['pack', parts.map((part) => Object.values(part).join(' ')).join(', ') || 'none'],
    ['inserts', inserts.join(', ') || 'none'],
    ['speed, m/min', point.speedMPerMin],
    ['lanes', point.lanes],
    ['false rejects per pack', point.falseRejectsPerPack],
    ['piece', [piece.material, piece.shape, piece.lengthMm, piece.faceMm2, piece.placement].join(' ')],
    ...(typeof machine === 'object' ? ([['machine', machineWords(machine)]] as const) : []),
  ]
  return values.map(([name, value]) => `${name}: ${plain(value)}`).join('; ')
}

/** A described machine without its name: what changes its sizes. */
function machineWords(machine: object): string {
  const told = Object.entries(machine).filter(([key]) => !['id', 'label', 'burden'].includes(key))
  return told.map(([key, value]) => `${key} ${JSON.stringify(value).replaceAll('"', '')}`).join(', ')
}

const taken = (text: string) =>
  new Map(text.split('; ').map((part) => part.split(': ', 2) as [string, string | undefined]))

/** What is otherwise now, "height, mm: 30 then, 40 now"; empty where nothing is. */
export function changedSince(then: string, now: string): string[] {
  const current = taken(now)
  return [...taken(then)].flatMap(([name, value = '']) => {
    const is = current.get(name)
    return is === undefined || is === value ? [] : [`${name}: ${value} then, ${is} now`]
  })
}

type Records = Pick<BriefInput, 'measured' | 'demonstrated'>

/** Records of trials that still hold, and those that lapsed because something they ran on has changed. */
export function heldAndLapsed(filled: Filled, given: Records): Records & { lapsed: Lapsed[] } {
  const lapsed: Lapsed[] = []
  const holds = (one: NonNullable<Records['measured' | 'demonstrated']>[number]): boolean => {
    const { point, equipment, contaminant, ranOn, date } = one
    const pointIndex = filled.points.findIndex(({ name }) => name === point)
    if (ranOn === undefined || contaminant === undefined || pointIndex < 0) return true
    const changed = changedSince(ranOn, ranOnWords(filled, pointIndex, equipment, contaminant))
    if (changed.length > 0) lapsed.push({ pointIndex, equipment, contaminant, date: date ?? null, changed })
    return changed.length === 0
  }
  return {
    measured: (given.measured ?? []).filter(holds),
    demonstrated: (given.demonstrated ?? []).filter(holds),
    lapsed,
  }
}
