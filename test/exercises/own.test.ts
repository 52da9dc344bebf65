import { beforeAll, describe, expect, it } from 'vitest'
import { advise } from '../../src/advise.ts'
import { demos } from '../../src/brief/demos.ts'
import { parseBrief } from '../../src/brief/index.ts'
import type { Exercise } from '../../src/exercises/exercise.ts'
import { rightWords } from '../../src/exercises/judge.ts'
import type { OwnCase } from '../../src/exercises/own/own-case.ts'
import { ownExercises } from '../../src/exercises/own/own-exercises.ts'
import { readDone, readGuesses, withDone, writeDone } from '../../src/exercises/sitting.ts'
import { VOICES } from '../../src/exercises/voice.ts'

async function caseOf(id: string): Promise<OwnCase> {
  const parsed = parseBrief(demos.find((demo) => demo.id === id)!.brief)
  if (!parsed.ok) throw new Error('a demo is no brief')
  const advice = await advise(parsed.brief, {
    withoutChanges: true,
    withoutMissing: true,
    withoutRecords: true,
  })
  return { brief: parsed.brief, advice, pieces: parsed.brief.contaminants.map(({ material }) => material) }
}

describe('exercises made of a brief', () => {
  let jar: OwnCase
  let made: Exercise[]
  beforeAll(async () => {
    jar = await caseOf('sauce-jar')
    made = ownExercises(jar)
  })
  const find = (id: string) => made.find((exercise) => exercise.id === id)

  it('ask for the weak place of its own container', () => {
    const [question] = find('own-weak-place')!.questions(VOICES.full)
    const { answer } = question!
    if (answer.kind !== 'choice') throw new Error('a choice was expected')
    const zones = jar.advice.points[0]!.options.find(({ rank }) => rank === 1)!.findings[0]!.zones
    expect(answer.choices).toHaveLength(zones.length)
    // Glass sinks: the wall hides it better than the base, but there it does not stay.
    const lying = zones.filter(({ canLieThere }) => canLieThere)
    const sizes = lying.map(({ sizes: { expectedMm } }) => expectedMm ?? Number.POSITIVE_INFINITY)
    const worst = lying[sizes.indexOf(Math.max(...sizes))]!
    expect(lying.length).toBeLessThan(zones.length)
    expect(question!.ask).toMatch(/^Where it comes to rest/)
    expect(answer.right).toBe(worst.name.replace(' ', '-'))
  })

  it('take hold and false rejects from its own line', () => {
    const { packsPerMin, hoursPerDay, falseRejectsPerPack, checkIntervalMin, reactMin } = jar.brief.points[0]!
    const askedValue = (id: string) => {
      const { answer } = find(id)!.questions(VOICES.full)[0]!
      return answer.kind === 'number' ? answer.value : null
    }
    expect(askedValue('own-hold')).toBe(packsPerMin! * (checkIntervalMin! + reactMin!))
    expect(askedValue('own-false-rejects')).toBe(packsPerMin! * 60 * hoursPerDay * falseRejectsPerPack)
    expect(find('own-failed-check')?.timed).toBe(true)
  })

  it('answer with what the advice says', () => {
    const first = jar.advice.points[0]!.options.find(({ rank }) => rank === 1)!
    const meets = new Set(first.findings.map((finding) => finding.meets))
    for (const { answer } of find('own-size-asked')!.questions(VOICES.full))
      expect(meets).toContain(answer.kind === 'choice' ? answer.right : null)
    for (const { answer } of find('own-smallest-size')?.questions(VOICES.full) ?? [])
      expect(jar.advice.points[0]!.options.map(({ equipment }) => equipment)).toContain(
        answer.kind === 'choice' ? answer.right : null,
      )
  })

  it('say what no machine finds, where there is such a thing', async () => {
    const beans = ownExercises(await caseOf('beans')).find(({ id }) => id === 'own-hard-to-find')
    const { answer } = beans!.questions(VOICES.plain)[0]!
    const found = answer.kind === 'choice' ? answer.choices.find(({ id }) => id === answer.right) : null
    expect(['wood', 'pe']).toContain(found?.words)
    expect(find('own-hard-to-find')).toBeUndefined()
  })

  it('hold as many questions as they say', () => {
    for (const exercise of made) expect(exercise.questions(VOICES.full)).toHaveLength(exercise.count)
  })

  it.each(demos.map(({ id }) => [id]))('ask nothing twice for one answer, and no tie: %s', async (id) => {
    for (const exercise of ownExercises(await caseOf(id))) {
      const questions = exercise.questions(VOICES.full)
      const answered = questions.map(
        (question) => `${question.ask} ${question.situation.split(':')[0]} ${rightWords(question)}`,
      )
      expect(new Set(answered).size, exercise.id).toBe(answered.length)
      if (exercise.id !== 'own-weak-place') continue
      for (const { answer, pictures, outcome } of questions) {
        const [picture] = pictures
        if (answer.kind !== 'choice' || picture?.kind !== 'bars') throw new Error('bars were expected')
        const right = picture.bars.find(({ choice }) => choice === answer.right)!
        const rest = picture.bars.some(({ words }) => words.includes('comes to rest'))
        const others = picture.bars.filter(
          (bar) => bar !== right && (!rest || bar.words.includes('comes to rest')),
        )
        for (const { value } of others) expect(value).toBeLessThan(right.value ?? Number.POSITIVE_INFINITY)
        expect(outcome).not.toContain('null')
      }
    }
  })
})

describe('predictions on their way in an address', () => {
  it('come back as they went', () => {
    const done = [
      { id: 'foil-and-film', guesses: ['xray', '-'], seconds: null },
      { id: 'failed-check', guesses: ['stop', 'all'], seconds: 95 },
      { id: 'hold-and-interval', guesses: ['5600'], seconds: null },
    ]
    expect(readDone(writeDone(done))).toEqual(done)
  })

  it('take the place of an earlier try', () => {
    const once = withDone([], { id: 'a', guesses: ['x'], seconds: null })
    expect(withDone(once, { id: 'a', guesses: ['y'], seconds: null })).toEqual([
      { id: 'a', guesses: ['y'], seconds: null },
    ])
  })

  it('leave out what nobody sent', () => {
    expect(readDone(undefined)).toEqual([])
    expect(readDone('<script>_x~ok_a!-5~ok_b!1e9~fine_c')).toEqual([
      { id: 'fine', guesses: ['c'], seconds: null },
    ])
    expect(readDone('x_'.repeat(5000))).toEqual([])
    expect(readGuesses('a_b_"<_-')).toEqual(['a', 'b', '-'])
  })
})
