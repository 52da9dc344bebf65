import type { ShownRow } from '../../../views/lines/props.ts'
import type { LineProduct } from '../../contract/index.ts'

/** A product as the table of a page shows it: what it is called, its machines as set, its sizes. */
export type ShownProduct = ShownRow

const key = (one: {
  material: string
  shape: string
  lengthMm: number | null
  faceMm2: number | null
  placement: string
}) => `${one.material}|${one.shape}|${one.lengthMm}|${one.faceMm2}|${one.placement}`

export function shownProduct(product: LineProduct): ShownProduct {
  const { row, title } = product
  if (!product.ok)
    return { row, title, lines: [], problems: product.problems, machines: [], sizes: {}, unmet: Infinity }
  const asked = product.answers.filter(({ askedMm }) => askedMm !== null)
  return {
    row,
    title,
    lines: [...new Set(product.machines.map(({ line }) => line))],
    problems: [],
    machines: product.machines
      .filter(({ recommended }) => recommended)
      .map(({ point, label, settings: { kV, mA, frequenciesKHz } }) => ({
        point,
        label,
        kV,
        mA,
        frequenciesKHz,
      })),
    sizes: Object.fromEntries(
      product.answers.map((answer) => [
        `${answer.line}|${key(answer)}`,
        { promisedMm: answer.promisedMm, expectedMm: answer.expectedMm, meets: answer.meets },
      ]),
    ),
    unmet: asked.filter(({ meets }) => meets !== 'yes' && meets !== 'partly').length,
  }
}

/** The same key for a contaminant of a line, as its table's column. */
export const columnKey = (line: string, one: Parameters<typeof key>[0]) => `${line}|${key(one)}`
