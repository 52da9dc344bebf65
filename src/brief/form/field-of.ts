import type { z } from 'zod'

/** One entry of a schema as a form sees it; derived from the contract, so the form cannot drift from it. */
export type Field =
  | { kind: 'measure'; unit: string; min: number; max: number; whole: boolean; needed: boolean }
  | { kind: 'text'; needed: boolean }
  | { kind: 'choice'; choices: readonly string[]; needed: boolean }
  | { kind: 'yes-no'; needed: boolean }
  | { kind: 'words'; needed: boolean }
  | { kind: 'group'; fields: Fields; needed: boolean }
  | { kind: 'rows'; fields: Fields; most: number; needed: boolean }
  | { kind: 'equipment'; most: number; needed: boolean }

export type Fields = Readonly<Record<string, Field>>

type Shape = Readonly<Record<string, z.ZodType>>
type Anything = z.ZodType & {
  unwrap(): z.ZodType
  element: z.ZodType
  shape: Shape
  options: string[]
  minValue: number | null
  maxValue: number | null
  isInt: boolean
}

/** The field a schema asks for. */
export function fieldOf(schema: z.ZodType, needed = true): Field {
  const any = schema as Anything
  switch (schema.def.type) {
    case 'optional':
    case 'default':
      return fieldOf(any.unwrap(), false)
    case 'number': {
      const unit = schema.meta()?.description?.split(', ')[1] ?? ''
      const { minValue, maxValue, isInt } = any
      const range = { min: minValue ?? -Infinity, max: maxValue ?? Infinity, whole: isInt }
      return { kind: 'measure', unit, ...range, needed }
    }
    case 'string':
      return { kind: 'text', needed }
    case 'enum':
      return { kind: 'choice', choices: any.options, needed }
    case 'boolean':
      return { kind: 'yes-no', needed }
    case 'object':
      return { kind: 'group', fields: fieldsOf(any.shape), needed }
    case 'array':
      if (any.element.def.type === 'object')
        return {
          kind: 'rows',
          fields: fieldsOf((any.element as Anything).shape),
          most: mostOf(schema),
          needed,
        }
      if (any.element.def.type === 'string') return { kind: 'words', needed }
      return { kind: 'equipment', most: mostOf(schema), needed }
    default:
      throw new Error(`the form has no field for a ${schema.def.type}`)
  }
}

/** Entries a list takes at most; the contract bounds every list of groups. */
function mostOf(list: z.ZodType): number {
  for (const check of list.def.checks ?? []) {
    const { maximum } = check._zod.def as { maximum?: number }
    if (maximum !== undefined) return maximum
  }
  throw new Error('the contract leaves a list of the form unbounded')
}

export function fieldsOf(shape: Shape): Fields {
  return Object.fromEntries(Object.entries(shape).map(([key, schema]) => [key, fieldOf(schema)]))
}
