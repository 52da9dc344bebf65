import type { RecordProps } from './record-page.tsx'
import { scoreWords } from './tally.tsx'

/** With more exercises a sheet of paper lies on its side. */
const PORTRAIT_MOST = 14

/** Lines where no names were given. */
const ROOM_FOR = 12

/** A class on one sheet: a line for each person, a column for each exercise, by hand. */
export function ClassTable({ scores, people, pass, room, today }: RecordProps) {
  const names = people.length > 0 ? people : Array.from({ length: ROOM_FOR }, () => '')
  return (
    <>
      <p>
        Write in how many answers were right, from the handouts. Pass: {pass} % of all.
        {room.all > 0 ? ` Hands of the room on this day: ${scoreWords(room)} right.` : ''}
      </p>
      <ol class="class-exercises">
        {scores.map(({ exercise }) => (
          <li>{exercise}</li>
        ))}
      </ol>
      <section class="scroll" tabindex={0} aria-labelledby="class">
        <table class={`record class-record${scores.length > PORTRAIT_MOST ? ' wide' : ''}`}>
          <caption id="class">The class of {today}</caption>
          <thead>
            <tr>
              <th scope="col">Name</th>
              {scores.map((_, at) => (
                <th scope="col" class="n">
                  {at + 1}
                </th>
              ))}
              <th scope="col">Sum</th>
              <th scope="col">Pass, yes or no</th>
              <th scope="col">Seen at the line, by, on</th>
              <th scope="col">Signature</th>
            </tr>
          </thead>
          <tbody>
            {names.map((name) => (
              <tr>
                <th scope="row">{name}</th>
                {scores.map(() => (
                  <td />
                ))}
                <td />
                <td />
                <td />
                <td />
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="name-line">
        Trainer's signature <span class="rule" />
      </p>
    </>
  )
}
