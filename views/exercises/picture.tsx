import type { Picture } from '../../src/exercises/exercise.ts'
import { BarTable } from './pictures/bar-table.tsx'
import { CurveNumbers, CurvesPart } from './pictures/curves-picture.tsx'
import { Drawing } from './pictures/drawing.tsx'
import type { Marked } from './pictures/marked.ts'
import { Taken } from './pictures/taken.tsx'

interface Props {
  readonly picture: Picture
  readonly id: string
  /** The right choice and the predicted one, named where they are drawn; null before the answer. */
  readonly marked?: Marked | null
  /** In front of a room: large, without its numbers beneath. */
  readonly room?: boolean
  /** The numbers beneath open, as on paper. */
  readonly open?: boolean
}

/** What is drawn beside a question or an answer; curves have their numbers beneath. */
export function PicturePart({ picture, id, marked = null, room = false, open = false }: Props) {
  return (
    <figure class={`exercise-picture kind-${picture.kind}`}>
      <figcaption>{picture.title}</figcaption>
      {picture.kind === 'bars' ? (
        <BarTable picture={picture} id={id} marked={marked} room={room} />
      ) : picture.kind === 'curves' ? (
        <>
          <CurvesPart picture={picture} id={id} marked={marked} room={room} />
          {room ? null : (
            <details {...(open ? { open: true } : {})}>
              <summary>Numbers of this picture</summary>
              <CurveNumbers picture={picture} id={id} />
            </details>
          )}
        </>
      ) : picture.kind === 'radiograph' ? (
        <Taken picture={picture} />
      ) : (
        <Drawing picture={picture} id={id} marked={marked} room={room} />
      )}
    </figure>
  )
}
