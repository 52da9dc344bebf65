import { beforeAll, describe, expect, it } from 'vitest'
import { differenceOf } from '../../../src/advice/book/difference.ts'
import { withoutRule, withThreshold } from '../../../src/advice/book/other-book.ts'
import { pastedBook } from '../../../src/advice/book/pasted-book.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { advise } from '../../../src/advise.ts'
import { type Advice, differenceSchema } from '../../../src/contract/index.ts'
import { demoBrief, QUICK } from '../demo.ts'

const book = loadRulebook()
const brief = demoBrief('beans')
let before: Advice
beforeAll(async () => {
  before = await advise(brief, { ...QUICK, book })
})
const under = async (other: typeof book) =>
  differenceOf(before, await advise(brief, { ...QUICK, book: other }))

describe('the same brief under another rule book', () => {
  it('differs in nothing where the book is the same', async () => {
    const same = await under(book)
    expect([same.rules, same.verdicts, same.summary]).toEqual([[], [], null])
  })
  it('shows the rule that no longer speaks, and both versions', async () => {
    const other = await under(withoutRule(book, 'second-energy-pays')!)
    expect(differenceSchema.parse(other)).toEqual(other)
    expect(other.rules.map(({ id, from, to }) => [id, from, to])).toContainEqual([
      'second-energy-pays',
      'fired',
      null,
    ])
    expect(other.rules.every(({ id }) => id === 'second-energy-pays')).toBe(true)
    expect([other.from.rules, other.to.rules]).toEqual([
      book.version,
      `${book.version}, without second-energy-pays`,
    ])
  })
  it('shows the outcome a moved threshold turns', async () => {
    const other = await under(withThreshold(book, 'twoEnergies', 3)!)
    expect(other.rules.map(({ key, from, to }) => [key, from, to])).toContainEqual([
      'p0.xray-dual.second-energy-pays',
      'fired',
      'not-fired',
    ])
  })
  it('shows the verdict and place that a rule of one’s own turns', async () => {
    const rule = structuredClone(book.rules.find(({ id }) => id === 'second-energy-pays')!)
    const { book: _book, file: _file, subject: _subject, ...own } = rule
    const text = {
      name: 'trial',
      version: '1',
      rules: [
        { ...own, event: { type: 'excludes', params: { text: 'We buy one energy only, by house rule.' } } },
      ],
    }
    const pasted = pastedBook(JSON.stringify(text))
    if (!pasted.ok) throw new Error(pasted.problem)
    const other = await under(loadRulebook([pasted.book]))
    expect(other.verdicts.map(({ equipment, to }) => [equipment, to])).toContainEqual([
      'xray-dual',
      'not-suitable',
    ])
    expect(other.summary).not.toBeNull()
    expect(other.to.rules).toContain('trial 1')
  })
  it('keeps the keys of what stays, so that two runs can be laid side by side', async () => {
    const after = await advise(brief, { ...QUICK, book: withThreshold(book, 'twoEnergies', 3)! })
    expect(after.trace.rules.map(({ key }) => key)).toEqual(before.trace.rules.map(({ key }) => key))
    expect(new Set(after.trace.rules.map(({ key }) => key)).size).toBe(after.trace.rules.length)
  })
})

describe('another book that cannot be had', () => {
  it('is no book', () => {
    expect(withThreshold(book, 'nothing', 1)).toBeNull()
    expect(withoutRule(book, 'nothing')).toBeNull()
    expect(pastedBook('{')).toMatchObject({ ok: false, problem: expect.stringContaining('not readable') })
    expect(pastedBook('{"rule": []}')).toMatchObject({ ok: false })
  })
  it('says what is wrong inside it', () => {
    const pasted = pastedBook('{"rules": [{"id": "Wrong Name"}]}')
    expect(() => loadRulebook([pasted.ok ? pasted.book : { name: '', files: {} }])).toThrow(/pasted\.json/)
  })
})
