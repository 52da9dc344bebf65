import type { Card, CardMachine } from '../../src/card/card.ts'
import type { CardPiece } from '../../src/card/drawn-sheet.ts'

/** Letters by which the pictures and the list name a machine. */
export const machineLetter = (index: number) => String.fromCharCode(65 + index)

interface Listed {
  readonly machine: CardMachine
  readonly letter: string
  readonly pieces: ReadonlyMap<number, CardPiece>
}

const WORDS_FOUND = 'found'

/** Machines that saw the same pieces share one list: number, material, size, and what each made of it. */
export function ReadingLists({ card }: { card: Card }) {
  const listed = card.machines.flatMap((machine, i): Listed[] => {
    const pieces = machine.sheets.flatMap((sheet) => sheet.pieces)
    return pieces.length === 0
      ? []
      : [{ machine, letter: machineLetter(i), pieces: new Map(pieces.map((p) => [p.number, p])) }]
  })
  const groups = new Map<string, Listed[]>()
  for (const one of listed) {
    const key = [...one.pieces.values()].map(({ u, v, sizeMm }) => [u, v, sizeMm]).join()
    groups.set(key, [...(groups.get(key) ?? []), one])
  }
  return (
    <div class="reading-lists">
      {[...groups.values()].map((machines, g) => (
        <ReadingList machines={machines} id={`reading-list-${g}`} />
      ))}
    </div>
  )
}

function ReadingList({ machines, id }: { machines: readonly Listed[]; id: string }) {
  const pieces = [...machines[0]!.pieces.values()]
  return (
    <section class="scroll reading-list" tabindex={0} aria-labelledby={id}>
      <table class="numbers">
        <caption id={id}>Read, and how strong: above 1, the threshold, a piece is found</caption>
        <thead>
          <tr>
            <th scope="col" class="n">
              No.
            </th>
            <th scope="col" class="n">
              mm
            </th>
            {machines.map(({ letter, machine }) => (
              <th scope="col" title={machine.label}>
                {letter}
              </th>
            ))}
          </tr>
        </thead>
        {kindsOf(pieces).map(({ words, own }) => (
          <tbody>
            <tr>
              <th scope="rowgroup" colspan={2 + machines.length}>
                {words}
              </th>
            </tr>
            {own.map((piece) => (
              <tr>
                <th scope="row" class="n">
                  {piece.number}
                </th>
                <td class="n">{piece.sizeMm}</td>
                {machines.map(({ pieces: read }) => (
                  <Made piece={read.get(piece.number)!} />
                ))}
              </tr>
            ))}
          </tbody>
        ))}
      </table>
    </section>
  )
}

/** Pieces in a row of one kind. */
function kindsOf(pieces: readonly CardPiece[]): { words: string; own: CardPiece[] }[] {
  const kinds: { words: string; own: CardPiece[] }[] = []
  for (const piece of pieces) {
    if (kinds.at(-1)?.words === piece.words) kinds.at(-1)!.own.push(piece)
    else kinds.push({ words: piece.words, own: [piece] })
  }
  return kinds
}

function Made({ piece }: { piece: CardPiece }) {
  const strength = piece.strength === null ? '' : ` ${Math.max(0, piece.strength).toFixed(1)}`
  return piece.found ? (
    <td>
      <strong>{`${WORDS_FOUND}${strength}`}</strong>
    </td>
  ) : (
    <td>{`missed${strength}`}</td>
  )
}
