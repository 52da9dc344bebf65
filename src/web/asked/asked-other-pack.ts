import type { Context } from 'hono'
import { differingFields } from '../../brief/differing-fields.ts'
import type { Answers } from '../../brief/form/form.ts'
import { fieldAt } from '../../brief/form/form-fields.ts'
import { writeForm } from '../../brief/form/form-writing.ts'
import { parseBrief } from '../../brief/index.ts'
import type { Brief, Problem } from '../../contract/index.ts'
import { quoted } from '../../contract/quoted.ts'
import { type Checked, checkForm } from '../shown/sheet.ts'
import { packBrief, unpackBrief } from './packed-brief.ts'

/** The second pack that an address asks for, and the form it stands in. */
export interface AskedOtherPack {
  /** Null where none was asked for, or the one asked for is the first one again, or it cannot be read. */
  readonly brief: Brief | null
  readonly packed: string | null
  /** The form, with what was typed. */
  readonly answers: Answers
  readonly checked: Checked
  readonly problems: readonly Problem[]
}

/** What the form of the second pack may change: the inspection points and the food, as in the brief's own form. */
const isPackField = (name: string) =>
  /^(points\.\d+|product)\./.test(name) &&
  (fieldAt(name) !== undefined || /^points\.\d+\.parts\.\d+$/.test(name))

/** A packed brief out of what was pasted: an address of any page about a brief, or the packed brief alone. */
const packedIn = (pasted: string): string => {
  const text = pasted.trim()
  return /\/b\/([\w-]+)/.exec(text)?.[1] ?? /[?&]b=([\w-]+)/.exec(text)?.[1] ?? text
}

function named(pasted: string): { given: unknown } | { problem: Problem } {
  const read = unpackBrief(packedIn(pasted))
  if (!('brief' in read))
    return {
      problem: {
        path: 'with',
        message: `Address of the other brief: give the whole address of any page about it; ${quoted(pasted)} carries no brief that can be read`,
      },
    }
  const parsed = parseBrief(read.brief)
  if (parsed.ok) return { given: parsed.brief.given }
  const [first] = parsed.problems
  return { problem: { path: 'with', message: `The other brief: ${first?.path}: ${first?.message}` } }
}

/** Reads ?with=… (another brief) and what was typed over it ("points.0.heightMm": "30 mm"). */
export function askedOtherPack(c: Context, brief: Brief): AskedOtherPack {
  const pasted = c.req.query('with') ?? ''
  const other = pasted.trim() === '' ? { given: brief.given } : named(pasted)
  const problems = 'problem' in other ? [other.problem] : []
  const typed = Object.entries(c.req.query()).filter(([name]) => isPackField(name))
  const start = writeForm('given' in other ? other.given : brief.given)
  const answers = { ...start, ...Object.fromEntries(typed) }
  const checked = checkForm(answers)
  const all = [...problems, ...checked.problems]
  const second = all.length === 0 ? checked.brief : null
  const differs = second !== null && differingFields(brief.given, second.given).length > 0
  return {
    brief: differs ? second : null,
    packed: differs ? packBrief(second.given) : null,
    answers,
    checked,
    problems: all,
  }
}
