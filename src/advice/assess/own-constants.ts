import type { Brief, Finding } from '../../contract/index.ts'

/**
 * Findings of a machine as its trials left it (threshold of the clean run, signal of clean packs); a piece that was
 * tried has constants of its own, which were fitted to the prediction as it was before and stand on that.
 */
export function withOwnConstants(
  brief: Brief,
  { pointIndex, equipment }: { readonly pointIndex: number; readonly equipment: string },
  moved: readonly Finding[],
  unmoved: () => readonly Finding[],
): Finding[] {
  const { name } = brief.points[pointIndex]!
  const own = new Set(
    brief.measured
      .filter((one) => one.point === name && one.equipment === equipment)
      .map(({ contaminant }) => contaminant),
  )
  if (own.size === 0) return [...moved]
  const before = unmoved()
  return moved.map((finding, i) => (own.has(finding.contaminant) ? before[i]! : finding))
}
