import { describe, expect, it } from 'vitest'
import { loadRulebook } from '../../../src/advice/book/rulebook.ts'

const LAW = ['law-opened', 'law-from-memory', 'guidance']
const MARKET =
  /\b(?:US|U\.S\.|EU|UK|FDA|FSIS|HSE|HSENI|Regulation \(E[CU]\)|Directive)\b|Great Britain|Northern Ireland/
/** An instrument with the number of its article, section, regulation or chapter within a few words. */
const SECTION =
  /\b(?:CFR|USC|CPG|Articles?|section|regulations?|chapter|Directive|SI|SR|Regulation \(E[CU]\)|OSHA|Notice)\b.{0,24}\d/i
const DAY = /\b(?:[Rr]ead (?:by )?|[Mm]emory on )\d{1,2} [A-Z][a-z]+ 20\d\d/

describe('a sentence that rests on law or a regulator', () => {
  const rules = loadRulebook().rules.filter(({ evidence }) => LAW.includes(evidence))
  it('is there to be looked at', () => expect(rules.length).toBeGreaterThan(30))

  it.each(rules.map(({ id, event }) => [id, event.params.text] as const))(
    '%s says whose law it is, where it stands and on which day it was read',
    (_, text) => {
      expect(text).toMatch(MARKET)
      expect(text).toMatch(SECTION)
      expect(text).toMatch(DAY)
    },
  )
})
