import type { Contaminant, Point, Zone } from '../contract/index.ts'
import type { XraySetting } from './assessment.ts'
import type { XrayBuild } from './beam/exposure.ts'
import type { PackInBeam } from './detector/channels.ts'
import { bestSize, NOT_FOUND, type Picture, pictureOf, sizeBeside } from './picture.ts'
import { type PackPlace, slanted } from './places/place.ts'
import { canLieAt, type Settling, settlesIn } from './places/settling.ts'
import { type JudgedPlace, placesOf } from './places/zones.ts'
import type { Voltages } from './sizes-over-voltages.ts'

/** One place in each view of the machine; a view that the container closes off has no picture of it. */
interface PlaceSeen {
  readonly views: readonly { readonly place: PackPlace; readonly picture: Picture | null }[]
}

/** A pack as one machine looks at it, place by place, the ordinary middle first. */
export interface Look {
  readonly places: readonly PlaceSeen[]
  /** False where the pack has no places told apart: the one place is the whole of it. */
  readonly toldApart: boolean
}

/**
 * The views of a machine: the first alone may use up all false rejects asked for; of two, the second is tilted and
 * judged at half of them (what one view misses the other often misses too, so chances are not multiplied).
 */
const viewsOf = (build: XrayBuild): { build: XrayBuild; tiltDeg: number }[] => [
  { build: { ...build, views: 1 }, tiltDeg: 0 },
  ...(build.views > 1 ? [{ build, tiltDeg: build.tiltDeg }] : []),
]

/** Every place of the pack in every view, at the setting chosen. */
export function lookAt(build: XrayBuild, point: Point, pack: PackInBeam, voltages: Voltages): Look {
  const chosen = voltages.chosen.setting
  const toldApart = placesOf(point, build, pack).length > 0
  const views = viewsOf(build).map((view) => {
    const whole = view.tiltDeg === 0 ? pack : slanted(pack, 1 / Math.cos((view.tiltDeg * Math.PI) / 180))
    const plain: PackPlace = { name: 'body', level: 'middle', share: 1, pathMm: 0, pack: whole, why: '' }
    const places = toldApart ? placesOf(point, build, pack, view.tiltDeg) : [plain]
    return places.map((place) => ({
      place,
      picture:
        place.pack &&
        (place.pack === pack && view.build.views === build.views
          ? pictureOf(build, point, pack, chosen, voltages.chosen.scene)
          : pictureOf(view.build, point, place.pack, chosen)),
    }))
  })
  const places = views[0]!.map((_, i): PlaceSeen => ({ views: views.map((view) => view[i]!) }))
  return { places, toldApart }
}

/** One place, one contaminant: the view that finds the smaller piece, and what it finds. */
interface PlaceFound {
  readonly place: PackPlace
  readonly picture: Picture | null
  readonly expectedMm: number | null
  /** The other view where it finds nearly as small a piece, with what it finds. */
  readonly other: { readonly picture: Picture; readonly expectedMm: number } | null
}

/** A view this much worse than the other promises nothing smaller. */
const NEARLY_AS_SMALL = 1.25

function foundAt({ views }: PlaceSeen, contaminant: Contaminant, nearMm: number | null): PlaceFound {
  const all = views.map(({ place, picture }): PlaceFound => {
    const expectedMm = picture?.expectedMm(contaminant, nearMm) ?? null
    return { place, picture, expectedMm, other: null }
  })
  const size = ({ expectedMm, picture }: PlaceFound) =>
    expectedMm ?? (picture ? Number.MAX_VALUE : Number.POSITIVE_INFINITY)
  const best = all.reduce((a, b) => (size(b) < size(a) ? b : a))
  const next = all.find((one) => one !== best)
  if (!next?.picture || best.expectedMm === null || size(next) > best.expectedMm * NEARLY_AS_SMALL)
    return best
  return { ...best, other: { picture: next.picture, expectedMm: next.expectedMm! } }
}

/** Safe-to-promise size at a place, mm: that of the view that promises the smaller one. */
export function promisedAt(
  { picture, expectedMm, other }: PlaceFound,
  contaminant: Contaminant,
): { cautiousMm: number | null; widest: string } {
  const own = picture?.cautious(contaminant, expectedMm) ?? { cautiousMm: null, widest: '' }
  const second = other?.picture.cautious(contaminant, other.expectedMm)
  if (!second || second.cautiousMm === null) return own
  return own.cautiousMm === null || second.cautiousMm < own.cautiousMm ? second : own
}

