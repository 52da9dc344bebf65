import { demos } from '../../src/brief/demos.ts'

/** A seeded stream of numbers from 0 to 1 (xorshift of 32 bits): the same seed, the same attack. */
export function stream(seed: number): () => number {
  let state = (seed * 2654435761) >>> 0 || 1
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    state >>>= 0
    return state / 2 ** 32
  }
}

type Node = Record<string, unknown> | unknown[]
type Chance = () => number

const pick = <T>(list: readonly T[], chance: Chance): T => list[Math.floor(chance() * list.length)]!

const deep = (levels: number): unknown => {
  let value: unknown = 1
  for (let level = 0; level < levels; level++) value = level % 2 ? [value] : { a: value }
  return value
}

/** Values that programs forget. */
const NASTY: readonly ((chance: Chance) => unknown)[] = [
  () => null,
  () => true,
  () => 0,
  () => -1,
  () => 1e308,
  () => 1e-320,
  () => 2 ** 53 + 1,
  () => '',
  () => '   ',
  () => '1 in 1',
  () => '../../etc/x',
  () => '"><script>alert(1)</script>',
  () => 'line\r\nset-cookie: a=b',
  () => '\u0000\u001b[31m',
  () => '\ud83d',
  () => 'ｆｕｌｌ　💀 ümläut',
  () => 'x'.repeat(5000),
  () => '9'.repeat(400),
  () => [],
  () => ({}),
  () => [[]],
  () => [null],
  () => ({ a: 1 }),
  () => JSON.parse('{"__proto__":{"x":1},"constructor":2}'),
  () => deep(30),
  (chance) => Array.from({ length: Math.floor(chance() * 60) }, () => ({})),
  (chance) => Object.fromEntries(Array.from({ length: 60 }, (_, k) => [`k${k}${chance()}`, k])),
  (chance) => (chance() - 0.3) * 10 ** Math.floor(chance() * 8),
]

function nodesOf(root: Node): Node[] {
  const nodes: Node[] = [root]
  for (const node of nodes)
    for (const value of Object.values(node))
      if (typeof value === 'object' && value !== null) nodes.push(value as Node)
  return nodes
}

function once(root: Node, chance: Chance): void {
  const node = pick(nodesOf(root), chance)
  const key = pick(Object.keys(node), chance)
  const at = node as Record<string, unknown>
  const kind = chance()
  if (key === undefined || kind < 0.12) {
    at[pick(['title', 'poinst', 'a', 'material', 'x'.repeat(300), '0', 'toString'], chance)] = pick(
      NASTY,
      chance,
    )(chance)
  } else if (kind < 0.25) delete at[key]
  else if (kind < 0.35 && Array.isArray(node)) {
    const copies = Math.floor(chance() * 50)
    for (let k = 0; k < copies; k++) node.push(structuredClone(node[0]))
  } else if (kind < 0.55 && typeof at[key] === 'number') {
    at[key] = (at[key] as number) * 10 ** ((chance() < 0.6 ? 0.3 : 4) * (chance() - 0.5))
  } else at[key] = pick(NASTY, chance)(chance)
}

/** The text of a brief with one to three things wrong, or of something that is no brief at all. */
export function hostileText(chance: Chance): string {
  const brief = structuredClone(pick(demos, chance).brief) as unknown as Node
  for (let times = 1 + Math.floor(chance() * 3); times > 0; times--) once(brief, chance)
  const text = JSON.stringify(chance() < 0.02 ? (pick(NASTY, chance)(chance) ?? null) : brief)
  const kind = chance()
  if (kind < 0.03) return text.slice(0, Math.floor(chance() * text.length))
  if (kind < 0.05) return `\uFEFF${text}`
  if (kind < 0.07) return text.replace(/\d+/, '1e999')
  if (kind < 0.08)
    return text.replace(/[{[]/, (bracket) => bracket.repeat(100 + Math.floor(chance() * 20_000)))
  return text
}

/** A brief that is still one: numbers moved within reason, so that the physics is what is attacked. */
export function movedBrief(chance: Chance): unknown {
  const small = demos.filter(({ id }) => ['milk-powder', 'mince', 'sauce-jar', 'cheddar'].includes(id))
  const brief = structuredClone(pick(small, chance).brief) as unknown as Node
  const numbers = nodesOf(brief).flatMap((node) =>
    Object.entries(node).flatMap(([key, value]) => (typeof value === 'number' ? [{ node, key, value }] : [])),
  )
  for (let times = 1 + Math.floor(chance() * 4); times > 0; times--) {
    const { node, key, value } = pick(numbers, chance)
    ;(node as Record<string, unknown>)[key] = value * 10 ** (2 * chance() - 1)
  }
  return brief
}
