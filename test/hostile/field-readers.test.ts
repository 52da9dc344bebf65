import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { readForm } from '../../src/brief/form/form.ts'
import { fieldAt } from '../../src/brief/form/form-fields.ts'
import { readAction } from '../../src/brief/form/form-rows.ts'
import { writeForm } from '../../src/brief/form/form-writing.ts'
import { readMeasure } from '../../src/brief/form/measure.ts'
import { readDone, readGuesses } from '../../src/exercises/sitting.ts'
import { fileName } from '../../src/intake/file-name.ts'
import { readElements } from '../../src/reference/own-material.ts'
import { statusOfCard } from './asked.ts'

const LONG = 100_000
/** Texts that make a careless expression try every way of reading them: an expression that goes back over 100,000 characters needs minutes. */
const NASTY: readonly string[] = [
  `1 in ${' '.repeat(LONG)}x`,
  `-${' '.repeat(LONG)}x`,
  `${'9'.repeat(LONG)}x`,
  `${'1 '.repeat(LONG / 2)}x`,
  `${'1,'.repeat(LONG / 2)}x`,
  `1${' '.repeat(LONG)}/${' '.repeat(LONG)}x`,
  `O${' '.repeat(LONG)}x`,
  `${'.1'.repeat(LONG / 2)}x`,
  `${'a.'.repeat(LONG / 2)}`,
  `${'-'.repeat(LONG)}x`,
  `${'~a_b!1'.repeat(LONG / 6)}`,
  `${','.repeat(LONG)}`,
  `${'é'.repeat(LONG)}`,
]
const UNITS = ['mm', '', 'm/min', 'g', '°C', '%', 'kHz', 'g/cm³', 'per minute']

describe('a field of 100,000 characters', () => {
  it('is read by every reader in one go', async () => {
    for (const text of NASTY) {
      for (const unit of UNITS) expect(readMeasure(text, unit).ok).toBe(false)
      expect(() => readElements(text)).toThrow()
      for (const read of [
        readDone,
        readGuesses,
        readAction,
        fieldAt,
        (words: string) => fileName(words, 'x'),
      ])
        read(text)
      expect(await statusOfCard(text)).toBe(422)
    }
  })

  it('in any field of the form is a problem of that field, told in short', () => {
    const answers = Object.fromEntries(demos.flatMap(({ brief }) => Object.entries(writeForm(brief))))
    for (const path of Object.keys(answers)) {
      if (answers[path] === 'row') continue
      for (const text of NASTY.slice(0, 3)) {
        const { problems } = readForm({ ...answers, [path]: text })
        for (const { message } of problems) expect(message.length, path).toBeLessThan(600)
        if (answers[path] !== 'on' && !/\.base$/.test(path))
          expect(problems.map((one) => one.path)).toContain(path)
      }
    }
  })

  it('with a number beyond all numbers is refused in words', () => {
    for (const text of ['1e309', '-1e309 mm', '1e308 m'])
      expect(readMeasure(text, 'mm')).toMatchObject({ ok: false, because: expect.stringContaining('larger') })
  })

  it('as the name of a field is no field', () => {
    for (const text of NASTY)
      expect(readForm({ [text]: '1', [`points.${text}`]: '1' }).input).toMatchObject({ product: {} })
  })
})
