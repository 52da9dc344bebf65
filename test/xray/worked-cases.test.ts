import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import type { XrayMachine } from '../../src/contract/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { IDEAL } from '../../src/xray/observer/practice.ts'
import { objectIn, setScene } from '../../src/xray/observer/scene.ts'
import { sizeIn } from '../../src/xray/picture.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'

/**
 * Twelve worked cases of an independent implementation of the same equations, grain's own threshold left out; see the
 * note in the file.
 */
const worked = JSON.parse(readFileSync(new URL('./fixtures/worked-cases.json', import.meta.url), 'utf8')) as {
  cases: { brief: { title: string }; bestMm: (number | null)[] }[]
}
const TOLERANCE = 0.005

describe('best possible sizes agree with an independent implementation', () => {
  it.each(worked.cases)('$brief.title', ({ brief, bestMm }) => {
    const parsed = parseBrief(brief)
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
    const machine = parsed.brief.equipment[0] as XrayMachine
    const point = parsed.brief.points[0]!
    const build = buildOf(machine)
    const setting = { kV: machine.kV!, mA: machine.mA! }
    const scene = setScene(build, point, packInBeam(point, build), setting, IDEAL)
    bestMm.forEach((size, c) => {
      const contaminant = parsed.brief.contaminants[c]!
      const mu = materialAttenuation(contaminant.material)
      const piece = objectIn(scene, contaminant, mu, () => scene.thresholdZ)
      const computed = sizeIn(scene, contaminant, point, null, piece)
      if (size === null) expect(computed, `contaminant ${c}`).toBeNull()
      else
        expect(Math.abs(computed! / size - 1), `contaminant ${c}: ${computed} against ${size}`).toBeLessThan(
          TOLERANCE,
        )
    })
  })
})
