/**
 * Lines on the loopback of one machine (npm run load:lines [-- all]): products a second of the benchmark product on one
 * and two workers, of a full line-up and with what would change each; then memory from 100 to 100,000 rows. Seconds
 * depend on what else the machine does, processor seconds hardly: both are told. In the long tables one row in a
 * hundred is worked out and the others are wrong, so that reading, sharing out and writing are what grows; "all" works
 * every row out, which takes hours.
 */
import { advise } from '../../src/advise.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { adviseBatch } from '../../src/lines/advise-row.ts'
import { openTable, products } from '../../src/lines/read-lines.ts'
import { bytesSource } from '../../src/lines/table-source.ts'
import { type LinesRun, linesRun } from './lines-run.ts'
import { FOODS, manyProducts } from './many-products.ts'

const FEW = 8
const MANY = 240

/** Figures of what came after the first few rows, which carry the start of the program. */
const after = (few: LinesRun, many: LinesRun) => ({
  aSecond: (many.rows - few.rows) / (many.seconds - few.seconds),
  aCpuSecond: (many.rows - few.rows) / (many.cpuS - few.cpuS),
})

async function throughput(
  name: string,
  workers: number,
  table: (rows: number) => Iterable<string>,
  rows = MANY,
) {
  const few = await linesRun(table(FEW), workers)
  const many = await linesRun(table(rows), workers)
  if (many.out !== rows) throw new Error(`${many.out} of ${rows} products came out`)
  const { aSecond, aCpuSecond } = after(few, many)
  console.log(
    `${name.padEnd(34)} ${String(workers).padStart(7)} ${aSecond.toFixed(1).padStart(9)} ${aCpuSecond.toFixed(1).padStart(14)}`,
  )
}

/** What a page asks of one product: the same with what would change it. */
async function withChanges(food: string, rows: number) {
  const text = new TextEncoder().encode([...manyProducts(rows, [food])].join(''))
  const opened = await openTable(bytesSource(text), null)
  if (!opened.ok) throw new Error('the table is in order')
  const before = process.cpuUsage()
  const workforce = {
    atOnce: 1,
    work: (batch: Parameters<typeof adviseBatch>[1]) => adviseBatch(advise, batch),
  }
  for await (const product of products(opened.table, workforce)) {
    const brief = product.ok ? parseBrief(product.brief) : null
    if (brief?.ok) await advise(brief.brief, { withoutRecords: true })
  }
  const { user, system } = process.cpuUsage(before)
  console.log(
    `${`${food}, with what would change it`.padEnd(34)} ${'1'.padStart(7)} ${''.padStart(9)} ${(rows / ((user + system) / 1e6)).toFixed(2).padStart(14)}`,
  )
}

/** All but one row in a hundred have a speed that is none. */
function* mostlyWrong(rows: number) {
  let at = -1
  for (const line of manyProducts(rows, FOODS)) {
    yield at < 0 || at % 100 === 0 ? line : line.replace(/(,160,)\d+/, '$1fast')
    at++
  }
}

const all = process.argv.includes('all')
console.log(`${'products'.padEnd(34)} workers  a second  a cpu second`)
for (const food of FOODS)
  for (const workers of [1, 2]) await throughput(food, workers, (rows) => manyProducts(rows, [food]))
await throughput('cheddar, a full line-up', 2, (rows) => manyProducts(rows, ['cheddar'], ''), 48)
await withChanges('cheddar', 6)
console.log(`\n${'rows'.padStart(7)} came out   seconds  cpu seconds  most memory, MB`)
for (const rows of [100, 1000, 10_000, 100_000]) {
  const { out, seconds, cpuS, mostMB } = await linesRun(
    all ? manyProducts(rows, FOODS) : mostlyWrong(rows),
    2,
  )
  console.log(
    [
      String(rows).padStart(7),
      String(out).padStart(8),
      seconds.toFixed(1).padStart(9),
      cpuS.toFixed(1).padStart(12),
      mostMB.toFixed(0).padStart(16),
    ].join(' '),
  )
}
