import type { Answers } from '../../brief/form/form.ts'
import { PLACEMENTS, type Plan, SHAPES } from '../../contract/index.ts'
import { type Entry, type EntryPiece, SEEN } from '../../runs/index.ts'

/** What an entry carries besides its pieces: the piece's kind, and the clause. */
export type Carried = readonly (readonly [name: string, value: string])[]

/** An empty entry of a plan; the day is left for the person, who may enter it the day after. */
export function entryOfPlan(plan: Plan): { entry: Entry; carried: Carried } {
  const { material, shape, lengthMm, faceMm2, placement, chosen, clean } = plan
  return {
    entry: {
      head: {
        equipment: '',
        setting: '',
        date: '',
        shift: '',
        operator: '',
        cleanPacks: '',
        cleanRejects: '',
      },
      fixed: { material, shape, lengthMm, faceMm2, placement },
      pieces: plan.pieces.map((piece) => ({ ...piece, seen: null })),
    },
    carried: [
      ['machine', plan.equipment],
      ['material', material],
      ['shape', shape],
      ['lengthMm', lengthMm === null ? '' : String(lengthMm)],
      ['faceMm2', faceMm2 === null ? '' : String(faceMm2)],
      ['placement', placement],
      ['clauseSize', String(chosen?.clause.sizeMm ?? '')],
      ['clausePieces', String(chosen?.clause.pieces ?? '')],
      ['clauseMisses', String(chosen?.clause.misses ?? '')],
      ['clauseClean', String(clean.packs)],
      ['clauseRejects', String(clean.allowed)],
    ],
  }
}

const CARRIED = [
  'machine',
  'material',
  'shape',
  'lengthMm',
  'faceMm2',
  'placement',
  'clauseSize',
  'clausePieces',
  'clauseMisses',
  'clauseClean',
  'clauseRejects',
] as const

const MOST_PIECES = 600

/** An entry as it was sent; null where the form was not whole. */
export function entryOfForm(answers: Answers): { entry: Entry; carried: Carried } | null {
  const said = (name: string) => answers[name] ?? ''
  const pieces: EntryPiece[] = []
  for (let order = 1; order <= MOST_PIECES && answers[`piece-${order}`] !== undefined; order++) {
    const piece = pieceOf(order, said(`piece-${order}`), said(`seen-${order}`))
    if (!piece) return null
    pieces.push(piece)
  }
  const shape = SHAPES.find((one) => one === said('shape'))
  const placement = PLACEMENTS.find((one) => one === said('placement'))
  if (pieces.length === 0 || !shape || !placement) return null
  const number = (name: string) => (said(name) === '' ? null : Number(said(name)))
  return {
    entry: {
      head: {
        equipment: said('equipment'),
        setting: said('setting'),
        date: said('date'),
        shift: said('shift'),
        operator: said('operator'),
        cleanPacks: said('cleanPacks'),
        cleanRejects: said('cleanRejects'),
      },
      fixed: {
        material: said('material'),
        shape,
        lengthMm: number('lengthMm'),
        faceMm2: number('faceMm2'),
        placement,
      },
      pieces,
    },
    carried: CARRIED.map((name) => [name, said(name)] as const),
  }
}

function pieceOf(order: number, carried: string, seen: string): EntryPiece | null {
  let values: unknown
  try {
    values = JSON.parse(carried)
  } catch {
    return null
  }
  const [sizeMm, pack, position, lie] = Array.isArray(values) ? values : []
  if (typeof sizeMm !== 'number' || typeof pack !== 'string') return null
  if (typeof position !== 'string' || typeof lie !== 'string') return null
  return { order, sizeMm, pack, position, lie, seen: SEEN.find((one) => one === seen) ?? null }
}
