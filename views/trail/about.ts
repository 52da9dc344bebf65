import type { Advice } from '../../src/contract/advice.ts'
import { type Names, pieceWords } from '../words/contaminant.ts'

/** What a calculation is about: piece, machine and point where it belongs to a finding; else empty. */
export function aboutCalculation(advice: Advice, id: string, names: Names): string {
  const family = (calculation: string) => calculation.replace(/\.[^.]+$/, '')
  for (const point of advice.points) {
    for (const option of point.options) {
      const finding = option.findings.find(({ calculation }) => family(calculation) === family(id))
      if (finding) return `${pieceWords(finding, names)}: ${option.label}, ${point.name}`
    }
  }
  return ''
}
