import type { PlanePoint } from '../../src/trade-offs/response-plane.ts'
import type { Series } from '../../src/trade-offs/size-against.ts'
import type { Gap } from '../../src/trade-offs/sizes-at.ts'
import type { OpeningPlace } from '../../src/trade-offs/trade-offs.ts'
import type { TurnedPiece } from '../../src/trade-offs/turned-piece.ts'

export interface MetalAsked {
  readonly point: number
  readonly machine: string
  readonly contaminant: number
  readonly angleDeg: number
}

export interface MetalChoices {
  readonly points: readonly string[]
  readonly machines: readonly { readonly id: string; readonly label: string }[]
  /** Contaminants of the brief that are metals: their index and their words. */
  readonly metals: readonly { readonly index: number; readonly words: string }[]
}

/** Everything about one machine and one piece of metal. */
export interface MetalPicture {
  readonly piece: string
  readonly measure: string
  readonly label: string
  readonly frequenciesKHz: readonly number[]
  /** Why the pack does not pass at all; null where it does. */
  readonly refused: Gap | null
  readonly expectedMm: number | null
  readonly cautiousMm: number | null
  readonly mustFindMm: number | null
  /** Size at which the responses are shown. */
  readonly shownMm: number
  readonly conductivity: { readonly sPerM: number; readonly words: string }
  /** Responses over a run of frequencies, and at those the machine uses. */
  readonly plane: readonly PlanePoint[]
  readonly inUse: readonly PlanePoint[]
  readonly series: readonly {
    readonly series: Series
    readonly unit: string
    readonly scale: 'log' | 'linear'
  }[]
  readonly turned: {
    readonly words: string
    readonly measure: string
    readonly steps: readonly TurnedPiece[]
    readonly here: TurnedPiece
  }
  readonly opening: {
    readonly heightMm: number
    readonly widthMm: number
    readonly foodHeightMm: number
    readonly foodWidthMm: number
    readonly places: readonly OpeningPlace[]
  }
}

export interface MetalProps {
  readonly packed: string
  readonly title: string
  readonly asked: MetalAsked
  readonly choices: MetalChoices
  readonly note: string
  /** Null where no metal detector stands at the point, or the brief names no metal. */
  readonly picture: MetalPicture | null
  readonly print: boolean
}

/** The address of the page for what was asked. */
export function metalAddress(packed: string, asked: MetalAsked, print = false): string {
  const { point, machine, contaminant, angleDeg } = asked
  const query = `b=${packed}&point=${point}&machine=${encodeURIComponent(machine)}&contaminant=${contaminant}&angle=${angleDeg}`
  return `/trade-offs/metal-detector?${query}${print ? '&print=1' : ''}`
}
