import { advise } from '../../src/advise.ts'
import { parseBrief } from '../../src/brief/index.ts'
import { adviceSchema } from '../../src/contract/index.ts'

/** What is wrong with the advice on a brief, worked out in full; null where the brief is refused. */
export async function faultsOfAdvice(given: unknown): Promise<string[] | null> {
  const parsed = parseBrief(given)
  if (!parsed.ok) return null
  const advice = await advise(parsed.brief, { withoutChanges: true, withoutMissing: true })
  const faults = notFinite(advice)
  const read = adviceSchema.safeParse(JSON.parse(JSON.stringify(advice)))
  if (!read.success)
    faults.push(`schema: ${read.error.issues[0]?.path.join('.')} ${read.error.issues[0]?.message}`)
  for (const { options } of advice.points)
    for (const { equipment, findings } of options)
      for (const { material, bestMm, expectedMm, cautiousMm } of findings) {
        const sizes = [bestMm, expectedMm, cautiousMm].filter((size) => size !== null)
        if (sizes.some((size, at) => at > 0 && size < sizes[at - 1]! * (1 - 1e-9)))
          faults.push(
            `${equipment} ${material}: best ${bestMm}, expected ${expectedMm}, cautious ${cautiousMm}`,
          )
        if (bestMm === null && (expectedMm ?? cautiousMm) !== null)
          faults.push(`${equipment} ${material}: no best size but an expected one`)
      }
  return faults
}

/** Paths of numbers that are none. */
function notFinite(root: object): string[] {
  const faults: string[] = []
  const open: [string, object][] = [['', root]]
  for (const [path, node] of open)
    for (const [key, value] of Object.entries(node)) {
      if (typeof value === 'number' && !Number.isFinite(value)) faults.push(`${path}.${key} is ${value}`)
      if (typeof value === 'object' && value !== null) open.push([`${path}.${key}`, value])
    }
  return faults
}
