import type { Brief, Point } from '../../src/contract/brief.ts'
import { choiceWords } from './choices.ts'
import type { Names } from './contaminant.ts'
import { falseRejectWords } from './false-rejects.ts'
import { listed } from './listed.ts'
import { valueWords } from './size.ts'

const number = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 })
const lower = (words: string) => words.charAt(0).toLowerCase() + words.slice(1)

/** "45 × 170 × 220 mm, 30 m/min; false rejects 1 in 1,000: about 48 packs a day". */
export function pointLine(point: Point): string {
  const size = `${point.heightMm} × ${point.widthMm} × ${point.lengthMm} mm, ${point.speedMPerMin} m/min`
  const rejects = falseRejectWords(point.falseRejectsPerPack, point.packsPerMin, point.hoursPerDay)
  return `${size}; false rejects ${rejects}`
}

/** "45 × 170 × 220 mm, 1,000 g, polythene 0.08 mm as wrap, 30 m/min, 50 packs a minute". */
export function packLine(point: Point, names: Names): string {
  const { heightMm, filledMm, widthMm, lengthMm, massG, parts, inserts, outline } = point
  const filled = filledMm < heightMm ? ` (filled to ${valueWords(filledMm)})` : ''
  const packaging = parts.map(
    ({ material, mm, place }) =>
      `${names.get(material) ?? material} ${valueWords(mm)} mm as ${lower(choiceWords('place', place))}`,
  )
  return [
    `${heightMm}${filled} × ${widthMm} × ${lengthMm} mm${outline === 'cylinder' ? ', standing cylinder' : ''}`,
    massG === null ? '' : `${number.format(massG)} g`,
    packaging.length > 0 ? listed(packaging) : '',
    inserts.length > 0 ? `with ${listed(inserts)}` : '',
    `${number.format(point.speedMPerMin)} m/min`,
    point.packsPerMin === null ? '' : `${number.format(point.packsPerMin)} packs a minute`,
    point.kgPerHour === null ? '' : `${number.format(point.kgPerHour)} kg an hour`,
  ]
    .filter(Boolean)
    .join(', ')
}

/** The food as the points have it: "hazelnut, granular, grain 13 mm, fill fraction 0.57, 20 °C". */
function foodLine({ product }: Point, names: Names): string {
  const { food, structure, grainMm, packing, temperatureC, saltPct } = product
  return [
    food === 'custom' ? 'own composition' : (names.get(food) ?? food),
    lower(choiceWords('structure', structure)),
    grainMm === null ? '' : `grain ${valueWords(grainMm)} mm`,
    packing < 1 ? `fill fraction ${valueWords(packing)}` : '',
    `${valueWords(temperatureC)} °C`,
    (saltPct ?? 0) > 0 ? `salt ${valueWords(saltPct)} %` : '',
  ]
    .filter(Boolean)
    .join(', ')
}

/** The brief in words, a row each: food, points, steps, market. */
export function briefRows(brief: Brief, names: Names): readonly (readonly [what: string, said: string])[] {
  const foods = [...new Set(brief.points.map((point) => foodLine(point, names)))]
  const steps = (brief.given.flow ?? []).map(({ step }) => step)
  return [
    ['Food', foods.join('; ')],
    ...brief.points.map(
      (point) =>
        [point.name, `${lower(choiceWords('stage', point.stage))}, ${packLine(point, names)}`] as const,
    ),
    ...(steps.length > 0 ? [['Steps', steps.join(' → ')] as const] : []),
    [
      'Market, consumer',
      `${choiceWords('market', brief.market)}; ${lower(choiceWords('consumer', brief.consumer))}`,
    ],
  ]
}
