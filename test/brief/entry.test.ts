import { describe, expect, it } from 'vitest'
import { entersBehind } from '../../src/brief/entry.ts'
import { sampleBrief } from '../advice/sample.ts'

const behind = (name: string, entersHere: string[], material = 'ss316') =>
  entersBehind(
    sampleBrief({
      contaminants: [{ material, mustFindMm: 3 }],
      flow: [{ step: 'washing' }, { step: 'slicing', entersHere }, { step: 'packing' }],
      points: [{ name }],
    }),
    0,
    0,
  )

describe('where a point stands in the flow', () => {
  it.each([
    ['slicing', false],
    ['washing', true],
    ['after slicing', false],
    ['Behind the slicing', false],
    ['bare slices after slicing', false],
    ['before slicing', true],
    ['before the packing', false],
    ['end of line', null],
    ['after dinner', null],
  ])('%s: steel of the slicer still enters behind it: %s', (name, expected) => {
    expect(behind(name, ['ss316'])).toBe(expected)
  })
})

describe('what a step means by its words', () => {
  it.each([
    ['ss316', 'ss316', true],
    ['Stainless steel 316', 'ss316', true],
    ['metal', 'ss316', true],
    ['metal', 'quartz', null],
    ['glass', 'glass_container', true],
    ['screws', 'ss316', null],
  ])('%s of %s: %s', (word, material, expected) => {
    expect(behind('washing', [word], material)).toBe(expected)
  })
})
