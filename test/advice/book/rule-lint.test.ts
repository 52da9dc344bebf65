import { describe, expect, it } from 'vitest'
import { RulebookError } from '../../../src/advice/book/rule-problem.ts'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'
import { RULE, ruleFolder, SOURCE, THRESHOLD } from './rule-folder.ts'

function problemsOf(files: Parameters<typeof ruleFolder>[0]): string {
  try {
    loadRulebook([], ruleFolder(files))
  } catch (error) {
    if (error instanceof RulebookError) return error.problems.join('\n')
    throw error
  }
  return ''
}
const withRule = (over: Record<string, unknown>) => problemsOf({ rules: [{ ...RULE, ...over }] })
const withCondition = (leaf: unknown, over: Record<string, unknown> = {}) =>
  withRule({
    conditions: { all: [...RULE.conditions.all, leaf] },
    ...over,
  })

describe('a sound rule book', () => {
  it('loads', () => expect(problemsOf({})).toBe(''))
})

describe('the lint names file, rule and what is allowed', () => {
  it.each([
    [
      'an unknown fact',
      () => withCondition({ fact: 'point.hight', operator: 'equal', value: true }),
      /trial\.json: rule "tall-food".*unknown fact "point\.hight" for point; known there: .*point\.heightMm/,
    ],
    [
      'a fact of another scope',
      () => withCondition({ fact: 'contaminant.kind', operator: 'equal', value: 'bone' }),
      /rule "tall-food".*unknown fact "contaminant\.kind" for point/,
    ],
    [
      'an unknown operator',
      () => withCondition({ fact: 'point.heightMm', operator: 'above', value: { fact: 'threshold.high' } }),
      /trial\.json: "tall-food": .*unknown operator "above"; known: equal, notEqual/,
    ],
    [
      'an unknown threshold',
      () =>
        withCondition({ fact: 'point.widthMm', operator: 'greaterThan', value: { fact: 'threshold.wide' } }),
      /rule "tall-food".*unknown threshold "threshold\.wide"; known: threshold\.high/,
    ],
    [
      'a bare number',
      () => withCondition({ fact: 'point.widthMm', operator: 'greaterThan', value: 50 }),
      /rule "tall-food": point\.widthMm greaterThan: a number is compared with \{"fact": "threshold\.…"\}.*bare value \(50\)/,
    ],
    [
      'a bare number behind equal',
      () => withCondition({ fact: 'point.lanes', operator: 'equal', value: 2 }),
      /never with a bare value \(2\)/,
    ],
    [
      'a comparison across units',
      () =>
        withCondition({ fact: 'point.lanes', operator: 'greaterThan', value: { fact: 'threshold.high' } }),
      /compares "" with "mm"; both sides must have the same unit/,
    ],
    [
      'a number operator on a word',
      () =>
        withCondition({ fact: 'point.stage', operator: 'greaterThan', value: { fact: 'threshold.high' } }),
      /the fact is a string; allowed: equal, notEqual, in, notIn/,
    ],
    [
      'a word the fact cannot be',
      () => withCondition({ fact: 'point.stage', operator: 'equal', value: 'boxed' }),
      /"boxed" is no value of it; allowed: loose, pumped, free-fall, packed/,
    ],
    [
      'a yes/no compared with a word',
      () => withCondition({ fact: 'pack.rigid', operator: 'equal', value: 'yes' }),
      /the fact is a boolean; "yes" is not; allowed: true, false/,
    ],
    [
      'a list behind equal',
      () => withCondition({ fact: 'point.stage', operator: 'equal', value: ['packed'] }),
      /takes one value, not a list/,
    ],
    ['an empty group', () => withCondition({ any: [] }), /"any" is an empty group; it needs at least one/],
    [
      'a group beside a comparison',
      () => withCondition({ all: [RULE.conditions.all[0]], priority: 1 }),
      /"all" stands alone; found also "priority"/,
    ],
    [
      'a path into a fact',
      () => withCondition({ fact: 'point.stage', operator: 'equal', value: 'packed', path: '$.x' }),
      /fact, operator and value, nothing else; "path" was given/,
    ],
    [
      'a bare comparison as the whole condition',
      () => withRule({ conditions: RULE.conditions.all[0] }),
      /"tall-food": conditions: the outermost condition is "all", "any" or "not"/,
    ],
    [
      'an unknown source',
      () => withRule({ sources: ['hearsay'] }),
      /unknown source "hearsay"; known: a-source/,
    ],
    [
      'an unknown source of a threshold',
      () => problemsOf({ thresholds: [{ ...THRESHOLD, source: 'hearsay' }] }),
      /thresholds\.json: "high": unknown source "hearsay"; known: a-source/,
    ],
    [
      'an unknown unit',
      () => problemsOf({ thresholds: [{ ...THRESHOLD, unit: 'inch' }] }),
      /thresholds\.json: "high": unit: unit must be one of .*"mm".*"inch" was given/,
    ],
    [
      'a threshold nobody uses',
      () => problemsOf({ thresholds: [THRESHOLD, { ...THRESHOLD, id: 'idle' }] }),
      /thresholds\.json: "idle": no rule compares with it/,
    ],
    [
      'a placeholder that is no fact',
      () => withRule({ event: { type: 'warns', params: { text: 'The food is {point.hight} high.' } } }),
      /rule "tall-food": the text names the unknown fact "point\.hight"/,
    ],
    [
      'no firing example',
      () => withRule({ examples: [RULE.examples[1], RULE.examples[1]] }),
      /rule "tall-food": no example that fires; .*"fires": true/,
    ],
    [
      'no non-firing example',
      () => withRule({ examples: [RULE.examples[0], RULE.examples[0]] }),
      /rule "tall-food": no example that does not fire/,
    ],
    [
      'two rules with the same conditions',
      () => problemsOf({ rules: [RULE, { ...RULE, id: 'tall-food-again' }] }),
      /rule "tall-food-again": has the same conditions as "tall-food" \(trial\.json\) for point/,
    ],
    [
      'an id used twice',
      () => problemsOf({ rules: [RULE, RULE] }),
      /rule "tall-food": the id is already used in trial\.json/,
    ],
    [
      'an unknown effect',
      () => withRule({ event: { type: 'forbids', params: { text: 'The food is too tall.' } } }),
      /"tall-food": event\.type: event type must be one of "excludes".*"forbids" was given/,
    ],
    [
      'an unknown ground',
      () => withRule({ appliesTo: ['belt'] }),
      /"tall-food": appliesTo\.0: appliesTo must be one of "brief", "point", "xray"/,
    ],
    [
      'a missing exception',
      () => withRule({ exception: undefined }),
      /"tall-food": exception: exception must be text/,
    ],
    [
      'a misspelt key',
      () => withRule({ becuase: 'x' }),
      /"tall-food": Unrecognized key: "becuase"; allowed: id, title, .*because/,
    ],
    [
      'a file that is not JSON',
      () => problemsOf({ raw: { 'broken.json': '{ "subject": ' } }),
      /broken\.json: not readable as JSON/,
    ],
  ])('%s', (_, make, said) => {
    expect(make()).toMatch(said)
  })

  it('says every problem at once', () => {
    const said = problemsOf({
      rules: [
        {
          ...RULE,
          sources: ['hearsay'],
          event: { type: 'warns', params: { text: 'Says {nothing.known}.' } },
        },
      ],
    })
    expect(said).toMatch(/hearsay/)
    expect(said).toMatch(/nothing\.known/)
  })

  it('takes the same comparisons in another order for the same conditions', () => {
    const flat = { fact: 'point.stage', operator: 'equal', value: 'packed' }
    const one = { ...RULE, conditions: { all: [...RULE.conditions.all, flat] } }
    const other = { ...RULE, id: 'other-way-round', conditions: { all: [flat, ...RULE.conditions.all] } }
    expect(problemsOf({ rules: [one, other] })).toMatch(/same conditions/)
  })

  it('names a folder that is not there', () => {
    expect(() => loadRulebook(['/no/such/folder'])).toThrow(
      /no such folder, or not to be read; a rule book is a folder/,
    )
  })
})

