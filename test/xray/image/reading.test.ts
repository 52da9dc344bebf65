import { describe, expect, it } from 'vitest'
import { drawPack } from '../../../src/xray/image/pack/drawn-pack.ts'
import type { Piece } from '../../../src/xray/image/pack/piece.ts'
import { distanceToPieceMm } from '../../../src/xray/image/pack/piece.ts'
import { takeRadiograph } from '../../../src/xray/image/pack/radiograph.ts'
import { readRadiograph } from '../../../src/xray/image/read/reading.ts'
import { scoreReading } from '../../../src/xray/image/read/scoring.ts'
import { exposedFor, sampleBrief } from './sample.ts'

const options = { gatheredWireMm: 1, falseRejectsPerPack: 0.001 }
const glass = (sizeMm: number, u: number, v: number): Piece => ({
  contaminant: 1,
  material: 'glass_container',
  shape: 'sphere',
  sizeMm,
  lengthMm: 0,
  faceMm2: 0,
  placement: 'inside',
  u,
  v,
  angle: 0,
})

function read(
  brief: ReturnType<typeof sampleBrief>,
  machine: string,
  kV: number,
  seed: number,
  pieces: Piece[],
) {
  const exposed = exposedFor(brief, machine, kV)
  const pack = drawPack(exposed.point, 'down', seed)
  const picture = takeRadiograph(exposed, pack, pieces)
  return readRadiograph(exposed, pack.view, picture, brief.contaminants, options)
}

describe('reading a picture', () => {
  it('finds what is there, where it is, and nothing where nothing is', () => {
    const pieces = [glass(4, 40, 35), glass(0.3, 75, 55), glass(4, 110, 75)]
    const reading = read(sampleBrief('cheddar'), 'xray-dual', 90, 3, pieces)
    const score = scoreReading(reading, pieces)
    expect(score.results.map((r) => r.found)).toEqual([true, false, true])
    expect(score.falseAlarms).toEqual([])
    for (const hit of score.hits) {
      expect(Math.min(...pieces.map((piece) => distanceToPieceMm(piece, hit.u, hit.v)))).toBe(0)
    }
  })

  it('counts a detection with no piece under it as a false alarm', () => {
    const reading = read(sampleBrief('cheddar'), 'xray-single', 60, 3, [glass(4, 40, 35)])
    const score = scoreReading(reading, [glass(4, 110, 75)])
    expect(score.results[0]!.found).toBe(false)
    expect(score.falseAlarms.length).toBe(1)
  })

  it('rejects hardly any clean pack of even food at one false reject in a thousand', () => {
    let rejected = 0
    const brief = sampleBrief('chicken_breast')
    for (let seed = 100; seed < 110; seed++) {
      if (read(brief, 'xray-single', 60, seed, []).detections.length > 0) rejected++
    }
    expect(rejected).toBeLessThanOrEqual(1)
  })

  it('raises the threshold when fewer false rejects are allowed', () => {
    const brief = sampleBrief('cheddar')
    const exposed = exposedFor(brief, 'xray-single', 60)
    const pack = drawPack(exposed.point, 'down', 1)
    const picture = takeRadiograph(exposed, pack, [])
    const threshold = (falseRejectsPerPack: number) =>
      readRadiograph(exposed, pack.view, picture, brief.contaminants, { ...options, falseRejectsPerPack })
        .threshold
    expect(threshold(0.0001)).toBeGreaterThan(threshold(0.01))
  })

  it('looks for nothing that would look like a void', () => {
    const brief = sampleBrief('cheddar')
    const wood = [{ ...brief.contaminants[0]!, material: 'wood', placement: 'inside' as const }]
    const exposed = exposedFor(brief, 'xray-single', 60)
    const pack = drawPack(exposed.point, 'down', 1)
    const pieces = [{ ...glass(7, 75, 55), material: 'wood' }]
    const reading = readRadiograph(exposed, pack.view, takeRadiograph(exposed, pack, pieces), wood, options)
    expect(reading.filters).toEqual([])
    expect(scoreReading(reading, pieces).results[0]!.found).toBe(false)
  })
})
