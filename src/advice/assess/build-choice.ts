import { type Machine, machineSchema, type Point } from '../../contract/index.ts'
import { type ArchetypeBuild, type ArchetypeData, figuresOf } from '../../reference/index.ts'

/** How far a pack, or a larger one through the same machine, goes beyond a build, as the larger ratio of pack to limit; at most 1 where it fits. */
function excess(point: Point, { maxWidthMm, maxHeightMm }: ArchetypeBuild): number {
  const heightMm = Math.max(point.heightMm, point.largestHeightMm ?? 0)
  const widthMm = Math.max(point.widthMm * point.lanes, point.largestWidthMm ?? 0)
  return Math.max(widthMm / maxWidthMm, heightMm / maxHeightMm)
}

/** The first and so smallest build that takes the pack; where none does, the one that falls short by least. */
export function smallestBuild(builds: readonly ArchetypeBuild[], point: Point): ArchetypeBuild | undefined {
  const fitting = builds.find((build) => excess(point, build) <= 1)
  return fitting ?? [...builds].sort((a, b) => excess(point, a) - excess(point, b))[0]
}

/** A technology as a machine at a point, in the smallest build that takes the pack there. */
export function machineAt(archetype: ArchetypeData, point: Point): Machine {
  const builds = archetype.family === 'xray' ? archetype.builds : undefined
  const build = builds && smallestBuild(builds, point)
  const known = machinesOf.get(archetype) ?? new Map<ArchetypeBuild | undefined, Machine>()
  machinesOf.set(archetype, known)
  const machine = known.get(build) ?? machineSchema.parse(figuresOf(archetype, build))
  known.set(build, machine)
  return machine
}

/** A build of a technology is the same machine wherever it stands. */
const machinesOf = new WeakMap<ArchetypeData, Map<ArchetypeBuild | undefined, Machine>>()
