import type { Picture } from '../../../src/exercises/exercise.ts'
import { SheetPicture } from '../../card/sheet-picture.tsx'

/** A simulated radiograph with its marks, and beside it what lies on each line. */
export function Taken({ picture }: { picture: Extract<Picture, { kind: 'radiograph' }> }) {
  const { sheet, alt } = picture.taken()
  return (
    <>
      <SheetPicture sheet={sheet} href={picture.address} alt={alt} />
      <ul class="lines-of-pieces">
        {sheet.lines.map(({ from, to }, at) => (
          <li>{`${from}–${to}: ${picture.lines[at] ?? ''}`}</li>
        ))}
      </ul>
      <p class="small">
        Corners: found; broken ring: missed. Simulated, one fillet of many: nothing was x-rayed.
      </p>
    </>
  )
}
