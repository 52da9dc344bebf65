import { describe, expect, it } from 'vitest'
import { ANSWER } from '../../src/exercises/exercise.ts'
import { readHands, rightAt, roomScore, scoreOf, votable, writeHands } from '../../src/exercises/hands.ts'
import { guessWords, judge, rightWords } from '../../src/exercises/judge.ts'
import { EXERCISES } from '../../src/exercises/list.ts'
import { readDone, writeDone } from '../../src/exercises/sitting.ts'
import { VOICES } from '../../src/exercises/voice.ts'
import { writtenValue } from '../../views/exercises/pictures/written-value.ts'

const all = EXERCISES.map((exercise) => [exercise.id, exercise] as const)

describe('every exercise', () => {
  it('is one of at least fourteen, each with its own name', () => {
    expect(EXERCISES.length).toBeGreaterThanOrEqual(14)
    expect(new Set(EXERCISES.map(({ id }) => id)).size).toBe(EXERCISES.length)
    for (const { id } of EXERCISES) expect(id).toMatch(/^[a-z0-9-]+$/)
  })

  it.each(all)(
    '%s has as many questions as it says, at both levels, with the same answers',
    (_, exercise) => {
      const full = exercise.questions(VOICES.full)
      const plain = exercise.questions(VOICES.plain)
      expect(full).toHaveLength(exercise.count)
      expect(plain).toHaveLength(exercise.count)
      expect(plain.map(({ answer }) => ('right' in answer ? answer.right : answer.value))).toEqual(
        full.map(({ answer }) => ('right' in answer ? answer.right : answer.value)),
      )
    },
  )

  it.each(all)('%s has a right answer among its choices, and says why', (_, exercise) => {
    for (const question of exercise.questions(VOICES.full)) {
      const { answer } = question
      if (answer.kind === 'choice') {
        const ids = answer.choices.map(({ id }) => id)
        expect(ids).toContain(answer.right)
        expect(new Set(ids).size).toBe(ids.length)
        expect(new Set(answer.choices.map(({ words }) => words)).size, question.ask).toBe(ids.length)
        for (const id of ids) expect(id).toMatch(/^[a-z0-9-]+$/i)
      } else {
        expect(answer.value).toBeGreaterThan(0)
        expect(answer.within).toBeGreaterThan(1)
      }
      expect(question.ask).toMatch(/\?$|\)$/)
      expect(question.outcome).toMatch(/[.)]$|mm$|inside$|cheese$/)
      expect(question.reason.join(' ').length).toBeGreaterThan(60)
      expect(JSON.stringify(question)).not.toMatch(/undefined|NaN|Infinity|null mm/)
    }
  })

  it.each(all)('%s draws numbers only', (_, exercise) => {
    for (const { pictures } of exercise.questions(VOICES.full)) {
      for (const picture of pictures) {
        if (picture.kind !== 'bars' && picture.kind !== 'curves') continue
        const values =
          picture.kind === 'bars'
            ? picture.bars.flatMap(({ value }) => (value === null ? [] : [value]))
            : picture.curves.flatMap(({ points }) => points.flat())
        expect(values.length).toBeGreaterThan(0)
        for (const value of values) expect(Number.isFinite(value)).toBe(true)
      }
    }
  })

  const STATISTICS =
    /chance|probab|confiden|binomial|percent|statistic|distribution|standard deviation|noise units|\bPOD\b|95 %|(?<!\bat|salt)\s\d+(?:\.\d+)? %(?! salt)/i

  /** Every text in a question, ids apart. */
  function textsIn(part: unknown, key = ''): string[] {
    if (typeof part === 'string') return ['id', 'right', 'kind', 'choice'].includes(key) ? [] : [part]
    if (Array.isArray(part)) return part.flatMap((one) => textsIn(one))
    if (typeof part !== 'object' || part === null) return []
    return Object.entries(part).flatMap(([name, value]) => textsIn(value, name))
  }

  it.each(all)('%s in plain words speaks no statistics', (_, exercise) => {
    const voice = VOICES.plain
    const said = [
      exercise.title(voice),
      exercise.about(voice),
      exercise.teaches(voice),
      ...textsIn(exercise.questions(voice)),
    ]
    for (const text of said) expect(text).not.toMatch(STATISTICS)
    expect(said.length).toBeGreaterThan(6)
  })
})

