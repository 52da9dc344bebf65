import type { Brief, Point, Problem } from '../contract/index.ts'

/** Distance from pack to pack in one lane, mm; null where the rate is not known. */
export function pitchMm(point: Pick<Point, 'speedMPerMin' | 'packsPerMin' | 'lanes'>): number | null {
  if (point.packsPerMin === null) return null
  return (point.speedMPerMin * 1000 * point.lanes) / point.packsPerMin
}

/** Least height and width of a stream, mm, as the contract has it. */
const LEAST_MM = 1

/** Stages at which the food runs inside its pipe. */
const IN_A_PIPE: readonly Point['stage'][] = ['pumped', 'free-fall']

function pointProblems(point: Point, index: number, grainPath: string): Problem[] {
  const problems: Problem[] = []
  const say = (field: string, message: string) => problems.push({ path: `points.${index}.${field}`, message })
  const { product } = point
  const least = Math.min(point.heightMm, point.widthMm, point.lengthMm)
  const grainFits = product.structure === 'plates' ? point.heightMm : least
  if (product.grainMm > grainFits) {
    problems.push({
      path: grainPath,
      message: `a grain of ${product.grainMm} mm does not fit a pack whose smallest side is ${grainFits} mm; at most ${grainFits} mm is allowed`,
    })
  }
  const { pipeDiameterMm } = point
  if (IN_A_PIPE.includes(point.stage) && pipeDiameterMm !== null)
    for (const [field, what] of [
      ['heightMm', 'high'],
      ['widthMm', 'wide'],
    ] as const)
      if (point[field] > pipeDiameterMm)
        say(
          field,
          `a stream ${point[field]} mm ${what} does not fit its pipe of ${pipeDiameterMm} mm; allowed here: ${LEAST_MM} to ${pipeDiameterMm} mm`,
        )
  const pitch = pitchMm(point)
  if (point.stage === 'packed' && pitch !== null && pitch < point.lengthMm) {
    const most = Math.floor(((point.speedMPerMin * 1000 * point.lanes) / point.lengthMm) * 10) / 10
    say(
      'packsPerMin',
      `packs overlap: ${point.packsPerMin} per minute at ${point.speedMPerMin} m/min in ${point.lanes} lane${point.lanes > 1 ? 's' : ''} leave ${pitch.toFixed(0)} mm from front to front for packs ${point.lengthMm} mm long; at most ${most} per minute are possible`,
    )
  }
  const volumeCm3 =
    (point.heightMm * point.widthMm * point.lengthMm * (point.outline === 'cylinder' ? Math.PI / 4 : 1)) /
    1000
  const mostG = volumeCm3 * product.densityGPerCm3
  if (point.massG !== null && point.massG > mostG * 1.1) {
    say(
      'massG',
      `${point.massG} g does not fit ${point.heightMm} × ${point.widthMm} × ${point.lengthMm} mm of this food; at most about ${mostG.toPrecision(3)} g is possible`,
    )
  }
  const thickest = Math.min(point.widthMm, point.heightMm) / 2
  point.parts.forEach((part, p) => {
    if (part.mm > thickest) {
      say(
        `parts.${p}.mm`,
        `a layer of ${part.mm} mm is more than half the pack; at most ${thickest} mm is allowed`,
      )
    }
  })
  return problems
}

/** What cannot be true of the world although every single value is in range. */
export function geometryProblems(brief: Brief): Problem[] {
  return brief.points.flatMap((point, i) => {
    const own = brief.given.points[i]?.product?.grainMm !== undefined
    return pointProblems(point, i, own ? `points.${i}.product.grainMm` : 'product.grainMm')
  })
}
