import { describe, expect, it } from 'vitest'
import { textLines } from '../../src/intake/text-lines.ts'
import { readHeading } from '../../src/lines/read/heading.ts'
import { readProduct } from '../../src/lines/read/product-row.ts'
import { type TableRow, tableRows } from '../../src/lines/read/records.ts'

async function* pieces(text: string | Uint8Array, size = 7): AsyncGenerator<Uint8Array> {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text
  for (let at = 0; at < bytes.length; at += size) yield bytes.subarray(at, at + size)
}

async function rowsOf(text: string | Uint8Array): Promise<TableRow[]> {
  const rows: TableRow[] = []
  for await (const row of tableRows(textLines(pieces(text)))) rows.push(row)
  return rows
}
const cellsOf = async (text: string | Uint8Array) =>
  (await rowsOf(text)).map((row) => ('cells' in row ? [row.row, ...row.cells] : [row.row, row.because]))

describe('rows of a table', () => {
  it('reads comma, semicolon and tab, quotes, either end of line, a byte order mark, UTF-16', async () => {
    const read = [
      [1, 'a', 'b'],
      [2, 'x, "y"', '1,5'],
    ]
    expect(await cellsOf('\uFEFFa,b\r\n"x, ""y""","1,5"\r\n')).toEqual(read)
    expect(await cellsOf('a;b\n"x, ""y""";1,5')).toEqual(read)
    expect(await cellsOf('a\tb\n"x, ""y"""\t1,5\n\n')).toEqual(read)
    expect(await cellsOf(Buffer.from('\uFEFFa;b\n"x, ""y""";1,5', 'utf16le'))).toEqual(read)
  })

  it('reads a cell of several lines, and counts the lines of the file', async () => {
    expect(await cellsOf('a;b\n"two\nlines";1\nc;2')).toEqual([
      [1, 'a', 'b'],
      [2, 'two\nlines', '1'],
      [4, 'c', '2'],
    ])
  })

  it('loses no good row to a bad one: a quote left open costs its own line', async () => {
    const rows = await cellsOf('a;b\n1;2\n"x"y;3\n4;"open\n5;6\n7;8\n')
    expect(rows.filter(([, , second]) => second !== undefined)).toEqual([
      [1, 'a', 'b'],
      [2, '1', '2'],
      [5, '5', '6'],
      [6, '7', '8'],
    ])
    expect(rows.filter(([, , second]) => second === undefined).map(([row]) => row)).toEqual([3, 4])
  })
})

describe('the heading of a table', () => {
  it('takes keys of the brief, long or short, with a unit of its own', () => {
    expect(readHeading(['title', 'food', 'HEIGHTMM [cm]', 'contaminants.0.mustFindMm', '#sku', ''])).toEqual({
      ok: true,
      columns: [
        { heading: 'title', path: 'title', unit: '' },
        { heading: 'food', path: 'product.food', unit: '' },
        { heading: 'HEIGHTMM [cm]', path: 'points.0.heightMm', unit: 'cm' },
        { heading: 'contaminants.0.mustFindMm', path: 'contaminants.0.mustFindMm', unit: '' },
        { heading: '#sku', path: '#sku', unit: '' },
        { heading: '', path: '', unit: '' },
      ],
    })
  })

  it.each([
    [['food', 'heigtMm'], 'column 2', 'heightMm'],
    [['food', 'product.food'], 'column 2', 'twice'],
    [['food [mm]'], 'column 1', 'no unit'],
    [['points'], 'column 1', 'unknown'],
    [['#sku'], 'heading', 'product.food'],
  ])('refuses %j by its column', (cells, path, says) => {
    const read = readHeading(cells)
    expect(read).toMatchObject({ ok: false, problems: [{ path }] })
    expect(!read.ok && read.problems[0]!.message).toContain(says)
  })
})

describe('a row as a brief', () => {
  const heading = readHeading([
    'food',
    'heightMm [cm]',
    'widthMm',
    'lengthMm',
    'speedMPerMin',
    'readyToEat',
    'equipment',
    'contaminants.0.material',
    'contaminants.0.mustFindMm',
  ])
  const columns = heading.ok ? heading.columns : []
  const frame = { columns, base: { market: 'EU', 'equipment.magnet': 'on' } }
  const good = ['cheddar', '8', '100', '200', '20', 'WAHR', 'xray-single coil-single', 'quartz', '2,5']
  const largest = [
    { line: '', point: 0, stage: 'packed', heightMm: 120, widthMm: 90, tallestRow: 2, widestRow: 3 },
  ]

  it('reads units and decimal commas, lays itself over the base, and is told of a larger pack on its line', () => {
    const read = readProduct(frame, good.with(5, 'TRUE'), largest)
    expect(read.ok && read.brief.given).toMatchObject({
      market: 'EU',
      readyToEat: true,
      equipment: ['xray-single', 'coil-single'],
      points: [{ heightMm: 80, largestHeightMm: 120 }],
      contaminants: [{ material: 'quartz', mustFindMm: 2.5 }],
    })
    expect(read.ok && read.brief.points[0]!.largestWidthMm).toBeNull()
  })

  it('says every problem by the column it stands in', () => {
    const read = readProduct(frame, good.with(1, 'high'), [])
    expect(!read.ok && read.problems.map(({ column }) => column).sort()).toEqual([
      'heightMm [cm]',
      'readyToEat',
    ])
    expect(readProduct(frame, [...good, 'too many'], [])).toMatchObject({
      ok: false,
      problems: [{ column: '' }],
    })
  })
})