describe('nothing is answered before it is asked', () => {
  it.each(all)('%s gives no answer away on the list, in a situation or a scene', (_, exercise) => {
    for (const voice of Object.values(VOICES)) {
      const questions = exercise.questions(voice)
      for (const question of questions) {
        const right = rightWords(question).toLowerCase()
        const before = [
          exercise.about(voice),
          ...questions.flatMap((other) => [
            other.situation,
            ...(other === question ? [] : [other.ask]),
            ...other.facts.map(({ value }) => value),
            JSON.stringify(other.scene ?? ''),
          ]),
        ]
        const others = votable(question).map(({ words }) => words.toLowerCase())
        // A text that names the right choice among the others gives nothing away.
        const told = before.filter(
          (text) =>
            text.toLowerCase().includes(right) &&
            !others.some((other) => other !== right && text.toLowerCase().includes(other)),
        )
        if (right.length > 6) expect(told, question.ask).toEqual([])
      }
    }
  })

  it.each(all)('%s draws no later answer beside an earlier one', (_, exercise) => {
    const questions = exercise.questions(VOICES.full)
    questions.forEach((question, at) => {
      for (const later of questions.slice(at + 1)) {
        const shown = JSON.stringify(question.pictures)
        expect(JSON.stringify(later.pictures) === shown && shown !== '[]').toBe(false)
        if (later.answer.kind === 'number') expect(shown).not.toContain(`:${later.answer.value}`)
      }
    })
  })

  it('failed-check tells on no later step what was right on an earlier one', () => {
    const questions = all.find(([id]) => id === 'failed-check')![1].questions(VOICES.full)
    const TELLING = [
      /\bstop|\bstood\b|\bstands\b/i,
      /5,200/,
      /cable|broken|\brepair(?!ed, line)/i,
      /test piece|full check/i,
      /opened|locked/i,
    ]
    questions.slice(0, TELLING.length).forEach((own, at) => {
      for (const later of questions.slice(at + 1)) {
        const texts = [
          later.situation,
          later.ask,
          ...later.facts.flatMap(({ words, value }) => [words, value]),
        ]
        expect(texts.join(' '), `${at + 1}`).not.toMatch(TELLING[at]!)
      }
      expect(own.facts.map(({ words }) => words).join(' ')).not.toMatch(TELLING[at]!)
    })
  })

  it.each(all)('%s has no choice that its digits give away', (_, exercise) => {
    for (const { answer } of exercise.questions(VOICES.full)) {
      if (answer.kind !== 'choice') continue
      const numbers = answer.choices.flatMap(({ words }) => /^[\d.]+ %$/.exec(words)?.[0] ?? [])
      if (numbers.length === answer.choices.length)
        expect(new Set(numbers.map((text) => text.includes('.'))).size, numbers.join()).toBe(1)
    }
  })

  it.each(all)('%s writes an answer in figures as its bar does', (_, exercise) => {
    for (const question of exercise.questions(VOICES.full)) {
      if (question.answer.kind !== 'number') continue
      const { unit } = question.answer
      const drawn = question.pictures.flatMap((picture) =>
        picture.kind === 'bars' ? picture.bars.filter(({ choice }) => choice === ANSWER) : [],
      )
      expect(drawn).toHaveLength(1)
      expect(writtenValue(drawn[0]!.value!, unit)).toBe(rightWords(question))
    }
  })

  it.each(all)('%s does not say the answer twice', (_, exercise) => {
    for (const question of exercise.questions(VOICES.full))
      expect(
        question.outcome.toLowerCase().startsWith(rightWords(question).toLowerCase()),
        question.ask,
      ).toBe(false)
  })
})

