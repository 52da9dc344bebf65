import { parseArgs } from 'node:util'
import { differenceOf } from '../advice/book/difference.ts'
import { loadRulebook, type Rulebook } from '../advice/book/rulebook.ts'
import { type AdviseOptions, advise } from '../advise.ts'
import { rather } from '../compare/rather.ts'
import type { Advice, Brief } from '../contract/index.ts'
import { InputError } from './input.ts'
import { loadBrief } from './load-brief.ts'
import { adviceText } from './text/advice-text.ts'
import { contrastText } from './text/contrast-text.ts'
import { differenceText } from './text/difference-text.ts'
import { ruleText } from './text/reason-text.ts'
import { resembling, trailText } from './text/trail-text.ts'

const QUICK: AdviseOptions = { withoutChanges: true, withoutMissing: true }
const json = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`

/** `--rather A B` takes two machines; the rest of the arguments are ordinary. */
function takeRather(args: readonly string[]): { rather: [string, string] | null; rest: string[] } {
  const at = args.indexOf('--rather')
  if (at < 0) return { rather: null, rest: [...args] }
  const [first, second] = [args[at + 1], args[at + 2]]
  if (!first || !second || first.startsWith('--') || second.startsWith('--'))
    throw new InputError(
      '--rather takes two machines of one point, for example --rather xray-dual xray-single',
    )
  return { rather: [first, second], rest: [...args.slice(0, at), ...args.slice(at + 3)] }
}

/** Two machines side by side at every point that has both. */
function ratherText(
  book: Rulebook,
  brief: Brief,
  advice: Advice,
  [a, b]: [string, string],
  asJson: boolean,
): string {
  const found = advice.points.flatMap((point, at) => {
    const option = (id: string) => point.options.find((o) => o.equipment === id)
    const [first, second] = [option(a), option(b)]
    return first && second
      ? [
          {
            name: point.name,
            pair: [first, second] as const,
            contrast: rather(book, brief, advice, at, first, second),
          },
        ]
      : []
  })
  if (found.length === 0) {
    const known = [...new Set(advice.points.flatMap((p) => p.options.map((o) => o.equipment)))]
    throw new InputError(`no inspection point has both ${a} and ${b}; machines compared: ${known.join(', ')}`)
  }
  if (asJson) return json(found.map(({ name, contrast }) => ({ point: name, ...contrast })))
  return found.map(({ name, pair, contrast }) => contrastText(brief, name, contrast, pair)).join('\n')
}

function trail(advice: Advice, id: string, asJson: boolean): string {
  const text = trailText(advice, id)
  if (text === null) {
    const near = resembling(advice, id)
    throw new InputError(
      `this advice has no calculation ${JSON.stringify(id)}${near.length > 0 ? `; some it has: ${near.join(', ')}` : ''}`,
    )
  }
  return asJson ? json(advice.trace.calculations.find((one) => one.id === id)) : text
}

/** gritwise advise BRIEF.json with --json, --reasons, --tree, --trail, --rule, --rather, --rules, --difference */
export async function adviseCommand(args: string[]): Promise<number> {
  const { rather: pair, rest } = takeRather(args)
  const { values, positionals } = parseArgs({
    args: rest,
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      reasons: { type: 'boolean', default: false },
      tree: { type: 'boolean', default: false },
      trail: { type: 'string' },
      rule: { type: 'string' },
      rules: { type: 'string', multiple: true },
      difference: { type: 'boolean', default: false },
    },
  })
  const [path, ...more] = positionals
  if (!path || more.length > 0)
    throw new InputError('advise takes one brief: a file, or - for standard input')
  if (values.difference && !values.rules)
    throw new InputError('--difference compares the house book with another one: give --rules DIR too')
  const brief = await loadBrief(path)
  const options = values.rules ? { book: loadRulebook(values.rules) } : {}
  process.stdout.write(await said())
  return 0

  async function said(): Promise<string> {
    if (values.difference) {
      const difference = differenceOf(
        await advise(brief, QUICK),
        await advise(brief, { ...QUICK, ...options }),
      )
      return values.json ? json(difference) : differenceText(brief, difference)
    }
    const one = pair ?? values.trail ?? values.rule
    const advice = await advise(brief, one ? { ...QUICK, ...options } : options)
    if (pair) return ratherText(options.book ?? loadRulebook(), brief, advice, pair, values.json)
    if (values.trail !== undefined) return trail(advice, values.trail, values.json)
    if (values.rule !== undefined) {
      const { renamed } = options.book ?? loadRulebook()
      return rule(brief, advice, renamed.get(values.rule) ?? values.rule, values.json)
    }
    return values.json ? json(advice) : adviceText(brief, advice, values)
  }
}

function rule(brief: Brief, advice: Advice, id: string, asJson: boolean): string {
  const text = ruleText(brief, advice, id)
  if (text === null) throw new InputError(`no rule ${JSON.stringify(id)} was asked of this brief`)
  return asJson ? json(advice.trace.rules.filter((one) => one.id === id)) : text
}
