import { parseBrief } from '../../src/brief/index.ts'
import type { BriefInput, ContaminantInput, PointInput, ProductInput } from '../../src/contract/index.ts'
import { assessRemoval } from '../../src/separation/assess-removal.ts'
import type { RemovalAssessment, RemovalFinding, RemovalMachine } from '../../src/separation/assessment.ts'

/** A loose belt of hazelnuts with one steel ball to find, unless said otherwise. */
export interface RemovalCase {
  readonly machine: RemovalMachine
  readonly product?: ProductInput
  readonly point?: PointInput
  readonly contaminants?: ContaminantInput[]
}

const belt: PointInput = {
  name: 'belt',
  stage: 'loose',
  heightMm: 20,
  widthMm: 600,
  lengthMm: 600,
  speedMPerMin: 20,
  kgPerHour: 2000,
}

export const steelBall: ContaminantInput = { material: 'steel', shape: 'sphere', mustFindMm: 2 }

export function assess(one: RemovalCase): RemovalAssessment {
  const brief: BriefInput = {
    product: one.product ?? { food: 'hazelnut' },
    points: [{ ...belt, ...one.point }],
    contaminants: one.contaminants ?? [steelBall],
  }
  const parsed = parseBrief(brief)
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  return assessRemoval({
    machine: one.machine,
    point: parsed.brief.points[0]!,
    contaminants: parsed.brief.contaminants,
    prefix: 'p0.test',
  })
}

export const first = (one: RemovalCase): RemovalFinding => assess(one).findings[0]!

export const sieve = (meshMm?: number): RemovalMachine => ({
  id: 'sieve',
  family: 'sieve',
  ...(meshMm === undefined ? {} : { meshMm }),
})
export const magnet: RemovalMachine = { id: 'magnet', family: 'magnet', surfaceTesla: 1, reachMm: 25 }
export const sorter = (pixelMm = 0.3, lanesWidthMm = 1200): RemovalMachine => ({
  id: 'optical-sorter',
  family: 'optical',
  pixelMm,
  lanesWidthMm,
})
export const separator = (velocityRatio = 1.3): RemovalMachine => ({
  id: 'density-separator',
  family: 'density',
  velocityRatio,
})
