import {
  type Assumption,
  type Brief,
  briefSchema,
  type Contaminant,
  type ContaminantInput,
  type Problem,
  speaksOfMachine,
  speaksOfPiece,
} from '../contract/index.ts'
import { firstProblems } from '../intake/problem-list.ts'
import { archetypes, materials } from '../reference/index.ts'
import { workProblems } from './asked-work.ts'
import { contaminantMaterial } from './contaminant-material.ts'
import { geometryProblems } from './geometry.ts'
import { nearestWord } from './nearest.ts'
import { fillPoint } from './point-defaults.ts'
import { problemsOf } from './problems.ts'
import { heldAndLapsed } from './ran-on.ts'
import { recordProblems } from './record-problems.ts'
import { materialOf, takenBecause, withMaterialIds } from './usual/material-words.ts'
import { usualContaminants } from './usual/usual-contaminants.ts'

export type Parsed = { ok: true; brief: Brief } | { ok: false; problems: Problem[] }

/** Machine values that must be there in pairs or in order; each problem names the field. */
function machineProblems(machine: unknown, path: string): Problem[] {
  const m = machine as Record<string, unknown> & { family: string }
  const problems: Problem[] = []
  if (m.family !== 'xray') return problems
  const range = m.kVRange as [number, number] | undefined
  if (m.kV === undefined && range === undefined) {
    problems.push({
      path: `${path}.kV`,
      message: 'an x-ray machine needs kV (fixed) or kVRange [lowest, highest], 20 to 150 kV',
    })
  }
  if (range && range[0] > range[1]) {
    problems.push({
      path: `${path}.kVRange`,
      message: `the lowest voltage comes first; [${range.join(', ')}] was given`,
    })
  }
  if (m.mA === undefined && m.maxPowerW === undefined && m.maxMA === undefined) {
    problems.push({ path: `${path}.mA`, message: 'an x-ray machine needs mA, or maxPowerW, or maxMA' })
  }
  if (m.detectorLayers === undefined && m.windowsKeV === undefined) {
    problems.push({
      path: `${path}.detectorLayers`,
      message: 'an x-ray machine needs detectorLayers (one or two) or windowsKeV',
    })
  }
  if (m.detectorLayers !== undefined && m.windowsKeV !== undefined) {
    problems.push({ path: `${path}.windowsKeV`, message: 'give detectorLayers or windowsKeV, not both' })
  }
  for (const [i, [from, to]] of ((m.windowsKeV as [number, number][] | undefined) ?? []).entries()) {
    if (from >= to)
      problems.push({
        path: `${path}.windowsKeV.${i}`,
        message: `a window runs from low to high; [${from}, ${to}] was given`,
      })
  }
  return problems
}

function fillContaminant(
  input: ContaminantInput,
  index: number,
  assumed: Assumption[],
  problems: Problem[],
): Contaminant {
  const path = `contaminants.${index}`
  const material = contaminantMaterial(input, path, problems)
  const assume = <T extends number | string>(field: string, label: string, value: T, because: string): T => {
    assumed.push({ path: `${path}.${field}`, label, value, range: null, because })
    return value
  }
  const shape = input.shape ?? assume('shape', 'shape', 'sphere', 'the usual test piece')
  const extra = { wire: 'lengthMm', flake: 'faceMm2', sphere: null } as const
  const needed = extra[shape]
  if (needed && input[needed] === undefined) {
    problems.push({
      path: `${path}.${needed}`,
      message:
        shape === 'wire' ? 'a wire needs its length in mm' : 'a flake needs the area of its face in mm²',
    })
  }
  for (const field of ['lengthMm', 'faceMm2'] as const) {
    if (input[field] !== undefined && needed !== field) {
      problems.push({
        path: `${path}.${field}`,
        message: `a ${shape} has no ${field}; it belongs to a ${field === 'lengthMm' ? 'wire' : 'flake'}`,
      })
    }
  }
  const basis =
    input.basis ??
    assume(
      'basis',
      'basis of the size to find',
      input.mustFindMm === undefined ? 'best-achievable' : 'customer',
      'not stated',
    )
  if (input.mustFindMm === undefined && basis !== 'best-achievable') {
    problems.push({
      path: `${path}.mustFindMm`,
      message: `give the size you must find in mm (basis is ${basis}), or choose the basis best-achievable`,
    })
  }
  return {
    material,
    shape,
    lengthMm: input.lengthMm ?? null,
    faceMm2: input.faceMm2 ?? null,
    placement:
      input.placement ??
      assume('placement', 'placement', 'inside', 'a foreign body may lie anywhere in the food'),
    mustFindMm: input.mustFindMm ?? null,
    basis,
    severity: input.severity ?? assume('severity', 'severity', 3, 'middle of 1 to 5'),
    likelihood: input.likelihood ?? assume('likelihood', 'likelihood', 3, 'middle of 1 to 5'),
    foundPerMillionPacks: input.foundPerMillionPacks ?? null,
    entersAt: input.entersAt ?? '',
    entries: input.entries ?? [],
  }
}

const labelOf = (material: string) => materials.get(material)?.label ?? material

/** A word that names no kind of material: what was taken for it. */
function materialTaken(word: string, index: number): Assumption[] {
  const because = takenBecause(word)
  if (because === undefined) return []
  const value = labelOf(materialOf(word))
  return [{ path: `contaminants.${index}.material`, label: 'material', value, range: null, because }]
}

