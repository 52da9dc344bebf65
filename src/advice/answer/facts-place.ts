import type { Brief, Finding } from '../../contract/index.ts'
import { isAsked } from '../assess/meets.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { placeId } from '../facts/place-id.ts'
import { placesMissed } from '../order/places-missed.ts'
import { achievedWords, nameWords, packSize, sizedWords, wordList } from '../say/words.ts'
import type { Ranked } from '../stages.ts'

/** Facts of one option in its place among the others of its point. */
export function factsOfPlace(brief: Brief, point: number, option: Ranked): FactSheet {
  const write = new FactWriter(placeId({ point, equipment: option.equipment }), brief)
  const { findings, behind } = option
  const asked = findings.filter(isAsked)
  const having = (...meets: Finding['meets'][]) => asked.filter((f) => meets.includes(f.meets))
  const names = (those: readonly Finding[]) => wordList(those.map((f) => sizedWords(brief, f.contaminant)))
  const count = (id: string, those: readonly Finding[], words = names(those)) => {
    write.computed(`place.${id}`, those.length)
    write.computed(`place.${id}Names`, words)
  }
  write.computed('place.verdict', option.verdict)
  write.computed('place.ranked', option.rank !== null)
  write.computed('place.ruledOut', option.excluded)
  if (option.excludedBy) write.computed('place.ruledOutBecause', option.excludedBy.text.replace(/\.$/, ''))
  write.computed('place.tooSmall', option.askFor !== null)
  write.computed('place.behindBest', behind !== null)
  write.computed('place.burden', option.burden)
  if (behind) write.computed('place.bestBurden', behind.burden)
  if (behind && behind.smallerByMm !== null) write.computed('place.smallerByMm', behind.smallerByMm)
  if (behind) write.computed('place.findsSmaller', behind.smallerByMm !== null)
  write.computed('place.onlyTheFilm', option.onlyTheFilm)
  count('partly', having('partly'))
  write.computed('place.partlyPlaces', wordList([...new Set(having('partly').flatMap(placesMissed))]))
  count('expected', having('maybe'))
  const missed = having('no', 'cannot')
  count('missed', missed, wordList(missed.map((f) => missedWords(brief, f))))
  count('untested', having('open'))
  write.computed('place.asked', asked.length)
  const found = findings.filter((f) => f.expectedMm !== null)
  write.computed('place.achieves', found.length)
  write.computed(
    'place.achievable',
    wordList(found.map((f) => `${nameWords(brief, f.contaminant)} ${achievedWords(f)}`)),
  )
  write.computed('place.buildSize', packSize(brief.points[point]!))
  return write.sheet()
}

/** A missed contaminant with what is achievable instead. */
function missedWords(brief: Brief, finding: Finding): string {
  const name = sizedWords(brief, finding.contaminant)
  return finding.expectedMm === null
    ? `${name} (not at all)`
    : `${name} (achievable: ${achievedWords(finding)})`
}
