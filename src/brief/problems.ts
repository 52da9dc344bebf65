import type { z } from 'zod'
import { briefSchema, type Problem } from '../contract/index.ts'
import { quoted, shortened } from '../contract/quoted.ts'
import { MOST_PROBLEMS } from '../intake/bounds.ts'
import { firstProblems } from '../intake/problem-list.ts'
import { nearestWord } from './nearest.ts'

type Issue = z.core.$ZodIssue
type Schema = z.core.$ZodType

type Definition = Record<string, unknown> & { type: string }
function definitionOf(schema: Schema): Definition {
  return schema._zod.def as unknown as Definition
}

/** Keys a schema allows at a path (empty where the path names no object). */
function keysAt(schema: Schema, path: readonly PropertyKey[], input: unknown): string[] {
  let schemas: Schema[] = [schema]
  let value = input
  for (const step of [...path, null]) {
    schemas = schemas.flatMap((schema) => openUp(schema, value))
    if (step === null) break
    schemas = schemas.flatMap((schema) => {
      const def = definitionOf(schema)
      if (def.type === 'object') {
        const inner = (def.shape as Record<string, Schema>)[String(step)]
        return inner ? [inner] : []
      }
      return def.type === 'array' ? [def.element as Schema] : []
    })
    value = (value as Record<PropertyKey, unknown> | undefined)?.[step]
  }
  return schemas.flatMap((schema) => {
    const def = definitionOf(schema)
    return def.type === 'object' ? Object.keys(def.shape as object) : []
  })
}

/** Wrappers taken off; of a union the branch that fits the value's family (or all). */
function openUp(schema: Schema, value: unknown): Schema[] {
  const def = definitionOf(schema)
  if (def.type === 'optional' || def.type === 'default') return openUp(def.innerType as Schema, value)
  if (def.type !== 'union') return [schema]
  const options = (def.options as Schema[]).flatMap((option) => openUp(option, value))
  const family = (value as { family?: unknown } | undefined)?.family
  const fitting = options.filter((option) => {
    const shape = definitionOf(option).shape as { family?: Schema } | undefined
    const literals = shape?.family && (definitionOf(shape.family).values as unknown[] | undefined)
    return literals?.includes(family)
  })
  return fitting.length > 0 ? fitting : options
}

/** The value a path leads to. */
export function at(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (value as Record<PropertyKey, unknown> | undefined)?.[key],
    input,
  )
}

function toProblems(issue: Issue, before: readonly PropertyKey[], input: unknown, schema: Schema): Problem[] {
  const path = [...before, ...issue.path]
  if (issue.code === 'unrecognized_keys') {
    const allowed = keysAt(schema, path, input)
    return unknownKeys(issue.keys, path, allowed)
  }
  if (issue.code === 'invalid_union' && issue.errors.length > 0) {
    const isText = typeof at(input, path) === 'string'
    const branch = issue.errors.find((errors) => {
      const first = errors[0]
      const rejectsType = first?.code === 'invalid_type' && first.path.length === 0
      return isText
        ? first?.code !== 'invalid_union' && !rejectsType
        : !(rejectsType && first.expected === 'string')
    })
    return (branch ?? issue.errors.at(-1)!).flatMap((inner) => toProblems(inner, path, input, schema))
  }
  const name = String(path.at(-1) ?? 'the brief')
  return [{ path: path.join('.'), message: issueWords(issue, name, at(input, path)) }]
}

/** What the schema says of the value at a place, in its own words where it has some. */
export const wordsOf = (issue: Issue, name: string, given: unknown): string =>
  /^(?:Invalid|Too) /.test(issue.message) ? issueWords(issue, name, given) : issue.message

function issueWords(issue: Issue, name: string, given: unknown): string {
  if (issue.message.includes('given')) return issue.message
  if (given === undefined && issue.message.startsWith('Invalid')) return `${name} is missing`
  if (issue.code === 'invalid_type')
    return `must be ${KINDS[issue.expected] ?? issue.expected}; ${quoted(given)} was given`
  if (issue.message === 'Invalid input') return `${name} cannot be ${quoted(given)}`
  return lengthWords(issue) ?? issue.message
}

/** Kinds of values, as a person names them. */
const KINDS: Readonly<Record<string, string>> = {
  array: 'a list',
  tuple: 'a list',
  object: 'a group of values',
  record: 'a group of values',
  int: 'a whole number',
  number: 'a number',
  string: 'a text',
}

/** A list too long or too short, where the contract has no words of its own for it. */
function lengthWords(issue: Issue): string | null {
  if (issue.code === 'too_big' && issue.message.startsWith('Too big'))
    return `takes at most ${issue.maximum} entries`
  if (issue.code === 'too_small' && issue.message.startsWith('Too small'))
    return `takes at least ${issue.minimum} entries`
  return null
}

/** Keys that a group does not know, each with the nearest it does know. */
export function unknownKeys(
  keys: readonly string[],
  path: readonly PropertyKey[],
  allowed: readonly string[],
): Problem[] {
  const said = keys.slice(0, MOST_PROBLEMS).map((key) => {
    const word = shortened(key)
    const near = nearestWord(word, allowed)
    const advice = near ? `did you mean ${near}?` : `allowed here: ${allowed.join(', ')}`
    return { path: [...path, word].join('.'), message: `unknown key ${quoted(key)}; ${advice}` }
  })
  const more = keys.length - said.length
  return more > 0 ? [...said, { path: path.join('.'), message: `${more} more unknown keys` }] : said
}

/** What the schema has against an input, in words that name the field and what is allowed; the first of many. */
export function problemsOf(
  issues: readonly Issue[],
  input: unknown,
  schema: Schema = briefSchema,
): Problem[] {
  const problems: Problem[] = []
  for (const issue of issues) {
    if (problems.length > MOST_PROBLEMS) break
    problems.push(...toProblems(issue, [], input, schema))
  }
  return firstProblems(problems)
}
