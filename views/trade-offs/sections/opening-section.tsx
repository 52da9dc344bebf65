import { OpeningPicture } from '../../../src/charts/opening-picture.tsx'
import type { OpeningPlace } from '../../../src/trade-offs/trade-offs.ts'
import type { MetalPicture } from '../metal-props.ts'

/** How strongly a ball is heard at each place of the opening, the centre being 1. */
export function OpeningSection({ picture, print }: { picture: MetalPicture; print: boolean }) {
  const { heightMm, widthMm, foodHeightMm, foodWidthMm, places } = picture.opening
  const across = [...new Set(places.map((place) => place.across))]
  const up = [...new Set(places.map((place) => place.up))].sort((a, b) => b - a)
  const at = (x: number, y: number) => places.find((place) => place.across === x && place.up === y)
  return (
    <section aria-labelledby="opening">
      <h2 id="opening">Where in the opening</h2>
      <p>
        A small ball is heard least in the centre of the opening, so that is where it has to be proved.
        Numbers say how many times more strongly it is heard elsewhere; a ball answering 1.3 times as strongly
        may be a twentieth to a tenth smaller. Broken line: the food as the brief gives it.
      </p>
      <figure class="curve-figure plane-figure">
        <OpeningPicture
          id="opening-picture"
          title={`Relative response over an opening ${Math.round(heightMm)} mm high and ${Math.round(widthMm)} mm wide`}
          description={describe(places)}
          widthMm={widthMm}
          heightMm={heightMm}
          food={{ heightMm: foodHeightMm, widthMm: foodWidthMm }}
          places={places.map((place) => ({ ...place, words: place.relative.toFixed(1) }))}
        />
        <figcaption class="small">
          Opening {Math.round(heightMm)} × {Math.round(widthMm)} mm, seen along the travel. Three bare
          rectangular loops; case and shield are left out.
          {heightMm === widthMm ? ' A round opening is taken as a square.' : ''}
        </figcaption>
      </figure>
      <details {...(print ? { open: true } : {})}>
        <summary>Numbers of this picture</summary>
        <section class="scroll" tabindex={0} aria-labelledby="numbers-opening">
          <table class="numbers">
            <caption id="numbers-opening">
              Relative response; rows from top to bottom, columns from left to right, in % of the opening from
              its centre
            </caption>
            <thead>
              <tr>
                <th scope="col">Height</th>
                {across.map((x) => (
                  <th scope="col" class="n">
                    {signed(x)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {up.map((y) => (
                <tr>
                  <th scope="row">{signed(y)}</th>
                  {across.map((x) => (
                    <td class="n">{at(x, y)?.relative.toFixed(2)}</td>
                  ))}
                </tr>
              ))}
            </tbody>
          </table>
        </section>
      </details>
    </section>
  )
}

const signed = (share: number) => `${Math.round(share * 100)} %`.replace('-', '−')

function describe(places: readonly OpeningPlace[]): string {
  const most = places.reduce((a, b) => (b.relative > a.relative ? b : a))
  return `1.0 in the centre, up to ${most.relative.toFixed(1)} near the edge; the numbers stand beneath.`
}
