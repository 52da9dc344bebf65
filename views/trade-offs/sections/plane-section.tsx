import { type PlaneCurve, ResponsePlane } from '../../../src/charts/response-plane.tsx'
import type { PlanePoint, Response } from '../../../src/trade-offs/response-plane.ts'
import { sizeWords, valueWords } from '../../words/size.ts'
import type { MetalPicture } from '../metal-props.ts'

/** What the piece and the food answer at each frequency, in one plane. */
export function PlaneSection({ picture, print }: { picture: MetalPicture; print: boolean }) {
  const { plane, inUse, piece, shownMm } = picture
  const scale = productScale(plane)
  return (
    <section aria-labelledby="plane">
      <h2 id="plane">What the coil hears: the response plane</h2>
      <p>
        The piece ({piece}, {sizeWords(shownMm)} mm) answers partly in step with the field, which makes it
        look magnetic, and partly behind it, which makes it look like a loss. Wet or salted food is almost all
        loss. Where both point the same way, the machine cannot tell them apart at that frequency.
      </p>
      <figure class="curve-figure plane-figure">
        <ResponsePlane
          id="response-plane"
          title={`Response plane of ${piece} and the food`}
          description={plane.map(describe).join(' ')}
          along="loss (resistive), mm³"
          up="in step (reactive), mm³"
          curves={[targetCurve(plane, inUse), ...(scale === null ? [] : [productCurve(plane, inUse, scale)])]}
        />
        <figcaption class="small">
          A: the piece, from 10 to 1,000 kHz; rings where the machine runs.{' '}
          {scale === null
            ? 'The food adds no signal of its own here.'
            : `B: the food, drawn at ${scaleWords(scale)} so that both fit; its direction is what counts.`}
        </figcaption>
      </figure>
      <PlaneNumbers points={[...inUse, ...plane]} inUse={inUse.length} print={print} />
    </section>
  )
}

const spot = ({ reactiveMm3, resistiveMm3 }: Response, kHz: number, ring: boolean, scale = 1) => ({
  x: resistiveMm3 * scale,
  y: reactiveMm3 * scale,
  words: `${kHz.toLocaleString('en-GB', { maximumSignificantDigits: 4 })} kHz`,
  ring,
})

/** The ends of the run are named, and the frequencies in use are ringed. */
const named = (plane: readonly PlanePoint[]) => [plane.at(0), plane.at(-1)].flatMap((point) => point ?? [])

function targetCurve(plane: readonly PlanePoint[], inUse: readonly PlanePoint[]): PlaneCurve {
  return {
    mark: 'A',
    dash: 0,
    places: plane.map(({ target }) => ({ x: target.resistiveMm3, y: target.reactiveMm3 })),
    spots: [
      ...named(plane).map((point) => spot(point.target, point.frequencyKHz, false)),
      ...inUse.map((point) => spot(point.target, point.frequencyKHz, true)),
    ],
  }
}

function productCurve(plane: readonly PlanePoint[], inUse: readonly PlanePoint[], scale: number): PlaneCurve {
  return {
    mark: 'B',
    dash: 1,
    places: plane.flatMap(({ product }) =>
      product ? [{ x: product.resistiveMm3 * scale, y: product.reactiveMm3 * scale }] : [],
    ),
    spots: inUse.flatMap((point) =>
      point.product ? [{ ...spot(point.product, point.frequencyKHz, true, scale), words: '' }] : [],
    ),
  }
}

const strength = ({ reactiveMm3, resistiveMm3 }: Response) => Math.hypot(reactiveMm3, resistiveMm3)

/** A round factor that brings the food's longest answer to the length of the piece's; null without one. */
function productScale(plane: readonly PlanePoint[]): number | null {
  const product = Math.max(...plane.map((point) => (point.product ? strength(point.product) : 0)))
  const target = Math.max(...plane.map((point) => strength(point.target)))
  if (!(product > 0) || !(target > 0)) return null
  return Number((target / product).toPrecision(1))
}

const scaleWords = (scale: number) =>
  scale < 1
    ? `1/${valueWords(Number((1 / scale).toPrecision(2)))} of its size`
    : `${valueWords(scale)} times its size`

const degrees = (response: Response) =>
  `${Math.round((Math.atan2(response.reactiveMm3, response.resistiveMm3) * 180) / Math.PI)}°`.replace(
    '-',
    '−',
  )

function describe({ frequencyKHz, target, product }: PlanePoint): string {
  const food = product ? `, food at ${degrees(product)}` : ''
  return `${valueWords(frequencyKHz)} kHz: piece at ${degrees(target)}${food}.`
}

/** Angle between two answers, as lines: 0 to 90 degrees. */
function apart(a: Response, b: Response): string {
  const cos =
    Math.abs(a.reactiveMm3 * b.reactiveMm3 + a.resistiveMm3 * b.resistiveMm3) / (strength(a) * strength(b))
  return `${Math.round((Math.acos(Math.min(1, cos)) * 180) / Math.PI)}°`
}

function PlaneNumbers({
  points,
  inUse,
  print,
}: {
  points: readonly PlanePoint[]
  inUse: number
  print: boolean
}) {
  return (
    <details {...(print ? { open: true } : {})}>
      <summary>Numbers of this picture</summary>
      <section class="scroll" tabindex={0} aria-labelledby="numbers-plane">
        <table class="numbers">
          <caption id="numbers-plane">
            Polarizabilities in mm³; angle from pure loss (0°) towards magnetic (90°)
          </caption>
          <thead>
            <tr>
              {[
                'Frequency, kHz',
                'Piece, loss',
                'Piece, in step',
                'Piece, angle',
                'Food, loss',
                'Food, in step',
                'Food, angle',
                'Between them',
              ].map((words) => (
                <th scope="col" class="n">
                  {words}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {points.map(({ frequencyKHz, target, product }, at) => (
              <tr>
                <th scope="row" class="n">
                  {valueWords(frequencyKHz)}
                  {at < inUse ? ' (in use)' : ''}
                </th>
                <td class="n">{valueWords(target.resistiveMm3)}</td>
                <td class="n">{valueWords(target.reactiveMm3)}</td>
                <td class="n">{degrees(target)}</td>
                <td class="n">{product ? valueWords(product.resistiveMm3) : '–'}</td>
                <td class="n">{product ? valueWords(product.reactiveMm3) : '–'}</td>
                <td class="n">{product ? degrees(product) : '–'}</td>
                <td class="n">{product ? apart(target, product) : '–'}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  )
}