describe('a book laid over the house book', () => {
  const house = ruleFolder()
  it('wins by id, keeps the rest and is named', () => {
    const own = ruleFolder({
      rules: [{ ...RULE, title: 'Tall for our line' }],
      thresholds: [{ ...THRESHOLD, value: 30 }],
      book: { ...BOOK_OF_PLANT },
    })
    const book = loadRulebook([own], house)
    expect(book.version).toBe('trial book 7 + plant 3')
    expect(book.rules).toHaveLength(1)
    expect(book.rules[0]).toMatchObject({ title: 'Tall for our line', book: 'plant' })
    expect(book.thresholds.get('high')).toMatchObject({ value: 30, book: 'plant' })
    expect(book.sources.get('a-source')?.text).toBe(SOURCE.text)
  })
  it('may have its rules in folders of its own', () => {
    const low = { ...RULE, id: 'low-food', title: 'The food is low' }
    const conditions = { all: [{ ...RULE.conditions.all[0], operator: 'lessThan' }] }
    const examples = RULE.examples.map((one) => ({ ...one, fires: !one.fires }))
    const rules = [{ ...low, conditions, examples }]
    const own = ruleFolder({
      raw: { 'height/low.json': JSON.stringify({ subject: 'Food that is low', rules }) },
    })
    const read = loadRulebook([own], house).rules.find(({ id }) => id === 'low-food')
    expect(read).toMatchObject({ file: 'height/low.json', subject: 'Food that is low' })
    const broken = ruleFolder({ raw: { 'height/low.json': '{' } })
    expect(() => loadRulebook([broken], house)).toThrow(/height\/low\.json: /)
  })
  it('may change a threshold and leave the rule alone', () => {
    const own = ruleFolder({
      rules: [],
      thresholds: [{ ...THRESHOLD, value: 30 }],
      book: { ...BOOK_OF_PLANT },
    })
    const book = loadRulebook([own], house)
    expect(book.rules[0]).toMatchObject({ book: 'trial book' })
    expect(book.thresholds.get('high')?.value).toBe(30)
  })
})

const BOOK_OF_PLANT = {
  name: 'plant',
  version: '3',
  changelog: [{ version: '3', changes: ['Lower food counts as tall here.'] }],
}
