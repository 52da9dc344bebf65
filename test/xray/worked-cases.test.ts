import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { assessXray } from '../../src/xray/assess.ts'

/** Eleven worked cases of an independent implementation of the same equations; see the note in the file. */
const worked = JSON.parse(readFileSync(new URL('./fixtures/worked-cases.json', import.meta.url), 'utf8')) as {
  cases: { brief: { title: string }; bestMm: (number | null)[] }[]
}
const TOLERANCE = 0.005

describe('best possible sizes agree with an independent implementation', () => {
  it.each(worked.cases)('$brief.title', ({ brief, bestMm }) => {
    const parsed = parseBrief(brief)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const machine = parsed.brief.equipment[0] as XrayMachine
    const { findings } = assessXray({
      machine,
      point: parsed.brief.points[0]!,
      contaminants: parsed.brief.contaminants,
      prefix: 'case',
    })
    bestMm.forEach((size, c) => {
      const computed = findings[c]!.bestMm
      if (size === null) expect(computed, `contaminant ${c}`).toBeNull()
      else
        expect(Math.abs(computed! / size - 1), `contaminant ${c}: ${computed} against ${size}`).toBeLessThan(
          TOLERANCE,
        )
    })
  })
})
