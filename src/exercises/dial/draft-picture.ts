import { drawnSheets, pngPictures } from '../../card/drawn-sheet.ts'
import type { CardSheet } from '../../xray/image/card/card-layout.ts'
import type { CardPacks, DoneSheet } from '../../xray/image/card/test-card.ts'
import { foodEquivalentMm } from '../../xray/image/draw/food-equivalent.ts'
import { greyPicture } from '../../xray/image/draw/grey-picture.ts'
import type { ExposedPack } from '../../xray/image/pack/exposed-pack.ts'
import { takeRadiograph } from '../../xray/image/pack/radiograph.ts'
import { PRACTICE } from '../../xray/observer/practice.ts'

const ALT = 'Simulated radiograph, a draft: not read yet.'

/** The picture of a sheet alone, not read: no piece is called found or missed. */
export function draftPicture(exposed: ExposedPack, packs: CardPacks, { pieces }: CardSheet, title: string) {
  const taken = takeRadiograph(exposed, packs.kept.get(packs.seed)!, pieces, PRACTICE.compositionResidual)
  const inFood = taken.channels[0]!.map(foodEquivalentMm(exposed, 2 * packs.window.black))
  const { leftMm, topMm, columns, rows, pitchMm } = taken.pixels
  const unread: DoneSheet = {
    frame: { leftMm, topMm, widthMm: columns * pitchMm, heightMm: rows * pitchMm },
    pieces: [],
    lineEnds: [],
    falseAlarms: [],
    pictures: [{ kind: 'plain', grey: greyPicture(taken.pixels, inFood, packs.window) }],
    foodTakenOff: null,
  }
  return {
    sheet: drawnSheets([unread], packs, 0)[0]!,
    pictures: pngPictures([unread], 'draft', packs.seed, title).map((one) => ({ ...one, alt: ALT })),
  }
}
