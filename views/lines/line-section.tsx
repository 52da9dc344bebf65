import type { LineTogether } from '../../src/contract/lines.ts'
import { type Names, pieceShort } from '../words/contaminant.ts'
import { sizeWords } from '../words/size.ts'
import { buildWords, lineName, metWords, packWords, setWords } from './line-words.ts'

/** What the products of one line have in common. */
export function LineSection({ together, names }: { together: LineTogether; names: Names }) {
  const { line, products, packs, worst, machines } = together
  return (
    <section aria-labelledby="line">
      <h2 id="line">
        {lineName(line)}: {products} product{products === 1 ? '' : 's'}
      </h2>
      <p>{setWords(together)}</p>
      {packs.map((pack) => (
        <p class="small">Largest pack, {packWords(pack)}</p>
      ))}
      <section class="scroll" aria-label="Worst product of each contaminant" tabindex={0}>
        <table>
          <caption>The worst product of each contaminant</caption>
          <thead>
            <tr>
              <th scope="col">Contaminant</th>
              <th scope="col" class="num">
                Asked, mm
              </th>
              <th scope="col" class="num">
                Safe to promise, mm
              </th>
              <th scope="col" class="num">
                Expected, mm
              </th>
              <th scope="col">Product</th>
              <th scope="col">Met in</th>
            </tr>
          </thead>
          <tbody>
            {worst.map((one) => (
              <tr>
                <th scope="row">{pieceShort(one, names)}</th>
                <td class="num">{sizeWords(one.askedMm)}</td>
                <td class="num">{sizeWords(one.promisedMm)}</td>
                <td class="num">{sizeWords(one.expectedMm)}</td>
                <td>
                  {one.title} (row {one.row})
                </td>
                <td>{one.asked === 0 ? '–' : `${one.met} of ${one.asked}`}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section class="scroll" aria-label="Machines of the line" tabindex={0}>
        <table>
          <caption>Each machine for all products</caption>
          <thead>
            <tr>
              <th scope="col">Machine</th>
              <th scope="col">Takes every pack</th>
              <th scope="col">Tube</th>
              <th scope="col">Meets all asked in</th>
              <th scope="col">Worst, safe to promise</th>
            </tr>
          </thead>
          <tbody>
            {machines.map((one) => (
              <tr>
                <th scope="row">
                  {one.label.replace(/ \(.*\)$/, '')}, {one.point}
                </th>
                <td>{buildWords(one)}</td>
                <td>{one.kV ? `${one.kV.map((kV) => kV.toFixed(0)).join(' to ')} kV` : '–'}</td>
                <td>{metWords(one)}</td>
                <td>
                  {one.worst
                    .map((piece) => `${pieceShort(piece, names)} ${sizeWords(piece.promisedMm)}`)
                    .join(', ')}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  )
}
