import { describe, expect, it } from 'vitest'
import { parseBrief } from '../../src/brief/index.ts'
import { machineSchema, type XrayMachine } from '../../src/contract/index.ts'
import { archetypes, figuresOf } from '../../src/reference/index.ts'
import { buildOf } from '../../src/xray/beam/exposure.ts'
import { IDEAL } from '../../src/xray/observer/practice.ts'
import { displacedFood, marginOf, objectIn, setScene } from '../../src/xray/observer/scene.ts'
import { materialAttenuation, packInBeam } from '../../src/xray/places/pack-in-beam.ts'
import { dPrimeDirect } from './direct-observer.ts'

/** Shell among kernels: found only when larger than a kernel, where transforms swing fast over fine pixels. */
describe('pieces larger than a grain', () => {
  const figures = figuresOf(archetypes.get('xray-dual-fine')!)
  const machine = machineSchema.parse(figures) as XrayMachine
  const parsed = parseBrief({
    product: { food: 'hazelnut' },
    points: [{ heightMm: 45, widthMm: 160, lengthMm: 220, speedMPerMin: 40 }],
    contaminants: [{ material: 'nut_shell', shape: 'sphere' }],
  })
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems))
  const [point, contaminant] = [parsed.brief.points[0]!, parsed.brief.contaminants[0]!]
  const build = buildOf(machine)
  const pack = packInBeam(point, build)
  const scene = setScene(build, point, pack, { kV: 90, mA: 8 }, IDEAL)
  const mu = materialAttenuation(contaminant.material)

  it('have the strength of the direct form where it decides', () => {
    for (const sizeMm of [9, 11.3, 14, 16.2, 20]) {
      const food = displacedFood(pack, 'inside')
      const imaging = scene.observer.imaging
      const direct = dPrimeDirect(
        scene.channels,
        pack,
        imaging,
        { shape: 'sphere', muPerMm: mu, food },
        sizeMm,
      )
      const piece = objectIn(scene, contaminant, mu, () => direct)
      const fast = direct * marginOf(scene, piece, 0)(sizeMm)
      expect(Math.abs(fast / direct - 1), `${sizeMm} mm`).toBeLessThan(0.005)
    }
  })
})
