import { type FactDefinition, type FactRow, factsOf } from './fact-definition.ts'

/** What a search for a change found: a lever of the point, a size to find, another point, or none. */
export const CHANGE_KINDS = ['lever', 'size', 'point', 'none'] as const

/** What can be pulled at a point, so that a machine meets more. */
export const LEVERS = [
  'depth-with-speed',
  'speed',
  'false-rejects',
  'opening',
  'pipe',
  'metallised-film',
  'plain-film',
  'turned',
  'one-lane',
  'wider-belt',
] as const

/** What a value not given may do: turn an answer, move a size, change what is said, leave rules or an answer open. */
export const MISSING_KINDS = ['turns', 'moves', 'words', 'open-rules', 'open-answer'] as const

const CHANGE: readonly FactRow[] = [
  ['change.kind', 'what is changed', '', 'string', CHANGE_KINDS],
  ['change.machine', 'machine that then meets more', '', 'string'],
  ['change.met', 'contaminants it then meets', '', 'string'],
  ['change.meetsAll', 'it then meets every size asked', '', 'boolean'],
  ['change.lever', 'the lever pulled', '', 'string', LEVERS],
  ['change.earlier', 'the other point lies earlier in the flow', '', 'boolean'],
  ['change.missed', 'sizes missed that changes were searched for', '', 'number'],
  ['change.ranOut', 'the search ended before everything was tried', '', 'boolean'],
]

const MISSING: readonly FactRow[] = [
  ['missing.kind', 'what the value may do', '', 'string', MISSING_KINDS],
  ['missing.turns', 'answers it turns, each with the value', '', 'string'],
  ['missing.piece', 'contaminant whose size it moves most', '', 'string'],
  ['missing.machine', 'machine with that size', '', 'string'],
  ['missing.movesPct', 'how far it moves that size', '%', 'number'],
  ['missing.value', 'value at which it does', '', 'string'],
  ['missing.rules', 'rules that hang on it', '', 'number'],
  ['missing.ruleNames', 'those rules', '', 'string'],
]

export const SEARCH_FACTS: readonly FactDefinition[] = [
  ...factsOf('change', CHANGE),
  ...factsOf('missing', MISSING),
]
