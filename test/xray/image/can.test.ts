import { describe, expect, it } from 'vitest'
import { rasterOver } from '../../../src/xray/image/food/raster.ts'
import { containerMaps, frameMm } from '../../../src/xray/image/pack/container.ts'
import { isRead, viewOf } from '../../../src/xray/image/pack/view.ts'
import { sampleBrief } from './sample.ts'

const point = sampleBrief('tomato_sauce', {
  heightMm: 110,
  widthMm: 75,
  lengthMm: 75,
  outline: 'cylinder',
  parts: [
    { material: 'steel', mm: 0.2, place: 'wall' },
    { material: 'steel', mm: 0.2, place: 'base' },
    { material: 'steel', mm: 0.2, place: 'lid' },
  ],
}).points[0]!

describe('a can from the side', () => {
  const view = viewOf(point, 'side')
  const around = frameMm(point, view)
  const raster = rasterOver(
    -around.sides,
    -around.top,
    view.uMm + 2 * around.sides,
    view.vMm + around.top + around.bottom,
    0.2,
  )
  const { wall, trims } = containerMaps(point, view, raster)
  const at = (map: Float32Array, u: number, v: number) =>
    map[Math.floor((v + around.top) / 0.2) * raster.columns + Math.floor((u + around.sides) / 0.2)]!
  const most = (map: Float32Array, u: number, fromV: number, toV: number) => {
    let value = 0
    for (let v = fromV; v < toV; v += 0.1) value = Math.max(value, at(map, u, v))
    return value
  }

  it('has a seam of several sheets at its top and at its bottom, wider than its body, within the picture', () => {
    const beyondWall = view.uMm + 1
    expect(most(wall!.mm, beyondWall, -around.top + 0.1, 20)).toBe(0)
    const seams = trims.map(({ mm }) => ({
      top: most(mm, beyondWall, -around.top + 0.1, 0),
      bottom: most(mm, beyondWall, view.vMm, view.vMm + around.bottom - 0.1),
    }))
    expect(seams.filter(({ top, bottom }) => top > 0 && bottom === 0)).toHaveLength(1)
    expect(seams.filter(({ top, bottom }) => bottom > 0 && top === 0)).toHaveLength(1)
  })

  it('has beads at its outline, and nothing but its two walls before the part that is read', () => {
    const outside = Array.from({ length: 300 }, (_, i) => at(wall!.mm, view.uMm + 0.6, 20 + i * 0.25))
    const turns = outside.filter((mm, i) => i > 0 && mm > 0 !== outside[i - 1]! > 0)
    expect(turns.length).toBeGreaterThan(6)
    for (let v = 10; v < 100; v += 3) {
      expect(isRead(view, view.uMm / 2, v)).toBe(true)
      expect(at(wall!.mm, view.uMm / 2, v)).toBeCloseTo(0.4, 3)
      for (const { mm } of trims) expect(at(mm, view.uMm / 2, v)).toBe(0)
    }
  })
})
