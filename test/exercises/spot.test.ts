import { describe, expect, it } from 'vitest'
import { ofMachine, ofPeople } from '../../src/exercises/spot/score.ts'
import { LEVELS, spotRound } from '../../src/exercises/spot/spot-round.ts'
import { gridOver, readSquares, squaresOf, touches } from '../../src/exercises/spot/squares.ts'
import { sampleBrief } from '../xray/image/sample.ts'

const brief = sampleBrief('cheddar')
const round = (level: number, n: number) =>
  spotRound(brief, { point: 0, machine: 'xray-dual', level: LEVELS[level]!, seed: 1, round: n })!

describe('a round of spotting the piece', () => {
  const easy = [1, 2, 3].map((n) => round(0, n))

  it('is the same whoever asks, and another in every round', () => {
    expect(round(0, 1).sheet).toEqual(easy[0]!.sheet)
    expect(easy[1]!.sheet).not.toEqual(easy[0]!.sheet)
  })

  it('holds pieces well above what the machine finds at the first level, and the machine finds them', () => {
    for (const { sheet } of easy) {
      expect(sheet.pieces.length).toBeGreaterThanOrEqual(1)
      expect(sheet.pieces.every((piece) => piece.found)).toBe(true)
    }
  })

  it('has clean packs among the hard ones', () => {
    const counts = [1, 2, 3, 4, 5, 6].map((n) => round(2, n).sheet.pieces.length)
    expect(Math.min(...counts)).toBe(0)
    expect(Math.max(...counts)).toBeGreaterThan(0)
  })

  it('pays people and machine by one rule: two for a piece, minus one for good food', () => {
    const { sheet } = easy[0]!
    const grid = gridOver(sheet.frame)
    const all = squaresOf(grid)
    const right = all.filter((square) => sheet.pieces.some((piece) => touches(grid, square, piece)))
    const wrong = all.find((square) => !right.includes(square))!
    const n = sheet.pieces.length
    expect(ofPeople(sheet, grid, right)).toEqual({ found: n, falseMarks: 0, points: 2 * n })
    expect(ofPeople(sheet, grid, [wrong])).toEqual({ found: 0, falseMarks: 1, points: -1 })
    expect(ofPeople(sheet, grid, all).points).toBeLessThan(0)
    const alarm = { u: 1, v: 1, halfMm: 1 }
    expect(ofMachine({ ...sheet, falseAlarms: [alarm, alarm] }).points).toBe(2 * n - 2)
  })
})

describe('squares', () => {
  const grid = gridOver({ leftMm: 0, topMm: 0, widthMm: 120, heightMm: 60 })

  it('are named by column and row, and read however they are written', () => {
    expect([grid.columns, grid.rows]).toEqual([12, 6])
    expect(readSquares('c4, F6;c4 z9', grid)).toEqual({
      squares: [
        { name: 'C4', column: 2, row: 3 },
        { name: 'F6', column: 5, row: 5 },
      ],
      unknown: ['Z9'],
    })
    expect(readSquares('', grid).squares).toEqual([])
  })
})
