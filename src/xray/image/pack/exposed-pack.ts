import type { Point, XrayMachine } from '../../../contract/index.ts'
import { objectPixelMm, openBeam, type XrayBuild } from '../../beam/exposure.ts'
import { type Channels, channelsBehind, type PackInBeam } from '../../detector/channels.ts'
import { type Observer, prepareObserver } from '../../observer/observer.ts'
import { IDEAL } from '../../observer/practice.ts'
import { packInBeam } from '../../places/pack-in-beam.ts'

/** A machine looking at an inspection point at a tube setting: what the pictures of its packs share. */
export interface ExposedPack {
  readonly machine: XrayMachine
  readonly build: XrayBuild
  readonly point: Point
  readonly setting: { readonly kV: number; readonly mA: number }
  readonly pack: PackInBeam
  /** Photons per pixel, line and bin with nothing on the belt. */
  readonly open: Float64Array
  readonly objectPixelMm: number
  /** Channels behind the pack as it is in the middle; channels no photon reaches are left out. */
  readonly channels: Channels
  /** The ideal observer of these channels; templates are taken from it. */
  readonly observer: Observer
}

/** Sets a machine before a point; mA and kV as the machine runs. */
export function exposePack(
  machine: XrayMachine,
  build: XrayBuild,
  point: Point,
  setting: { readonly kV: number; readonly mA: number },
): ExposedPack {
  const pack = packInBeam(point, build)
  const a = objectPixelMm(build, point.speedMPerMin)
  const open = openBeam(build, setting.kV, setting.mA, point.speedMPerMin)
  const channels = channelsBehind(open, pack, build.channels, a)
  const observer = prepareObserver(channels, pack, {
    objectPixelMm: a,
    blurPixels: build.blurPixels,
    textureScale: IDEAL.textureScale,
    compositionResidual: IDEAL.compositionResidual,
  })
  return { machine, build, point, setting, pack, open, objectPixelMm: a, channels, observer }
}
