import { encodePng } from '../charts/png.ts'
import { rowWords } from '../xray/image/card/card-layout.ts'
import type { Frame, PictureKind } from '../xray/image/card/machine-card.ts'
import type { CardPacks, DoneSheet } from '../xray/image/card/test-card.ts'

export interface CardPicture {
  /** File name without ending: machine, kind, sheet; never a path. */
  readonly name: string
  readonly kind: PictureKind
  readonly sheet: number
  /** What the picture shows, for readers who do not see it. */
  readonly alt: string
  readonly widthPx: number
  readonly heightPx: number
  readonly png: Uint8Array
}

/** A piece of a card: numbered over all its sheets, where it lies in the picture plane (mm) and what became of it. */
export interface CardPiece {
  readonly number: number
  readonly words: string
  readonly sizeMm: number
  readonly u: number
  readonly v: number
  readonly halfU: number
  readonly halfV: number
  readonly found: boolean
  /** Strongest answer over the threshold; null where it is not read. */
  readonly strength: number | null
}

/** One pack of a card as a machine saw it, for whoever draws it. */
export interface DrawnSheet {
  readonly sheet: number
  readonly frame: Frame
  readonly pieces: readonly CardPiece[]
  /** Numbers of the first and last piece of each line. */
  readonly lines: readonly { readonly from: number; readonly to: number }[]
  readonly falseAlarms: DoneSheet['falseAlarms']
}

/** The sheets of a machine with their pieces numbered through. */
export function drawnSheets(sheets: readonly DoneSheet[], packs: CardPacks, threshold: number): DrawnSheet[] {
  let before = 0
  return sheets.map(({ frame, pieces, lineEnds, falseAlarms }, sheet) => {
    const first = before + 1
    before += pieces.length
    const starts = [0, ...lineEnds]
    return {
      sheet,
      frame,
      falseAlarms,
      lines: lineEnds.map((end, line) => ({ from: first + starts[line]!, to: first + end - 1 })),
      pieces: pieces.map(({ piece, halfU, halfV, found, signal }, i) => ({
        number: first + i,
        words: rowWords(packs.rows.find(({ contaminant }) => contaminant === piece.contaminant)!),
        sizeMm: piece.sizeMm,
        u: piece.u,
        v: piece.v,
        halfU,
        halfV,
        found,
        strength: signal === null || threshold <= 0 ? null : signal / threshold,
      })),
    }
  })
}

/** The pictures of a machine as PNG, a dot for each pixel it reads; that they are simulated stands in the file too. */
export function pngPictures(
  sheets: readonly DoneSheet[],
  fileNamed: string,
  seed: number,
  what: string,
): CardPicture[] {
  return sheets.flatMap(({ pictures, pieces, falseAlarms }, sheet) =>
    pictures.map(({ kind, grey }) => ({
      name: `${fileNamed}-${kind.replaceAll(' ', '-')}-${sheet + 1}`,
      kind,
      sheet,
      alt: `Simulated radiograph (${kind}) of ${what}, pack ${sheet + 1}: ${pieces.filter((p) => p.found).length} of ${pieces.length} pieces found, ${falseAlarms.length} false alarms.`,
      widthPx: grey.widthPx,
      heightPx: grey.heightPx,
      png: encodePng({
        ...grey,
        channels: 1,
        text: { Title: `simulated, seed ${seed}`, Software: 'gritwise' },
      }),
    })),
  )
}
