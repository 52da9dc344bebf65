import type { ConditionTrace, Truth } from '../../contract/index.ts'
import { groupTruth, inverse } from './explain.ts'

interface LeafAt {
  /** Way to the leaf from the root by child numbers, "0.1.0"; the root itself is "". */
  readonly path: string
  /** Same comparison, same key: two leaves with one key are known together. */
  readonly key: string
}

/** Above this many different leaves the exhaustive search is left out and an irreducible set is given. */
const SEARCH_LIMIT = 14

/**
 * The shortest set of leaves that settles a condition by itself: with these known and everything else
 * unknown the truth of the root is the same (a prime implicant). For a root that is not settled, the leaves
 * whose values are missing. Paths into the tree, in reading order.
 */
export function decisiveLeaves(trace: ConditionTrace): readonly string[] {
  const chosen = support(trace, '', trace.truth)
  if (!isSettled(trace.truth)) return chosen.map((leaf) => leaf.path)
  const all = allLeaves(trace, '')
  const keys = [...new Set(all.map((leaf) => leaf.key))]
  const wanted = new Set(chosen.map((leaf) => leaf.key))
  const shared = keys.length < all.length
  const best = shared ? (smallest(trace, keys, wanted.size) ?? irreducible(trace, wanted)) : wanted
  return [...best]
    .map((key) => all.findIndex((leaf) => leaf.key === key))
    .sort((a, b) => a - b)
    .map((index) => all[index]!.path)
}

/** Smallest support when no comparison occurs twice: sums where all children are needed, else the smallest. */
function support(node: ConditionTrace, path: string, truth: Truth): readonly LeafAt[] {
  if (node.kind === 'leaf') return [{ path, key: keyOf(node) }]
  const children = (node.children ?? []).map((child, i) => ({ child, path: childPath(path, i) }))
  if (node.kind === 'not')
    return children.flatMap(({ child, path: at }) => support(child, at, inverse(truth)))
  const matching = children
    .filter(({ child }) => child.truth === truth)
    .map(({ child, path: at }) => support(child, at, truth))
  const oneIsEnough = truth === (node.kind === 'all' ? 'false' : 'true')
  if (!oneIsEnough) return matching.flat()
  return matching.reduce((least, set) => (set.length < least.length ? set : least))
}

/** Shortest set by trying all smaller ones; null when there are too many leaves to try. */
function smallest(trace: ConditionTrace, keys: readonly string[], upTo: number): ReadonlySet<string> | null {
  if (keys.length > SEARCH_LIMIT) return null
  const tryAll = (from: number, size: number, taken: readonly string[]): ReadonlySet<string> | null => {
    if (size === 0) {
      const known = new Set(taken)
      return truthKnowing(trace, known) === trace.truth ? known : null
    }
    for (let i = from; i <= keys.length - size; i++) {
      const found = tryAll(i + 1, size - 1, [...taken, keys[i]!])
      if (found) return found
    }
    return null
  }
  for (let size = 1; size <= upTo; size++) {
    const found = tryAll(0, size, [])
    if (found) return found
  }
  return null
}

/** Drops what is not needed, one by one, until nothing can go. */
function irreducible(trace: ConditionTrace, wanted: ReadonlySet<string>): ReadonlySet<string> {
  const kept = new Set(wanted)
  for (const key of wanted) {
    kept.delete(key)
    if (truthKnowing(trace, kept) !== trace.truth) kept.add(key)
  }
  return kept
}

/** Truth of the tree when only the leaves with these keys are known. */
export function truthKnowing(node: ConditionTrace, known: ReadonlySet<string>): Truth {
  if (node.kind === 'leaf') return known.has(keyOf(node)) ? node.truth : 'unknown'
  const truths = (node.children ?? []).map((child) => truthKnowing(child, known))
  return node.kind === 'not' ? inverse(truths[0]!) : groupTruth(node.kind, truths)
}

/** Leaves of a trace with their paths. */
export function allLeaves(node: ConditionTrace, path = ''): readonly LeafAt[] {
  if (node.kind === 'leaf') return [{ path, key: keyOf(node) }]
  return (node.children ?? []).flatMap((child, i) => allLeaves(child, childPath(path, i)))
}

/** True or false, whatever is missing. */
export const isSettled = (truth: Truth): boolean => truth === 'true' || truth === 'false'

const childPath = (path: string, i: number) => (path === '' ? `${i}` : `${path}.${i}`)

const keyOf = (leaf: ConditionTrace) =>
  JSON.stringify([leaf.fact, leaf.operator, leaf.threshold?.id, leaf.threshold?.id ?? leaf.threshold?.value])
