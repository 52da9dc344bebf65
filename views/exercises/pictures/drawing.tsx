import { AnswerArrows } from '../../../src/charts/answer-arrows.tsx'
import { ContainerZones } from '../../../src/charts/container-zones.tsx'
import { OpeningPicture } from '../../../src/charts/opening-picture.tsx'
import { TurnedSketch } from '../../../src/charts/turned-sketch.tsx'
import type { Picture } from '../../../src/exercises/exercise.ts'
import { type Marked, markSign } from './marked.ts'

export type Drawn = Exclude<Picture, { kind: 'bars' | 'curves' | 'radiograph' }>

interface Props {
  readonly picture: Drawn
  readonly id: string
  readonly marked: Marked | null
  readonly room: boolean
}

/** A drawing of what is the case, the answer and the prediction marked with a sign each. */
export function Drawing({ picture, id, marked, room }: Props) {
  const signs = choicesIn(picture)
    .map((choice) => markSign(choice, marked))
    .join('')
  return (
    <>
      <Sketch picture={withSigns(picture, marked)} id={id} />
      {signs === '' ? null : (
        <p class="signs">
          {signs.includes('◀') ? <span>◀ the answer</span> : null}{' '}
          {signs.includes('◁') ? <span>◁ {room ? 'predicted' : 'your prediction'}</span> : null}
        </p>
      )}
    </>
  )
}

function choicesIn(picture: Drawn): readonly (string | undefined)[] {
  if (picture.kind === 'turned') return []
  return (picture.kind === 'plane' ? picture.answers : picture.places).map(({ choice }) => choice)
}

function withSigns(picture: Drawn, marked: Marked | null): Drawn {
  const signed = <T extends { readonly words: string; readonly choice?: string }>(one: T): T => ({
    ...one,
    words: `${one.words}${markSign(one.choice, marked)}`,
  })
  switch (picture.kind) {
    case 'places':
      return { ...picture, places: picture.places.map(signed) }
    case 'opening':
      return { ...picture, places: picture.places.map(signed) }
    case 'plane':
      return { ...picture, answers: picture.answers.map(signed) }
    case 'turned':
      return picture
  }
}

/** Container, opening, directions of answers, a piece turned. */
function Sketch({ picture, id }: { picture: Drawn; id: string }) {
  switch (picture.kind) {
    case 'places': {
      const { title, container, fromAbove, places } = picture
      const said = ({ name, words }: (typeof places)[number]) => (words ? `${name}: ${words}` : name)
      return (
        <ContainerZones
          id={id}
          title={title}
          description={places.map(said).join('; ')}
          container={container}
          fromAbove={fromAbove}
          levelBeam={!fromAbove}
          zones={places}
        />
      )
    }
    case 'opening': {
      const { title, places } = picture
      return (
        <OpeningPicture
          id={id}
          title={title}
          description={places.map(({ words }) => words).join('; ')}
          widthMm={picture.widthMm}
          heightMm={picture.heightMm}
          food={picture.food}
          places={places}
        />
      )
    }
    case 'plane':
      return (
        <AnswerArrows
          id={id}
          title={picture.title}
          description={picture.answers.map(directionWords).join('; ')}
          answers={picture.answers}
        />
      )
    case 'turned':
      return (
        <div class="turns">
          {picture.turns.map(({ angleDeg, words }, at) => (
            <div>
              <TurnedSketch id={`${id}-${at}`} angleDeg={angleDeg} words={words} />
              <p>{words}</p>
            </div>
          ))}
        </div>
      )
  }
}

const directionWords = ({
  words,
  resistive,
  reactive,
}: Extract<Drawn, { kind: 'plane' }>['answers'][number]) =>
  `${words}: ${Math.round((Math.atan2(reactive, resistive) * 180) / Math.PI)} degrees from pure loss`
