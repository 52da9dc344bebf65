import { type Brief, type Machine, machineSchema, type Option } from '../../contract/index.ts'
import { lineUp } from './line-up.ts'

/**
 * A machine at a point held at the settings it runs at, so that one more piece in the brief does not set it
 * anew; null where the point has no such machine.
 */
export function asItRuns(brief: Brief, pointIndex: number, option: Option): Machine | null {
  const point = brief.points[pointIndex]!
  const machine = lineUp(brief, point).find((l) => l.machine.id === option.equipment)?.machine
  if (!machine) return null
  if (machine.family === 'xray' && option.settings.kV !== null) {
    const { kVRange: _range, ...fixed } = machine
    return machineSchema.parse({ ...fixed, kV: option.settings.kV })
  }
  if (machine.family === 'coil' && option.settings.frequenciesKHz.length > 0) {
    const { mostAtOnce: _most, ...fixed } = machine
    return machineSchema.parse({ ...fixed, frequenciesKHz: option.settings.frequenciesKHz, use: 'together' })
  }
  return machine
}
