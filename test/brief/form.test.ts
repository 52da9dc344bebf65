import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { readForm } from '../../src/brief/form/form.ts'
import { BRIEF_FIELDS, type Field, fieldAt } from '../../src/brief/form/form-fields.ts'
import { labelOf } from '../../src/brief/form/form-labels.ts'
import { addRow, readAction, removeRow } from '../../src/brief/form/form-rows.ts'
import { writeForm } from '../../src/brief/form/form-writing.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { type BriefInput, briefSchema } from '../../src/contract/index.ts'

const word = fc.stringMatching(/^[a-zé<"&][a-zé <"&,-]{0,14}[a-zé>]$/)

/** Any value a field of the contract allows; empty groups and lists are the same as none. */
function anything(field: Field): fc.Arbitrary<unknown> {
  switch (field.kind) {
    case 'measure': {
      return field.whole
        ? fc.integer({ min: field.min, max: field.max })
        : fc
            .double({ min: field.min, max: field.max, noNaN: true })
            .map((x) => Number(x.toPrecision(9)))
            .filter((x) => x >= field.min && x <= field.max && !Object.is(x, -0))
    }
    case 'text':
      return word
    case 'choice':
      return fc.constantFrom(...field.choices)
    case 'yes-no':
      return fc.boolean()
    case 'words':
      return fc.array(word, { minLength: 1, maxLength: 3 })
    case 'group':
      return record(field.fields).filter((group) => Object.keys(group).length > 0)
    case 'rows':
      return fc.array(
        record(field.fields).filter((row) => Object.keys(row).length > 0),
        { minLength: 1, maxLength: 3 },
      )
    case 'equipment':
      return fc.constantFrom(['xray-single'], ['coil-multi', { id: 'quoted', family: 'sieve', meshMm: 2 }])
  }
}

function record(fields: Readonly<Record<string, Field>>): fc.Arbitrary<Record<string, unknown>> {
  const entries = Object.entries(fields).map(([key, field]): [string, fc.Arbitrary<unknown>] => [
    key,
    anything(field),
  ])
  const requiredKeys = Object.keys(fields).filter((key) => fields[key]!.needed)
  return fc.record(Object.fromEntries(entries), { requiredKeys })
}

describe('a brief in a form', () => {
  it('comes back unchanged, whatever the contract allows', () => {
    fc.assert(
      fc.property(record(BRIEF_FIELDS), (brief) => {
        expect(briefSchema.safeParse(brief).error?.issues ?? []).toEqual([])
        const read = readForm(writeForm(brief as BriefInput))
        expect(read.problems).toEqual([])
        expect(read.input).toEqual(brief)
      }),
      { numRuns: 200 },
    )
  })

  it.each(demos.map((demo) => [demo.id, demo.brief] as const))('keeps the demo brief %s', (_, brief) => {
    expect(readForm(writeForm(brief)).input).toEqual(brief)
  })

  it.each(demos.map((demo) => [demo.id, demo.brief] as const))('accepts the demo brief %s', (_, brief) => {
    expect(parseBrief(brief)).toMatchObject({ ok: true })
  })

  it('names every field in words', () => {
    const walk = (fields: Readonly<Record<string, Field>>, prefix: string) => {
      for (const [key, field] of Object.entries(fields)) {
        const path = prefix + key
        if (field.kind === 'group') walk(field.fields, `${path}.`)
        else expect(labelOf(path), path).not.toBe(path)
        if (field.kind === 'rows') walk(field.fields, `${path}.0.`)
      }
    }
    walk(BRIEF_FIELDS, '')
  })

  it('knows unit and range of a field from the contract', () => {
    expect(fieldAt('points.3.heightMm')).toMatchObject({ kind: 'measure', unit: 'mm', min: 1, max: 2000 })
    expect(fieldAt('points.0.product.temperatureC')).toMatchObject({ unit: '°C' })
    expect(fieldAt('points.0.colour')).toBeUndefined()
  })
})

describe('a form as people fill it', () => {
  const filled = {
    'product.food': 'hazelnut',
    'points.0.heightMm': '3 cm',
    'points.0.speedMPerMin': '0,5 m/s',
    'points.0.stage': 'packed',
    'contaminants.0.material': '',
    'contaminants.1.material': 'quartz',
    'contaminants.1.mustFindMm': 'about 3',
  }

  it('says what was understood where more than a bare number was typed', () => {
    expect(readForm(filled).understood).toEqual({
      'points.0.heightMm': '30 mm',
      'points.0.speedMPerMin': '30 m/min',
    })
  })

  it('leaves empty rows out of the brief and still finds the field of a problem', () => {
    const read = readForm(filled)
    expect(read.input).toMatchObject({ contaminants: [{ material: 'quartz' }] })
    expect(read.formPath('contaminants.0.mustFindMm')).toBe('contaminants.1.mustFindMm')
    expect(read.formPath('points.0.heightMm')).toBe('points.0.heightMm')
    expect(read.formPath('product.food')).toBe('product.food')
  })

  it('finds the field of a machine, ticked or written as JSON', () => {
    const { formPath } = readForm({ 'equipment.sieve': 'on', machines: '[{"id":"a","family":"xray"}]' })
    expect(formPath('equipment.0')).toBe('equipment')
    expect(formPath('equipment.1.kV')).toBe('machines')
  })

  it('names the field it cannot read', () => {
    expect(readForm(filled).problems).toEqual([
      {
        path: 'contaminants.1.mustFindMm',
        message: expect.stringMatching(/^Size you must find: write a number/),
      },
    ])
  })

  it('asks for what is needed in a row that has been begun', () => {
    const read = readForm({
      'product.food': '',
      'points.0.stage': 'packed',
      'contaminants.0.mustFindMm': '3',
    })
    expect(read.problems).toEqual([
      { path: 'product.food', message: 'Choose the food' },
      { path: 'contaminants.0.material', message: 'Choose the contaminant material in row 1' },
    ])
  })

  it('keeps a machine described as JSON, and says when it is not JSON', () => {
    expect(readForm({ machines: '{"id":"a","family":"sieve"}' }).input).toMatchObject({
      equipment: [{ id: 'a', family: 'sieve' }],
    })
    expect(readForm({ machines: '{"id":' }).problems).toContainEqual({
      path: 'machines',
      message: expect.stringContaining('not readable as JSON'),
    })
  })
})

describe('rows of a form', () => {
  const answers = {
    title: 'x',
    'points.0.name': 'a',
    'points.1.name': 'b',
    'points.1.parts.0.mm': '1',
    'points.2.name': 'c',
  }

  it('are added at the end', () => {
    expect(addRow(answers, 'points')).toEqual({ ...answers, 'points.3': 'row' })
    expect(addRow(answers, 'points.1.parts')).toEqual({ ...answers, 'points.1.parts.1': 'row' })
  })

  it('close up when one is removed', () => {
    expect(removeRow(answers, 'points.0')).toEqual({
      title: 'x',
      'points.0.name': 'b',
      'points.0.parts.0.mm': '1',
      'points.1.name': 'c',
    })
  })

  it('are only those the brief has', () => {
    expect(readAction('add:points.0.parts')).toEqual({ do: 'add', list: 'points.0.parts' })
    expect(readAction('remove:contaminants.2')).toEqual({ do: 'remove', row: 'contaminants.2' })
    expect(readAction('add:nonsense')).toEqual({ do: 'advise' })
    expect(readAction('check')).toEqual({ do: 'check' })
    expect(readAction(undefined)).toEqual({ do: 'advise' })
  })
})
