import { materials } from '../../reference/index.ts'
import type { RuleScope } from '../book/rule-scope.ts'
import { decide } from '../decide/decide.ts'
import { type FactSheet, joinSheets } from '../facts/fact-sheet.ts'
import { factsForBrief, factsForContaminant, factsForPoint } from '../facts/facts.ts'
import { placeId, quoteId } from '../facts/place-id.ts'
import { missedOf } from '../order/missed.ts'
import { quotedIn } from '../order/quoted.ts'
import { notedFindings } from '../say/noted.ts'
import { joined } from '../say/said.ts'
import type { Answered, LineOutcome, Ordered } from '../stages.ts'
import { factsOfApart } from './facts-apart.ts'
import { factsOfLine } from './facts-line.ts'
import { factsOfMiss } from './facts-miss.ts'
import { factsOfPlace } from './facts-place.ts'
import { factsOfQuote } from './facts-quote.ts'
import { factsOfRow } from './facts-row.ts'
import { factsOfClose, factsOfTogether, placedAt } from './facts-two.ts'
import { factsOfUse } from './facts-use.ts'
import { pairsOf } from './pairs-of.ts'

type Place = Pick<LineOutcome, 'line' | 'pointIndex' | 'equipment' | 'contaminant' | 'beside'>

/**
 * The stage: the rules once more, over what was ordered. What they say is the answer: the headline, what is left
 * to do about each contaminant, what to ask and test before ordering, and the ground of every verdict.
 */
export async function answer(ordered: Ordered): Promise<Answered> {
  const { book, brief, lines, points } = ordered
  const sheets: FactSheet[] = []
  const answers: LineOutcome[] = []
  const misses: Answered['misses'][number][] = []
  const keep = (sheet: FactSheet): FactSheet => {
    sheets.push(sheet)
    return sheet
  }
  const ask = async (scope: RuleScope, place: Place, facts: FactSheet) => {
    for (const outcome of await decide(book, scope, facts.facts)) answers.push({ ...outcome, ...place })
  }
  const ofBrief = factsForBrief(brief, materials)
  const ofPoints = brief.points.map((_, at) => joinSheets(ofBrief, factsForPoint(brief, at, materials)))
  const nowhere = { line: null, pointIndex: null, equipment: null, contaminant: null }
  for (const [line, { combined, rows }] of lines.entries()) {
    const ofLine = keep(factsOfLine(ordered, line))
    await ask('line', { ...nowhere, line }, joinSheets(ofBrief, ofLine))
    for (const row of rows) {
      const { contaminant } = row
      const ofRow = joinSheets(
        factsForContaminant(brief, contaminant, materials),
        keep(factsOfRow(ordered, line, row)),
      )
      await ask('line:contaminant', { ...nowhere, line, contaminant }, joinSheets(ofBrief, ofLine, ofRow))
    }
    for (const use of combined.uses) {
      const place = { ...nowhere, line, pointIndex: use.point, equipment: use.option.equipment }
      const ofUse = keep(factsOfUse(brief, line, use))
      await ask('use', place, joinSheets(ofPoints[use.point]!, ofLine, ofUse))
    }
    for (const [a, b] of combined.seenTwice.length > 0 ? pairsOf(combined.uses) : []) {
      const place = {
        ...nowhere,
        line,
        pointIndex: b.point,
        equipment: b.option.equipment,
        beside: placedAt(a),
      }
      await ask('together', place, joinSheets(ofBrief, ofLine, keep(factsOfTogether(brief, a, b))))
    }
  }
  for (const [pointIndex, { options, close, apart }] of points.entries()) {
    for (const option of options) {
      const ofPlace = keep(factsOfPlace(brief, pointIndex, option))
      const place = { ...nowhere, pointIndex, equipment: option.equipment }
      await ask('option', place, joinSheets(ofPoints[pointIndex]!, ofPlace))
      for (const missed of option.verdict === 'best-fit' ? [] : missedOf(notedFindings(option))) {
        const { contaminant } = missed.finding
        misses.push({ ...missed, pointIndex, equipment: option.equipment })
        const scope = placeId({ point: pointIndex, equipment: option.equipment, contaminant })
        const ofMiss = keep(factsOfMiss(brief, scope, missed))
        await ask('miss', { ...place, contaminant }, joinSheets(ofPoints[pointIndex]!, ofMiss))
      }
    }
    const because = (equipment: string) =>
      joined(
        answers.filter(
          (one) =>
            one.outcome === 'fired' &&
            one.type === 'grounds' &&
            one.pointIndex === pointIndex &&
            one.equipment === equipment,
        ),
      )
    const side = (equipment: string) => ({
      ...options.find((option) => option.equipment === equipment)!,
      because: because(equipment),
    })
    for (const two of apart) {
      const sides = [side(two.first), side(two.second)] as const
      const place = {
        ...nowhere,
        pointIndex,
        equipment: two.second,
        beside: placedAt({ point: pointIndex, option: sides[0] }),
      }
      const ofApart = keep(factsOfApart(brief, pointIndex, two, sides))
      await ask('apart', place, joinSheets(ofPoints[pointIndex]!, ofApart))
    }
    if (close) {
      const ofClose = keep(factsOfClose(brief, pointIndex, close))
      const place = {
        ...nowhere,
        pointIndex,
        equipment: close.second.equipment,
        beside: placedAt({ point: pointIndex, option: close.first }),
      }
      await ask('close', place, joinSheets(ofPoints[pointIndex]!, ofClose))
    }
  }
  const quoted = quotedIn(brief, points)
  for (const one of quoted) {
    const { index, point, finding, quote } = one
    const contaminant = finding?.contaminant ?? null
    const equipment = point === null ? null : quote.equipment
    const scope = `${placeId({ point, equipment, contaminant })}.with.${quoteId(index)}`
    const place = { ...nowhere, pointIndex: point, equipment, contaminant, beside: quoteId(index) }
    await ask('quote', place, joinSheets(ofBrief, keep(factsOfQuote(brief, scope, one))))
  }
  const facts = [...ordered.facts, ...joinSheets(...sheets).facts]
  return { ...ordered, facts, answers, misses, quoted }
}
