import { AnswerArrows } from '../../../src/charts/answer-arrows.tsx'
import { ContainerZones } from '../../../src/charts/container-zones.tsx'
import { OpeningPicture } from '../../../src/charts/opening-picture.tsx'
import { TurnedSketch } from '../../../src/charts/turned-sketch.tsx'
import type { Picture } from '../../../src/exercises/exercise.ts'

export type Drawn = Exclude<Picture, { kind: 'bars' | 'curves' }>

/** A drawing of what is the case: container, opening, directions of answers, a piece turned. */
export function Drawing({ picture, id }: { picture: Drawn; id: string }) {
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
