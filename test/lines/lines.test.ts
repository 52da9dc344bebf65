import { describe, expect, it } from 'vitest'
import { advise } from '../../src/advise.ts'
import type { LineProduct, LinesSummary } from '../../src/contract/index.ts'
import { lineProductSchema, linesSummarySchema } from '../../src/contract/index.ts'
import { adviseBatch, type Batch } from '../../src/lines/advise-row.ts'
import { openTable, products, type Workforce } from '../../src/lines/read-lines.ts'
import { bytesSource } from '../../src/lines/table-source.ts'
import { csvHeading, csvRows } from '../../src/lines/write/products-csv.ts'
import { advisedOn } from './advised-on.ts'

const here: Workforce = { atOnce: 3, work: (batch) => adviseBatch(advise, batch) }

async function worked(csv: string, workforce: Workforce = here) {
  const opened = await openTable(bytesSource(new TextEncoder().encode(csv)), null)
  if (!opened.ok) throw new Error(JSON.stringify(opened.problems))
  const all: LineProduct[] = []
  const coming = products(opened.table, workforce)
  for (;;) {
    const step = await coming.next()
    if (step.done) return { all, summary: step.value as LinesSummary }
    all.push(step.value)
  }
}

const HEADING =
  'title;line;food;heightMm;widthMm;lengthMm;speedMPerMin;equipment;contaminants.0.material;contaminants.0.mustFindMm;#sku'
const LINE = `${HEADING}
Thin block;A;cheddar;30;100;200;20;xray-single coil-single;ss316;2;=1+1
Thick block;A;cheddar;140;420;200;20;xray-single coil-single;ss316;2;A-2
Spoilt;A;cheddar;14x;100;200;20;xray-single coil-single;ss316;2;A-3
Alone;B;cheddar;30;100;200;20;xray-single coil-single;ss316;2;A-4
`

describe('products of a line', () => {
  it('stand on the machines that take the largest of them: build, opening and sizes follow', async () => {
    const { all, summary } = await worked(LINE)
    for (const one of all) lineProductSchema.parse(one)
    linesSummarySchema.parse(summary)
    expect(all.map(({ row, ok }) => [row, ok])).toEqual([
      [2, true],
      [3, true],
      [4, false],
      [5, true],
    ])
    const [thin, thick, spoilt, alone] = all
    expect(spoilt).toMatchObject({ problems: [{ column: 'heightMm' }], carried: { '#sku': 'A-3' } })
    const machine = (one: LineProduct | undefined, id: string) =>
      one?.ok ? one.machines.find(({ equipment }) => equipment === id)! : null
    const coil = machine(thin, 'coil-single')!
    // 140 mm and 40 mm of clearance, 420 mm and 50 mm, in steps of 25 mm.
    expect(coil.opening).toEqual({ heightMm: 200, widthMm: 475 })
    expect(coil.opening).toEqual(machine(thick, 'coil-single')!.opening)
    expect(machine(alone, 'coil-single')!.opening).toEqual({ heightMm: 75, widthMm: 150 })
    expect(coil.findings[0]!.promisedMm).toBeGreaterThan(
      machine(alone, 'coil-single')!.findings[0]!.promisedMm!,
    )
    expect(machine(thin, 'xray-single')!.build).toBe('wide')
    expect(machine(alone, 'xray-single')!.build).toBe('pack')

    expect(summary).toMatchObject({ rows: 4, products: 3, bad: 1, moreLines: 0 })
    const [a, b] = summary.lines
    expect(a).toMatchObject({
      line: 'A',
      products: 2,
      packs: [{ heightMm: 140, widthMm: 420, tallestRow: 3, widestRow: 3 }],
      worst: [{ material: 'ss316', title: 'Thick block', row: 3, asked: 2 }],
    })
    expect(b).toMatchObject({ line: 'B', products: 1 })

    // The brief a row makes gives the whole advice with the same sizes.
    const again = await advisedOn((thin as Extract<LineProduct, { ok: true }>).brief)
    const option = again.points[0]!.options.find(({ equipment }) => equipment === 'coil-single')!
    expect(option.findings[0]!.cautiousMm).toBe(coil.findings[0]!.promisedMm)

    const csv = csvHeading(['#sku']) + all.map((one) => csvRows(one, ['#sku'])).join('')
    const lines = csv.trimEnd().split('\r\n')
    expect(lines).toHaveLength(5)
    expect(lines[1]).toMatch(/,'=1\+1$/)
    expect(lines[3]).toContain('heightMm: ')
  })
})

describe('work handed out', () => {
  const table = `${HEADING}\n${Array.from({ length: 20 }, (_, k) => `p${k};;cheddar;3${k % 10};100;200;20;xray-single;ss316;2;${k}`).join('\n')}\n`
  const failed = ({ rows }: Batch) => ({
    versions: null,
    products: rows.map(({ row }) => ({
      row,
      title: `row ${row}`,
      carried: {},
      ok: false as const,
      problems: [],
    })),
  })

  it('comes back in the order of the table, however long each batch takes', async () => {
    let begun = 0
    let most = 0
    const { all } = await worked(table, {
      atOnce: 3,
      work: async (batch) => {
        begun++
        most = Math.max(most, begun)
        await new Promise((done) => setTimeout(done, batch.rows[0]!.row % 3 === 0 ? 20 : 1))
        begun--
        return failed(batch)
      },
    })
    expect(all.map(({ row }) => row)).toEqual(Array.from({ length: 20 }, (_, k) => k + 2))
    expect(most).toBeLessThanOrEqual(3)
  })

  it('names the row that brings a worker down; the others of its batch stand', async () => {
    const { all } = await worked(table, {
      atOnce: 2,
      work: async (batch) => {
        if (batch.rows.some(({ row }) => row === 7)) throw new Error('the worker ended')
        return failed(batch)
      },
    })
    expect(all).toHaveLength(20)
    expect(all.filter((one) => !one.ok && one.problems.length > 0)).toMatchObject([
      { row: 7, problems: [{ message: 'could not be worked out: the worker ended' }] },
    ])
  })

  it('refuses a table as a whole for its heading alone', async () => {
    const open = (csv: string) => openTable(bytesSource(new TextEncoder().encode(csv)), null)
    expect(await open('')).toMatchObject({ ok: false })
    expect(await open('food;heightMm\n')).toMatchObject({ ok: false })
    expect(await open('food;hight\n1;2')).toMatchObject({ ok: false, problems: [{ path: 'column 2' }] })
  })
})