const usualAssumed = (contaminants: readonly ContaminantInput[]): Assumption => ({
  path: 'contaminants',
  label: 'contaminants',
  value: contaminants.map(({ material }) => labelOf(material)).join('; '),
  range: null,
  because: 'none named: what is looked for first (common practice, no source); no size is asked of them',
})

/** What points that share a product assume of it, each at its own point where they do not assume the same. */
function byPoint(filled: readonly { readonly assumed: readonly Assumption[] }[]): Assumption[] {
  const valuesAt = (path: string) =>
    new Set(filled.flatMap(({ assumed }) => assumed.filter((a) => a.path === path).map(({ value }) => value)))
  return filled.flatMap(({ assumed }, i) =>
    assumed.map((a) => (valuesAt(a.path).size > 1 ? { ...a, path: `points.${i}.${a.path}` } : a)),
  )
}

/** Same path assumed twice (product shared by several points) is said once. */
function once(assumed: readonly Assumption[]): Assumption[] {
  return [...new Map(assumed.map((a) => [a.path, a])).values()]
}

/**
 * A brief from unknown input: every value present and marked given or assumed, or the list of problems,
 * each naming its field, what was given and what is allowed. Nothing is half accepted.
 */
export function parseBrief(input: unknown): Parsed {
  const parsed = briefSchema.safeParse(input)
  if (!parsed.success) return { ok: false, problems: problemsOf(parsed.error.issues, input) }
  const unnamed = parsed.data.contaminants.length === 0
  const given = withMaterialIds(
    unnamed ? { ...parsed.data, contaminants: usualContaminants(parsed.data.product) } : parsed.data,
  )
  const problems: Problem[] = []
  const assumed: Assumption[] = parsed.data.contaminants.flatMap(({ material }, i) =>
    materialTaken(material, i),
  )
  if (unnamed) assumed.push(usualAssumed(given.contaminants))
  const filled = given.points.map((point, i) => fillPoint(point, i, given.product))
  assumed.push(...byPoint(filled))
  problems.push(...filled.flatMap(({ problems: wrong }) => wrong))
  const contaminants = given.contaminants.map((c, i) => fillContaminant(c, i, assumed, problems))
  given.equipment?.forEach((machine, i) => {
    if (typeof machine !== 'string') problems.push(...machineProblems(machine, `equipment.${i}`))
    else if (!archetypes.has(machine)) {
      const near = nearestWord(machine, archetypes.keys())
      problems.push({
        path: `equipment.${i}`,
        message: `${JSON.stringify(machine)} is not a known archetype${near ? `; did you mean ${near}?` : ''} Known: ${[...archetypes.keys()].join(', ')}`,
      })
    }
  })
  given.equipment?.forEach((machine, i) => {
    const archetype = typeof machine === 'string' ? archetypes.get(machine) : undefined
    const stages = given.points.map((point) => point.stage ?? 'packed')
    if (archetype && !stages.some((stage) => archetype.stages.includes(stage))) {
      problems.push({
        path: `equipment.${i}`,
        message: `${archetype.id} is used at the stages ${archetype.stages.join(', ')}; this brief has ${[...new Set(stages)].join(', ')}`,
      })
    }
  })
  const names = given.points.map((point) => point.name)
  names.forEach((name, i) => {
    if (name !== undefined && names.indexOf(name) !== i) {
      problems.push({
        path: `points.${i}.name`,
        message: `${JSON.stringify(name)} names two inspection points; every point needs its own name`,
      })
    }
  })
  const ids = (given.equipment ?? []).map((m) => (typeof m === 'string' ? m : m.id))
  ids.forEach((id, i) => {
    if (ids.indexOf(id) !== i)
      problems.push({
        path: `equipment.${i}`,
        message: `${JSON.stringify(id)} is named twice; every machine needs its own id`,
      })
  })
  problems.push(...recordProblems(given))
  const unique = [...new Map(problems.map((p) => [`${p.path}|${p.message}`, p])).values()]
  const points = filled.flatMap((f) => (f.point ? [f.point] : []))
  if (points.length < given.points.length || unique.length > 0)
    return { ok: false, problems: firstProblems(unique) }

  const trials = heldAndLapsed({ points, contaminants, equipment: given.equipment ?? [] }, given)
  const brief: Brief = {
    given,
    title: given.title ?? 'Untitled brief',
    market: given.market ?? 'other',
    consumer: given.consumer ?? 'general',
    readyToEat: given.readyToEat ?? true,
    labelClaims: given.labelClaims ?? [],
    points,
    contaminants,
    quotes: given.quotes ?? [],
    equipment: given.equipment ?? [],
    finds: given.finds ?? [],
    answers: given.answers ?? [],
    confirmed: given.confirmed ?? [],
    measured: (trials.measured ?? []).filter(speaksOfPiece),
    cleanRuns: (trials.measured ?? []).filter(speaksOfMachine),
    demonstrated: trials.demonstrated ?? [],
    lapsed: trials.lapsed,
    assumed: once([
      ...(given.market
        ? []
        : [{ path: 'market', label: 'market', value: 'other', range: null, because: 'not stated' }]),
      ...(given.consumer
        ? []
        : [{ path: 'consumer', label: 'consumer', value: 'general', range: null, because: 'not stated' }]),
      ...(given.readyToEat !== undefined
        ? []
        : [
            {
              path: 'readyToEat',
              label: 'ready to eat',
              value: true,
              range: null,
              because: 'not stated; the stricter case',
            },
          ]),
      ...assumed,
    ]),
  }
  const impossible = [...geometryProblems(brief), ...workProblems(brief)]
  return impossible.length > 0 ? { ok: false, problems: impossible } : { ok: true, brief }
}