describe('hands', () => {
  const choice = EXERCISES.find(({ id }) => id === 'jar-heel')!.questions(VOICES.full)[0]!
  const number = EXERCISES.find(({ id }) => id === 'hold-and-interval')!.questions(VOICES.full)[0]!

  it('travel as one word, and come back', () => {
    expect(readHands(writeHands([3, 0, 12]))).toEqual([3, 0, 12])
    for (const none of [null, '-', 'base', '115.2', 'hands.a', 'hands.1.x', 'hands.-1.2', 'hands.1000'])
      expect(readHands(none), String(none)).toBeNull()
    expect(readDone(writeDone([{ id: 'a', guesses: [writeHands([1, 2])], seconds: null }]))).toEqual([
      { id: 'a', guesses: ['hands.1.2'], seconds: null },
    ])
  })

  it('score where the right choice stands, for a number among what people say', () => {
    const at = votable(choice).findIndex(({ id }) => id === 'base')
    expect(rightAt(choice)).toBe(at)
    const counts = votable(choice).map((_, i) => (i === at ? 7 : 1))
    expect(scoreOf(choice, counts)).toEqual({ right: 7, all: 7 + counts.length - 1 })
    expect(votable(number)[rightAt(number)]?.words).toBe('5,600 packs')
    expect(new Set(votable(number).map(({ words }) => words)).size).toBe(votable(number).length)
  })

  it('make one score of a sitting; predictions of one reader do not count', () => {
    const right = votable(number).map((_, i) => (i === rightAt(number) ? 4 : 2))
    expect(
      roomScore([
        { questions: [choice], guesses: ['base'] },
        { questions: [number], guesses: [writeHands(right)] },
      ]),
    ).toEqual({ right: 4, all: 10 })
  })

  it.each(all)('%s can be voted on, and one choice is right', (_, exercise) => {
    for (const question of exercise.questions(VOICES.full)) {
      expect(rightAt(question)).toBeGreaterThanOrEqual(0)
      expect(votable(question).filter(({ id }) => judge(question, id) === 'right')).toHaveLength(1)
    }
  })
})

describe('a prediction', () => {
  const [choice] = EXERCISES.find(({ id }) => id === 'dual-deep-grains')!.questions(VOICES.full)
  const [number] = EXERCISES.find(({ id }) => id === 'false-rejects-a-day')!.questions(VOICES.full)

  it('is right, not so, or none', () => {
    const { answer } = choice!
    if (answer.kind !== 'choice') throw new Error('a choice was expected')
    const wrong = answer.choices.find(({ id }) => id !== answer.right)!
    expect(judge(choice!, answer.right)).toBe('right')
    expect(judge(choice!, wrong.id)).toBe('wrong')
    for (const none of [null, '-', '', 'nothing-of-it']) expect(judge(choice!, none)).toBe('none')
    expect(guessWords(choice!, wrong.id)).toBe(wrong.words)
  })

  it('as a number is right within its factor, however it is typed', () => {
    expect(judge(number!, '115')).toBe('right')
    expect(judge(number!, '1 15,2')).toBe('none')
    expect(judge(number!, '115,2')).toBe('right')
    expect(judge(number!, '90')).toBe('too-low')
    expect(judge(number!, '1000')).toBe('too-high')
    expect(judge(number!, 'many')).toBe('none')
    const [held] = EXERCISES.find(({ id }) => id === 'hold-and-interval')!.questions(VOICES.full)
    for (const typed of ['5600', '5,600', '5 600']) expect(judge(held!, typed), typed).toBe('right')
    expect(guessWords(held!, '5600')).toBe('5,600 packs')
    expect(rightWords(number!)).toBe('115 packs')
  })
})
