import type { ContaminantInput, Problem } from '../contract/brief.ts'
import { materials, ownMaterialId, readElements } from '../reference/index.ts'
import { nearestWord } from './nearest.ts'

const OWN = ['ownName', 'kind', 'densityGPerCm3', 'elements'] as const
const NEEDED = {
  kind: 'an own material needs its kind: glass, stone, bone, polymer or organic',
  densityGPerCm3: 'an own material needs its density in g/cm³',
  elements: 'an own material needs its elements in per cent by mass, such as "O 49, Si 33, Al 18"',
} as const

/** Id of a contaminant's material: a listed one, or "custom" described by kind, density and elements. */
export function contaminantMaterial(input: ContaminantInput, path: string, problems: Problem[]): string {
  if (input.material === 'custom') return ownId(input, path, problems)
  for (const field of OWN) {
    if (input[field] !== undefined)
      problems.push({
        path: `${path}.${field}`,
        message: `belongs to the material "custom"; the material is ${JSON.stringify(input.material)}`,
      })
  }
  if (!materials.has(input.material)) {
    const near = nearestWord(input.material, materials.keys())
    problems.push({
      path: `${path}.material`,
      message: `${JSON.stringify(input.material)} is not a listed material${near ? `; did you mean ${near}?` : `. Listed: ${[...materials.keys()].join(', ')}.`} Any other is "custom" with its kind, density and elements`,
    })
  }
  return input.material
}

function ownId(input: ContaminantInput, path: string, problems: Problem[]): string {
  const { kind, densityGPerCm3, elements, ownName = 'own material' } = input
  const wrong = (field: string, message: string) => problems.push({ path: `${path}.${field}`, message })
  for (const [field, message] of Object.entries(NEEDED) as [keyof typeof NEEDED, string][])
    if (input[field] === undefined) wrong(field, message)
  if (kind === undefined || densityGPerCm3 === undefined || elements === undefined) return input.material
  try {
    return ownMaterialId({ name: ownName, kind, densityGPerCm3, massFractions: readElements(elements) })
  } catch (error) {
    if (!(error instanceof RangeError)) throw error
    wrong('elements', error.message)
    return input.material
  }
}
