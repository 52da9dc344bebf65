import { describe, expect, it } from 'vitest'
import { readRunRows, readRunsTable } from '../../src/runs/index.ts'

const rows = (text: string) => {
  const read = readRunsTable(text)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read.rows
}
const problems = (text: string) => {
  const read = readRunsTable(text)
  return read.ok ? [] : read.problems.map(({ path, message }) => `${path}: ${message}`)
}

describe('a table of runs', () => {
  it('is the same with commas, with semicolons and decimal commas, with tabs, with a byte order mark', () => {
    const plain = rows('equipment,material,sizeMm,runs,found\nX,quartz,1.5,10,4\nX,,,300,1\n')
    expect(plain).toEqual([
      { equipment: 'X', material: 'quartz', sizeMm: 1.5, runs: 10, found: 4 },
      { equipment: 'X', material: '', runs: 300, found: 1 },
    ])
    expect(rows('\uFEFFequipment;material;sizeMm;runs;found\r\nX;quartz;1,5;10;4\r\nX;;;300;1\r\n')).toEqual(
      plain,
    )
    expect(rows('equipment\tmaterial\tsizeMm\truns\tfound\nX\tquartz\t1.5\t10\t4\nX\t\t\t300\t1')).toEqual(
      plain,
    )
    expect(rows('equipment,material,sizeMm,runs,found\nX,quartz,"1,5",10,4\nX,,,300,1')).toEqual(plain)
  })

  it('takes columns in any order and in any case', () => {
    expect(rows('FOUND,runs,sizemm,Material,equipment\n4,10,1.5,quartz,X\n')).toEqual([
      { equipment: 'X', material: 'quartz', sizeMm: 1.5, runs: 10, found: 4 },
    ])
  })

  it('names every mistake at once, by line and column, and reads nothing', () => {
    const found = problems(
      [
        'equipment,material,sizeMm,runs,found,thershold,pack',
        'X,quarz,two,0,1,,',
        'X,quartz,2,10,11,,',
        'X,quartz,2,5.5,1,,a',
        ',quartz,,10,1,,b',
        'X,quartz,3,10,1,,c',
        'X,quartz,3,10,2,,c',
      ].join('\n'),
    )
    expect(found).toEqual([
      expect.stringContaining('column 6: unknown column "thershold"; do you mean threshold?'),
      expect.stringContaining('row 2, sizeMm: sizeMm must be a plain number'),
      expect.stringContaining('row 2, runs: runs must be a number from 1'),
      expect.stringContaining('row 2, material: unknown material "quarz"; do you mean quartz?'),
      expect.stringContaining('row 3, found: found cannot exceed runs; 11 of 10'),
      expect.stringContaining('row 4, runs: runs must be a whole number; 5.5'),
      expect.stringContaining('row 5, equipment'),
      expect.stringContaining('row 5, sizeMm: a piece has a size'),
      expect.stringContaining('row 7, order: the same run stands in row 6'),
    ])
  })

  it('asks a wire its length and a flake its face, and a clean pack for neither', () => {
    const found = problems(
      'equipment,material,shape,sizeMm,runs,found\nX,ss316,wire,0.5,1,1\nX,glass_any,flake,1,1,1\nX,,sphere,2,1,0\n',
    )
    expect(found.map((one) => one.split(':')[0])).toEqual([
      'row 2, lengthMm',
      'row 3, faceMm2',
      'row 4, material',
    ])
  })

  it('takes no count for three that may be three thousand, nor a table of empty rows for a trial', () => {
    const clean = (count: string) => problems(`equipment;material;runs;found\nX;;${count};0\n`)
    for (const count of ['3.000', '3,000', '1.234.567'])
      expect(clean(count)).toEqual([
        `row 2, runs: runs must be a whole number without marks between thousands; "${count}" was given`,
      ])
    expect([clean('3000'), clean('3000,0'), clean('3e3')]).toEqual([[], [], []])
    expect(problems('equipment,material,runs,found\n , , , \n')).toEqual([
      ': the table has a heading and only empty rows',
    ])
  })

  it('says what stops it being a table', () => {
    expect(problems('')).toEqual([': the table is empty; its first line names the columns'])
    expect(problems('equipment,material,runs\nX,,1')).toEqual([
      'heading: the column found is missing',
      expect.stringContaining('row 2, found'),
    ])
    expect(problems('equipment,material,runs,found\nX,"quartz,1,1')[0]).toMatch(/^: the table cannot be read/)
    expect(problems('equipment,material,runs,found\nX,,10,1,7')).toEqual([
      expect.stringContaining('row 2: 5 cells under 4 columns'),
    ])
  })

  it('reads 100,000 rows and refuses more', () => {
    const heading = 'equipment,material,sizeMm,runs,found,pack\n'
    const many = (count: number) =>
      heading + Array.from({ length: count }, (_, i) => `X,quartz,2,1,${i % 2},${i}`).join('\n')
    expect(rows(many(100_000))).toHaveLength(100_000)
    expect(problems(many(100_001))).toEqual([': at most 100000 rows are read at once; 100001 were given'])
  })
})

describe('runs as JSON', () => {
  it('are checked by the same rules; problems name the row and the key', () => {
    const read = readRunRows([
      { equipment: 'X', material: 'quartz', sizeMm: 2, runs: 3, found: 4 },
      { equipment: 'X', material: 'quartz', size: 2, runs: 3, found: 3 },
      7,
    ])
    expect(read.ok ? [] : read.problems.map(({ path }) => path)).toEqual([
      'rows.0.found',
      'rows.1.size',
      'rows.1.sizeMm',
      'rows.2',
    ])
  })
})
