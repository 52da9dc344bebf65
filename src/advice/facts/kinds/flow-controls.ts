import { waysIn } from '../../../brief/entry.ts'
import type { Brief } from '../../../contract/index.ts'

/** What a step's words may declare as a control that takes pieces out. The project's own list of words. */
const SIEVE =
  /\b(sieve|sieved|sieving|sifter|sifted|sifting|screen|screened|strainer|strained|filter|filtered|mesh)\b/i
const MAGNET = /\bmagnets?\b|\bmagnetic (bar|grid|plate|trap|separator)\b/i
const NONE = /\b(no|without|not) (a )?(sieve|sifter|screen|strainer|filter|magnet)/i
const OPENING = /(\d+(?:[.,]\d+)?)\s*(mm|µm|um|microns?)\b/i

interface Control {
  /** Place of the step in the flow. */
  readonly at: number
  readonly kind: 'sieve' | 'magnet'
  /** Opening of a sieve, mm; null where the words give none. */
  readonly meshMm: number | null
}

function meshMmIn(words: string): number | null {
  const [, figure, unit = ''] = OPENING.exec(words) ?? []
  if (figure === undefined) return null
  return Number(figure.replace(',', '.')) / (unit.toLowerCase() === 'mm' ? 1 : 1000)
}

/** Sieves and magnets the flow declares, by the words of its steps and their controls. */
export function controlsOf(brief: Brief): readonly Control[] {
  return (brief.given.flow ?? []).flatMap(({ step, upstreamControl = '' }, at): Control[] => {
    const words = `${step}; ${upstreamControl}`
    if (NONE.test(words)) return []
    return [
      ...(SIEVE.test(words) ? [{ at, kind: 'sieve' as const, meshMm: meshMmIn(words) }] : []),
      ...(MAGNET.test(words) ? [{ at, kind: 'magnet' as const, meshMm: null }] : []),
    ]
  })
}

/** What the flow says of one contaminant: where it enters, and what stands behind its last way in. */
export interface WayThrough {
  /** Names of the steps where it enters; empty where the brief does not say. */
  readonly entersAt: readonly string[]
  /** It comes from a sieve, sifter or screen itself. */
  readonly fromAMesh: boolean
  readonly magnetBehind: boolean
  /** Finest opening declared behind its last way in, mm; null where there is none or its opening is not said. */
  readonly sieveBehindMm: number | null
}

/** Reads the flow for one contaminant. A control at the step of entry counts, unless the piece comes from that mesh. */
export function wayThrough(brief: Brief, contaminant: number): WayThrough {
  const ways = waysIn(brief, contaminant)
  const { entersAt } = brief.contaminants[contaminant]!
  const names = ways.length > 0 ? ways.map(({ step }) => step) : entersAt === '' ? [] : [entersAt]
  const fromAMesh = names.some((name) => SIEVE.test(name))
  const last = ways.at(-1)?.at ?? 0
  const behind = controlsOf(brief).filter(({ at, kind }) =>
    fromAMesh && kind === 'sieve' ? at > last : at >= last,
  )
  const meshes = behind.flatMap(({ meshMm }) => meshMm ?? [])
  return {
    entersAt: names,
    fromAMesh,
    magnetBehind: behind.some(({ kind }) => kind === 'magnet'),
    sieveBehindMm: meshes.length > 0 ? Math.min(...meshes) : null,
  }
}
