import type { Plan, Problem, RunRow } from '../../contract/index.ts'

/** A piece as the entry page holds it: what was planned, and what was seen. */
export interface EntryPiece {
  readonly order: number
  readonly sizeMm: number
  readonly pack: string
  readonly position: string
  readonly lie: string
  readonly seen: Seen | null
}

/** found: its pack lay in the bin; missed: it did not; left: the piece was not run. */
export const SEEN = ['found', 'missed', 'left'] as const
export type Seen = (typeof SEEN)[number]

/** What holds for the whole trial. */
export interface EntryHead {
  readonly equipment: string
  readonly setting: string
  readonly date: string
  readonly shift: string
  readonly operator: string
  readonly cleanPacks: string
  readonly cleanRejects: string
}

export interface EntryFixed extends Pick<Plan, 'material' | 'shape' | 'lengthMm' | 'faceMm2' | 'placement'> {}

export interface Entry {
  readonly head: EntryHead
  readonly fixed: EntryFixed
  readonly pieces: readonly EntryPiece[]
}

const NEEDED: readonly (readonly [keyof EntryHead, string])[] = [
  ['equipment', 'Enter the machine, as on its plate'],
  ['setting', 'Enter the recipe or setting number that was locked'],
  ['date', 'Enter the day of the trial'],
  ['cleanPacks', 'Enter how many clean packs were run'],
  ['cleanRejects', 'Enter how many of the clean packs were rejected'],
]

/** The rows of a trial as entered, or everything that is still open; a problem's path is the box it belongs to. */
export function rowsOfEntry(entry: Entry): { rows: RunRow[]; problems: Problem[] } {
  const problems = [...headProblems(entry.head), ...openPieces(entry.pieces)]
  if (problems.length > 0) return { rows: [], problems }
  return { rows: [...pieceRows(entry), cleanRow(entry.head)], problems }
}

function headProblems(head: EntryHead): Problem[] {
  const open = NEEDED.filter(([name]) => head[name].trim() === '').map(([path, message]) => ({
    path,
    message,
  }))
  const counts = (['cleanPacks', 'cleanRejects'] as const).flatMap((path): Problem[] =>
    head[path].trim() === '' || /^\d{1,6}$/.test(head[path].trim())
      ? []
      : [{ path, message: `Clean packs are a whole number; ${head[path]} was entered` }],
  )
  const [packs, rejects] = [Number(head.cleanPacks), Number(head.cleanRejects)]
  if (open.length === 0 && counts.length === 0 && packs === 0)
    counts.push({ path: 'cleanPacks', message: 'Run clean packs before any piece; 0 were entered' })
  else if (rejects > packs)
    counts.push({ path: 'cleanRejects', message: `${rejects} rejected of ${packs} clean packs cannot be` })
  if (head.date.trim() !== '' && !/^\d{4}-\d{2}-\d{2}$/.test(head.date.trim()))
    counts.push({
      path: 'date',
      message: `The day is year-month-day, as 2026-11-27; ${head.date} was entered`,
    })
  return [...open, ...counts]
}

const openPieces = (pieces: readonly EntryPiece[]): Problem[] =>
  pieces
    .filter(({ seen }) => seen === null)
    .map(({ order, sizeMm, pack }) => ({
      path: `seen-${order}`,
      message: `Piece ${order} (${sizeMm} mm in pack ${pack}): found, missed or not run?`,
    }))

function pieceRows({ head, fixed, pieces }: Entry): RunRow[] {
  const { material, shape, placement } = fixed
  return pieces
    .filter(({ seen }) => seen !== 'left')
    .map(({ order, sizeMm, pack, position, lie, seen }) => ({
      ...headOf(head),
      piece: `${sizeMm} mm`,
      pack,
      order,
      material,
      shape,
      sizeMm,
      ...(fixed.lengthMm === null ? {} : { lengthMm: fixed.lengthMm }),
      ...(fixed.faceMm2 === null ? {} : { faceMm2: fixed.faceMm2 }),
      placement,
      position: lie ? `${position}, ${lie}` : position,
      runs: 1,
      found: seen === 'found' ? 1 : 0,
    }))
}

const cleanRow = (head: EntryHead): RunRow => ({
  ...headOf(head),
  material: '',
  runs: Number(head.cleanPacks),
  found: Number(head.cleanRejects),
})

function headOf({ equipment, setting, date, shift, operator }: EntryHead) {
  return {
    equipment: equipment.trim(),
    setting: setting.trim(),
    date: date.trim(),
    ...(shift.trim() ? { shift: shift.trim() } : {}),
    ...(operator.trim() ? { operator: operator.trim() } : {}),
  }
}