/** Where a contaminant is looked for, and the place that decides. */
export interface Deciding {
  readonly found: readonly PlaceFound[]
  /** The middle, or the worst of the places that the piece settles in. */
  readonly decides: PlaceFound
}

const sizeOf = ({ expectedMm }: PlaceFound) => expectedMm ?? Number.POSITIVE_INFINITY

/** Looks for one contaminant at every place; `nearMm`: a size to start from. */
export function decideIn(
  look: Look,
  contaminant: Contaminant,
  settling: Settling,
  nearMm: number | null,
): Deciding {
  const found = look.places.map((seen) => foundAt(seen, contaminant, nearMm))
  const settled = found.filter(({ place }) => settlesIn(place, settling))
  const decides = settled.reduce((a, b) => (sizeOf(b) > sizeOf(a) ? b : a), settled[0] ?? found[0]!)
  return { found, decides }
}

/**
 * Best possible size at a place over some settings, mm. Both sizes are found to a few parts in 10⁵; where they come
 * out the other way round within that, what is expected is itself possible.
 */
export function bestAt(
  look: Look,
  { found }: Deciding,
  at: PlaceFound,
  contaminant: Contaminant,
  point: Point,
  settings: readonly { readonly setting: XraySetting; readonly lift: number }[],
): number | null {
  const { views } = look.places[found.indexOf(at)]!
  const looks = settings.map(({ setting }) =>
    views.flatMap(({ picture }) => (picture ? [picture.idealAt(setting)] : [])),
  )
  const lifts = settings.map(({ lift }) => lift)
  const best = bestSize(looks, lifts, contaminant, point, at.expectedMm)
  return best === null || at.expectedMm === null ? best : Math.min(best, at.expectedMm)
}

/**
 * Range of the best possible size, mm: it moves with depth and density of the food as its size at the chosen setting
 * does. Null where nothing is found at one end.
 */
export function bestRangeAt(
  at: PlaceFound,
  bestMm: number | null,
  contaminant: Contaminant,
  point: Point,
  chosen: XraySetting,
): [number, number] | null {
  const { picture } = at
  if (!picture || bestMm === null) return null
  const ideal = picture.idealAt(chosen)
  const middle = bestSize([[ideal]], [1], contaminant, point, bestMm)
  if (middle === null) return null
  const low = sizeBeside(ideal, middle, picture.idealWith('favourable'), contaminant, point)
  const high = sizeBeside(ideal, middle, picture.idealWith('unfavourable'), contaminant, point)
  if (low === null || high === null) return null
  return [bestMm * Math.min(1, low / middle), bestMm * Math.max(1, high / middle)]
}

/** Sizes of one contaminant at every place. */
export function judgedIn(
  look: Look,
  deciding: Deciding,
  decidingSizes: Zone['sizes'],
  contaminant: Contaminant,
  point: Point,
  settling: Settling,
  chosen: XraySetting,
): JudgedPlace[] {
  if (!look.toldApart) return []
  const { found, decides } = deciding
  const canLie = canLieAt(
    found.map(({ place }) => place),
    settling,
  )
  return found.map((one): JudgedPlace => {
    const { place, picture, expectedMm } = one
    if (one === decides) return { place, sizes: decidingSizes }
    if (!picture) return { place, sizes: NOT_FOUND }
    const cautiousMm =
      canLie(place) && expectedMm !== null
        ? cautiousAt(one, decides, decidingSizes.cautiousMm, contaminant)
        : null
    const bestMm = bestAt(look, deciding, one, contaminant, point, [{ setting: chosen, lift: 1 }])
    return { place, sizes: { bestMm, expectedMm, cautiousMm } }
  })
}

/**
 * Safe-to-promise size at a place beside the deciding one, mm. Where the place is no worse, the deciding one's range
 * is carried over as a ratio; a worse place gets a range of its own.
 */
function cautiousAt(
  one: PlaceFound,
  decides: PlaceFound,
  cautiousMm: number | null,
  contaminant: Contaminant,
): number | null {
  const asGood = decides.expectedMm !== null && one.expectedMm! <= decides.expectedMm
  if (asGood && cautiousMm !== null) return (cautiousMm * one.expectedMm!) / decides.expectedMm!
  return promisedAt(one, contaminant).cautiousMm
}
