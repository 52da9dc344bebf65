import type {
  GoodProduct,
  LineMachine,
  LineProduct,
  LinesSummary,
  LineTogether,
  Versions,
} from '../../contract/index.ts'
import type { Largest } from '../survey.ts'
import { MOST_LINES } from '../survey.ts'
import { Coverage } from './smallest-set.ts'
import { isMet, WorstProducts } from './worst.ts'

type Together = LineTogether['machines'][number]

interface MachineSums {
  figures: Omit<Together, 'worst'>
  readonly worst: WorstProducts
}

interface LineSums {
  products: number
  readonly worst: WorstProducts
  readonly coverage: Coverage
  readonly machines: Map<string, MachineSums>
  readonly points: Map<number, string>
}

const keyOf = ({ point, equipment }: Pick<LineMachine, 'point' | 'equipment'>) => `${point}\n${equipment}`

/** Ruled out by the pack or by a rule: what it would find is no help. */
const isUnfit = ({ verdict }: LineMachine) => verdict === 'no-build' || verdict === 'not-suitable'

/** What the products of each line have in common, gathered as they pass; nothing of it grows with their number. */
export class LinesTogether {
  readonly #largest: readonly Largest[]
  readonly #lines = new Map<string, LineSums>()
  readonly #others = new Set<string>()
  #rows = 0
  #bad = 0
  versions: Versions | null = null

  constructor(largest: readonly Largest[]) {
    this.#largest = largest
  }

  note(product: LineProduct): void {
    this.#rows++
    if (!product.ok) this.#bad++
    else for (const line of new Set(product.machines.map((one) => one.line))) this.#noteLine(line, product)
  }

  get summary(): LinesSummary {
    return {
      rows: this.#rows,
      products: this.#rows - this.#bad,
      bad: this.#bad,
      lines: [...this.#lines].map(([line, sums]) => this.#lineOf(line, sums)),
      moreLines: this.#others.size,
      versions: this.versions,
    }
  }

  #noteLine(line: string, product: GoodProduct): void {
    const sums = this.#sumsOf(line)
    if (!sums) return
    sums.products++
    for (const [at, { name }] of product.brief.points.entries())
      if (!sums.points.has(at)) sums.points.set(at, name ?? `point ${at + 1}`)
    const { row, title } = product
    for (const { line: _line, point: _point, left: _left, ...answer } of product.answers.filter(
      (a) => a.line === line,
    ))
      sums.worst.note({ row, title, ...answer })
    const machines = product.machines.filter((one) => one.line === line)
    for (const machine of machines) noteMachine(sums, machine, product)
    sums.coverage.note(askedBy(machines))
  }

  /** Sums of a line; none for lines beyond those told apart. */
  #sumsOf(line: string): LineSums | null {
    const known = this.#lines.get(line)
    if (known) return known
    if (this.#lines.size >= MOST_LINES) {
      if (this.#others.size < 100_000) this.#others.add(line)
      return null
    }
    const sums: LineSums = {
      products: 0,
      worst: new WorstProducts(),
      coverage: new Coverage(),
      machines: new Map(),
      points: new Map(),
    }
    this.#lines.set(line, sums)
    return sums
  }

  #lineOf(line: string, { products, worst, coverage, machines, points }: LineSums): LineTogether {
    const all = [...machines.values()].sort((a, b) => a.figures.burden - b.figures.burden)
    const set = coverage.smallestSet(
      all.map(({ figures }) => ({ key: keyOf(figures), burden: figures.burden })),
    )
    const keys = set.map(({ key }) => key)
    return {
      line,
      products,
      packs: this.#largest
        .filter((one) => one.line === line)
        .map(({ point, heightMm, widthMm, tallestRow, widestRow }) => ({
          point: points.get(point) ?? `point ${point + 1}`,
          heightMm,
          widthMm,
          tallestRow,
          widestRow,
        })),
      worst: worst.all,
      set: {
        machines: keys.map((key) => {
          const { point, equipment, label } = machines.get(key)!.figures
          return { point, equipment, label }
        }),
        met: coverage.metBy(keys),
        asked: coverage.asking,
      },
      machines: all.map((one) => ({ ...one.figures, worst: one.worst.all })),
    }
  }
}

/** For each size asked of a product, the machines of the line that meet it. */
function askedBy(machines: readonly LineMachine[]): string[][] {
  const pieces = new Map<string, string[]>()
  for (const machine of machines)
    for (const { askedMm, meets, promisedMm: _p, expectedMm: _e, ...piece } of machine.findings) {
      if (askedMm === null) continue
      const key = JSON.stringify([piece, askedMm])
      const met = pieces.get(key) ?? []
      if (isMet(meets) && !isUnfit(machine)) met.push(keyOf(machine))
      pieces.set(key, met)
    }
  return [...pieces.values()]
}

const MOST_MACHINES = 400

function noteMachine(sums: LineSums, machine: LineMachine, { row, title }: GoodProduct): void {
  const key = keyOf(machine)
  const known = sums.machines.get(key)
  if (!known && sums.machines.size >= MOST_MACHINES) return
  const asked = machine.findings.filter(({ askedMm }) => askedMm !== null)
  const all = asked.length > 0 && !isUnfit(machine) && asked.every(({ meets }) => isMet(meets))
  const { line: _line, verdict: _verdict, recommended: _r, settings, findings, ...own } = machine
  const before = known?.figures
  const { kV } = settings
  const figures = {
    ...own,
    // What a pack asks for beyond every build is kept, though the next pack fits.
    askFor: own.askFor ?? before?.askFor ?? null,
    products: (before?.products ?? 0) + 1,
    met: (before?.met ?? 0) + (all ? 1 : 0),
    asked: (before?.asked ?? 0) + (asked.length > 0 ? 1 : 0),
    unfit: (before?.unfit ?? 0) + (isUnfit(machine) ? 1 : 0),
    kV: widened(before?.kV ?? null, kV),
  }
  const worst = known?.worst ?? new WorstProducts()
  if (known) known.figures = figures
  else sums.machines.set(key, { figures, worst })
  for (const finding of findings) worst.note({ row, title, equipment: machine.equipment, ...finding })
}

function widened(range: [number, number] | null, value: number | null): [number, number] | null {
  if (value === null) return range
  return range ? [Math.min(range[0], value), Math.max(range[1], value)] : [value, value]
}
