import type { ExposedPack } from '../pack/exposed-pack.ts'
import { signalTables } from '../pack/signal-table.ts'

/**
 * Attenuation of the first channel (−ln of the share of the open beam) told as the solid food that would
 * let through as much, mm: the unit in which machines of different voltages share one grey scale. Below the
 * empty pack it is negative; beyond mostMm the last step goes on.
 */
export function foodEquivalentMm(exposed: ExposedPack, mostMm: number): (attenuation: number) => number {
  const { attenuation, foodStepMm, foodSteps } = signalTables(exposed, mostMm, null)[0]!
  const first = attenuation[0]!
  const last = attenuation[foodSteps]!
  const steps = 1024
  const even = new Float64Array(steps + 1)
  for (let i = 0, at = 0; i <= steps; i++) {
    const wanted = first + ((last - first) * i) / steps
    while (at < foodSteps - 1 && attenuation[at + 1]! < wanted) at++
    const share = (wanted - attenuation[at]!) / (attenuation[at + 1]! - attenuation[at]!)
    even[i] = (at + share) * foodStepMm
  }
  const scale = steps / (last - first)
  return (value) => {
    const x = (value - first) * scale
    const low = Math.min(steps - 1, Math.max(0, x | 0))
    return even[low]! + (x - low) * (even[low + 1]! - even[low]!)
  }
}
