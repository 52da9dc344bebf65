import type { Assumption, Problem, Product, ProductInput, Stage, Structure } from '../contract/index.ts'
import { proximateTotalPct, solidDensityGPerCm3 } from '../food/composition.ts'
import { materials } from '../reference/index.ts'
import { nearestWord } from './nearest.ts'
import { rounded } from './rounded-range.ts'
import { holdsPieces } from './stiff-foods.ts'

/** Structures with gaps between pieces: packing and grain matter only here. */
export const HAS_GAPS: readonly Structure[] = ['granular', 'powder', 'plates']

/** Structures in which a piece may sink or float. */
export const FLOWS: readonly Structure[] = ['liquid', 'pieces-in-liquid']

/** Unevenness where neither brief nor food table says: judgement, to be confirmed by a picture of the product. */
const UNEVENNESS: Record<Structure, { mm: number; range: [number, number] }> = {
  solid: { mm: 1, range: [0.2, 2] },
  granular: { mm: 0.5, range: [0.2, 1.5] },
  powder: { mm: 0.5, range: [0.2, 1.5] },
  plates: { mm: 0.5, range: [0.2, 1.5] },
  liquid: { mm: 0.3, range: [0.1, 0.5] },
  'pieces-in-liquid': { mm: 1, range: [0.5, 2] },
  inclusions: { mm: 0.6, range: [0.3, 1.2] },
}
const LOOSE_UNEVENNESS_MM = 1
/** Grain of a food that is listed in pieces and stated to be a powder, mm: ground, not as it is listed (judgement). */
const POWDER_GRAIN = { mm: 0.4, range: [0.1, 1] as const, because: 'ground to a powder (judgement)' }
const PACKING = { typical: 0.55, range: [0.35, 0.68] as [number, number] }

interface Filled {
  product: Product | null
  assumed: Assumption[]
  problems: Problem[]
}

/**
 * The product of one inspection point with every value present. `path` names the product in messages;
 * values left open come from the food table, else from a judgement that is reported as assumed.
 */
export function fillProduct(input: ProductInput, path: string, stage: Stage): Filled {
  const assumed: Assumption[] = []
  const problems: Problem[] = []
  const stop = (field: string, message: string): Filled => ({
    product: null,
    assumed,
    problems: [...problems, { path: field ? `${path}.${field}` : path, message }],
  })
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

  const custom = input.food === 'custom'
  const material = custom ? undefined : materials.get(input.food)
  if (!custom && !material?.food) {
    const foods = [...materials.values()].filter((m) => m.food).map((m) => m.id)
    const near = nearestWord(input.food, foods)
    return stop(
      'food',
      `${JSON.stringify(input.food)} is not a listed food${near ? `; did you mean ${near}?` : `. Listed: ${foods.join(', ')}.`} Any other is "custom" with its composition`,
    )
  }
  if (custom && !input.composition) {
    return stop(
      'composition',
      'a custom food needs its composition (water, protein, fat, carbohydrate, ash in %)',
    )
  }
  if (input.composition) {
    const total = proximateTotalPct(input.composition)
    if (Math.abs(total - 100) > 3) {
      return stop(
        'composition',
        `the five parts add up to ${total.toFixed(1)} %; they must add up to 100 % (97 to 103)`,
      )
    }
  }
  const food = material?.food ?? null
  const because = material ? `usual for ${material.label}` : 'judgement for a custom food'

  const structure =
    input.structure ??
    assume(
      'structure',
      'structure',
      food?.structure ?? 'solid',
      null,
      food ? because : 'not stated; taken as solid',
    )
  const gaps = HAS_GAPS.includes(structure)
  const ground = structure === 'powder' && food !== null && food.structure !== 'powder'
  if (!gaps && input.packing !== undefined && input.packing !== 1) {
    return stop(
      'packing',
      `a ${structure} food fills its space: packing must be 1 or left out; ${input.packing} was given`,
    )
  }

  let densityGPerCm3: number
  if (input.densityGPerCm3 !== undefined) densityGPerCm3 = input.densityGPerCm3
  else if (input.composition) {
    const computed = Number(solidDensityGPerCm3(input.composition).toFixed(3))
    densityGPerCm3 = assume(
      'densityGPerCm3',
      'density of the solid food',
      computed,
      [computed * 0.95, computed * 1.05],
      'computed from the composition, no pores',
    )
  } else {
    const listed = material!.densityGPerCm3
    densityGPerCm3 = assume(
      'densityGPerCm3',
      'density of the solid food',
      listed,
      material!.densityRange ?? [listed * 0.98, listed * 1.02],
      because,
    )
  }

  let packing = 1
  if (gaps) {
    const listed = food && food.packing < 1 && !ground ? food.packing : null
    packing =
      input.packing ??
      assume(
        'packing',
        'fill fraction',
        listed ?? PACKING.typical,
        listed ? [listed * 0.9, Math.min(1, listed * 1.1)] : PACKING.range,
        listed ? because : 'usual for loose pieces',
      )
  }
  let grainMm = 0
  if (gaps) {
    const listed = food?.grainMm ?? null
    const usual = ground
      ? POWDER_GRAIN
      : listed === null
        ? null
        : { mm: listed, range: [listed * 0.8, listed * 1.25] as const, because }
    if (input.grainMm === undefined && usual === null) {
      return stop(
        'grainMm',
        `a ${structure} food needs its ${structure === 'plates' ? 'plate thickness' : 'grain size'} in mm`,
      )
    }
    grainMm = input.grainMm ?? assume('grainMm', 'grain size', usual!.mm, usual!.range, usual!.because)
  }

  const usual = UNEVENNESS[structure]
  const looseGrains = stage !== 'packed' && gaps
  const listed = food && food.structure === structure && !looseGrains ? food : null
  const unevennessMm =
    input.unevennessMm ??
    assume(
      'unevennessMm',
      'unevenness',
      looseGrains ? LOOSE_UNEVENNESS_MM : (listed?.unevennessMm ?? usual.mm),
      listed?.unevennessRangeMm ?? usual.range,
      'judgement, no source: rms thickness variation over 2 to 20 mm',
    )
  const frozen = input.food.endsWith('_frozen')
  const temperatureC =
    input.temperatureC ??
    assume('temperatureC', 'temperature', frozen ? -18 : 20, frozen ? [-25, -5] : [2, 30], because)

  const product: Product = {
    food: input.food,
    composition: input.composition ?? null,
    densityGPerCm3,
    structure,
    grainMm,
    packing,
    unevennessMm,
    voidFree:
      input.voidFree ??
      assume('voidFree', 'void-free', false, null, 'foods hold bubbles and gaps unless declared void-free'),
    stiff: FLOWS.includes(structure)
      ? (input.stiff ??
        assume(
          'stiff',
          'stiff',
          holdsPieces(input.food),
          null,
          holdsPieces(input.food)
            ? `${because}: a piece stays where it fell`
            : 'not stated; a piece sinks or floats',
        ))
      : false,
    temperatureC,
    saltPct: input.saltPct ?? null,
    ironMgPerKg: input.ironMgPerKg ?? assume('ironMgPerKg', 'added iron', 0, null, 'none unless said'),
    conductivitySPerM: input.conductivitySPerM ?? null,
    boneIn: input.boneIn ?? false,
  }
  return { product, assumed, problems }
}
