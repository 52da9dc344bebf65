import type { Assumption, Part, Point, PointInput, Problem, ProductInput, Stage } from '../contract/index.ts'
import { materials } from '../reference/index.ts'
import { fillingOf } from './filling.ts'
import { nearestWord } from './nearest.ts'
import { fillProduct } from './product-defaults.ts'
import { rounded } from './rounded-range.ts'

/** Thickness variation of a glass wall, mm rms, unless given (judgement). */
export const GLASS_UNEVENNESS_MM = 0.3

interface Filled {
  point: Point | null
  assumed: Assumption[]
  problems: Problem[]
}

interface Extent {
  readonly value: number
  readonly range: readonly [number, number] | null
  readonly because: string
}

/** Width or length, mm, where none is given (common practice, no source); in a pipe as wide and long as high. */
function usualExtent(stage: Stage, field: 'widthMm' | 'lengthMm', heightMm: number | undefined): Extent {
  const because = 'not stated; usual, no source'
  if (stage === 'loose') return { value: 400, range: [200, 800], because }
  if (stage === 'packed')
    return field === 'widthMm'
      ? { value: 150, range: [60, 300], because }
      : { value: 200, range: [80, 300], because }
  return { value: heightMm ?? Number.NaN, range: null, because: 'the flow taken as round: its height' }
}

/** One inspection point with every value present, its product laid over the brief's. */
export function fillPoint(input: PointInput, index: number, briefProduct: ProductInput): Filled {
  const path = `points.${index}`
  const assumed: Assumption[] = []
  const problems: Problem[] = []
  const assume = <T extends number | string | boolean>(
    field: string,
    label: string,
    value: T,
    range: readonly [number, number] | null,
    because: string,
  ): T => {
    assumed.push({ path: `${path}.${field}`, label, value, range: rounded(range), because })
    return value
  }
  const stage = input.stage ?? assume('stage', 'stage', 'packed', null, 'not stated')
  const inPipe = (stage === 'pumped' || stage === 'free-fall') && input.pipeDiameterMm !== undefined
  const need = (field: 'heightMm' | 'widthMm' | 'lengthMm' | 'speedMPerMin', label: string): number => {
    const given = input[field]
    if (given !== undefined) return given
    if (inPipe && field !== 'speedMPerMin') {
      return assume(field, label, input.pipeDiameterMm!, null, 'the pipe filled: its diameter')
    }
    if (field === 'widthMm' || field === 'lengthMm') {
      const { value, range, because } = usualExtent(stage, field, input.heightMm)
      return assume(field, label, value, range, because)
    }
    const unit = field === 'speedMPerMin' ? 'm/min' : 'mm'
    problems.push({ path: `${path}.${field}`, message: `give the ${label} in ${unit}` })
    return Number.NaN
  }
  const heightMm = need('heightMm', 'height of the food')
  const widthMm = need('widthMm', 'width of the food')
  const lengthMm = need(
    'lengthMm',
    stage === 'packed' ? 'length of the food' : 'length of flow that stands for a pack',
  )
  const speedMPerMin = need('speedMPerMin', 'speed')

  const parts: Part[] = (input.parts ?? []).map((part, p) => {
    const material = materials.get(part.material)
    if (!material || material.kind === 'food') {
      const packaging = [...materials.values()].filter((m) => m.kind !== 'food').map((m) => m.id)
      const near = nearestWord(part.material, packaging)
      problems.push({
        path: `${path}.parts.${p}.material`,
        message: `${JSON.stringify(part.material)} is not a listed packaging material${near ? `; did you mean ${near}?` : `. Listed: ${packaging.join(', ')}`}`,
      })
      return part
    }
    if (part.unevennessMm !== undefined || material.kind !== 'glass') return part
    return {
      ...part,
      unevennessMm: assume(
        `parts.${p}.unevennessMm`,
        'unevenness of the glass',
        GLASS_UNEVENNESS_MM,
        [0.2, 0.45],
        'judgement, no source',
      ),
    }
  })

  const own = input.product ?? {}
  const changed = own.food !== undefined && own.food !== briefProduct.food
  const merged = { ...(changed ? {} : briefProduct), ...own, food: own.food ?? briefProduct.food }
  const filled = fillProduct(merged, input.product ? `${path}.product` : 'product', stage)
  problems.push(...filled.problems)
  if (problems.length > 0 || !filled.product) return { point: null, assumed, problems }

  const outline = input.outline ?? assume('outline', 'outline', 'box', null, 'not stated')
  const { massG = null } = input
  const filling = fillingOf(
    {
      stage,
      massG,
      heightMm,
      widthMm,
      lengthMm,
      outline,
      parts,
      filledMm: input.filledMm ?? null,
      packing: merged.packing ?? null,
    },
    filled.product,
  )
  const filledMm = Number(filling.filledMm.toPrecision(4))
  const packing = Number(filling.packing.toPrecision(4))
  if (filling.heightFromMass)
    assume(
      'filledMm',
      'filled height',
      filledMm,
      [filledMm * 0.9, Math.min(heightMm, filledMm * 1.1)],
      `${massG} g fill so much of the ${heightMm} mm; the rest is headspace`,
    )
  if (filling.packingFromMass)
    assume(
      'product.packing',
      'fill fraction',
      packing,
      [packing * 0.9, Math.min(1, packing * 1.1)],
      `follows from ${massG} g in ${filledMm} × ${widthMm} × ${lengthMm} mm`,
    )
  const product = filling.packingFromMass ? { ...filled.product, packing } : filled.product
  const ofProduct = filling.packingFromMass
    ? filled.assumed.filter(({ path: at }) => !at.endsWith('.packing'))
    : filled.assumed

  const point: Point = {
    name: input.name || assume('name', 'name', `point ${index + 1}`, null, 'not named'),
    stage,
    heightMm,
    filledMm,
    widthMm,
    lengthMm,
    massG,
    outline,
    parts,
    inserts: input.inserts ?? [],
    speedMPerMin,
    packsPerMin: input.packsPerMin ?? null,
    kgPerHour: input.kgPerHour ?? null,
    lanes: input.lanes ?? 1,
    hoursPerDay: input.hoursPerDay ?? assume('hoursPerDay', 'hours per day', 16, [8, 24], 'two shifts'),
    falseRejectsPerPack:
      input.falseRejectsPerPack ??
      assume(
        'falseRejectsPerPack',
        'false rejects per pack',
        0.001,
        [0.0001, 0.005],
        'a usual wish, no source',
      ),
    checkIntervalMin: input.checkIntervalMin ?? null,
    reactMin: input.reactMin ?? null,
    apertureHeightMm: input.apertureHeightMm ?? null,
    apertureWidthMm: input.apertureWidthMm ?? null,
    largestHeightMm: input.largestHeightMm ?? null,
    largestWidthMm: input.largestWidthMm ?? null,
    fallHeightMm: input.fallHeightMm ?? null,
    pipeDiameterMm: input.pipeDiameterMm ?? null,
    line: (input.line ?? '').trim(),
    afterStep: input.afterStep ?? '',
    reject: input.reject ?? null,
    productSignal: input.productSignal ?? null,
    product,
  }
  return { point, assumed: [...ofProduct, ...assumed], problems }
}
