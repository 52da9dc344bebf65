import type { RunGroup, RunRow } from '../../contract/index.ts'
import type { Curve } from '../fit/size-bound.ts'
import { cardReading } from './card-reading.ts'
import { type CleanPacks, cleanRunOf } from './clean-run.ts'
import { COUNTED_ONCE, clustersOf, likenessOf } from './clusters.ts'
import { readCurve } from './curve-reading.ts'
import { demonstratedOf, exactRows } from './demonstrated.ts'
import { groupWords } from './group-words.ts'
import { readSignal } from './signal-reading.ts'
import { talliesOf, unitsOf } from './units.ts'

/** Rows that may be read together: nothing that changes the chance differs between them. */
function keyOf(row: RunRow): string {
  const { equipment, setting, material, shape, lengthMm, faceMm2, placement, position } = row
  return JSON.stringify([
    equipment,
    setting ?? '',
    material,
    shape ?? 'sphere',
    lengthMm ?? null,
    faceMm2 ?? null,
    placement ?? 'inside',
    position ?? '',
  ])
}

/** Runs in groups, each read by itself. Pooled over places, settings or machines they would show nothing. */
export function groupsOf(rows: readonly RunRow[], clean: CleanPacks, link: Curve['link']): RunGroup[] {
  const groups = new Map<string, RunRow[]>()
  for (const row of rows) {
    if (row.material === '') continue
    const key = keyOf(row)
    const group = groups.get(key)
    if (group) group.push(row)
    else groups.set(key, [row])
  }
  return [...groups.values()].map((group) => readGroup(group, clean.beside(group[0]!), link))
}

function readGroup(rows: readonly RunRow[], cleanRows: readonly RunRow[], link: Curve['link']): RunGroup {
  const first = rows[0]!
  const units = unitsOf(rows)
  const likeness = likenessOf(units)
  const tallies = talliesOf(units, likeness ?? COUNTED_ONCE)
  const pieces = units.reduce((sum, { alike }) => sum + alike, 0)
  const clean = cleanRunOf(cleanRows)
  const curve = readCurve(tallies, clean, link)
  const exact = exactRows(tallies)
  const simulated = rows.some(({ note }) => note?.startsWith('simulated'))
  const dates = rows.flatMap(({ date }) => (date ? [date] : [])).sort()
  const group: Omit<RunGroup, 'words'> = {
    equipment: first.equipment,
    setting: first.setting ?? '',
    material: first.material,
    shape: first.shape ?? 'sphere',
    lengthMm: first.lengthMm ?? null,
    faceMm2: first.faceMm2 ?? null,
    placement: first.placement ?? 'inside',
    position: first.position ?? '',
    pieces,
    runs: rows.reduce((sum, row) => sum + row.runs, 0),
    found: rows.reduce((sum, row) => sum + row.found, 0),
    simulated,
    date: dates.at(-1) ?? '',
    packsNamed: rows.every(({ pack }) => pack),
    clean,
    clusters: clustersOf(units, likeness),
    fit: curve && {
      link,
      b0: curve.b0,
      b1: curve.b1,
      floor: curve.floor,
      method: curve.method,
      separated: curve.separated,
    },
    a50: curve?.a50 ?? null,
    a90: curve?.a90 ?? null,
    a9095: curve?.a9095 ?? null,
    a9095Plain: curve?.a9095Plain ?? null,
    a9095Delta: curve?.a9095Delta ?? null,
    demonstrated: simulated
      ? null
      : demonstratedOf(curve?.a9095 ?? null, exact, clean, dates.at(-1) ?? null, pieces),
    card: cardReading(tallies),
    exact,
    signal: readSignal(rows, cleanRows),
  }
  return { ...group, words: groupWords(group, curve?.because ?? null) }
}
