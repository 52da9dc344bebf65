import { describe, expect, it } from 'vitest'
import { machineAt, smallestBuild } from '../../../src/advice/assess/build-choice.ts'
import { archetypes } from '../../../src/reference/index.ts'
import { samplePoint } from '../../coil/sample-point.ts'

const dual = archetypes.get('xray-dual')!
const at = (heightMm: number, widthMm: number, lanes = 1) =>
  machineAt(dual, samplePoint({ heightMm, filledMm: heightMm, widthMm, lanes }))

describe('the build of a technology at a point', () => {
  it('is the smallest that takes the pack, to the millimetre', () => {
    expect(at(150, 400)).toMatchObject({ build: 'pack', sourceToDetectorMm: 450 })
    expect(at(150, 401)).toMatchObject({ build: 'wide', sourceToDetectorMm: 700 })
    expect(at(151, 400)).toMatchObject({ build: 'case', sourceToDetectorMm: 1000, kVRange: [80, 140] })
    expect(at(450, 600)).toMatchObject({ build: 'case' })
    expect(at(120, 1200)).toMatchObject({ build: 'bulk', kVRange: [50, 100] })
  })
  it('counts lanes side by side', () => {
    expect(at(60, 220, 2)).toMatchObject({ build: 'wide' })
  })
  it('is the one that falls short by least where none takes it', () => {
    expect(at(130, 1000)).toMatchObject({ build: 'bulk' })
    expect(at(500, 500)).toMatchObject({ build: 'case' })
  })
  it('is none where a technology is compared in one size', () => {
    expect(machineAt(archetypes.get('xray-side')!, samplePoint())).not.toHaveProperty('build')
    expect(smallestBuild([], samplePoint())).toBeUndefined()
  })
})
