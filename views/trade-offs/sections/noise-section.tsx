import { type Fill, PatternBars, PatternSample } from '../../../src/charts/pattern-bars.tsx'
import type { NoiseShares } from '../../../src/trade-offs/present.ts'
import { NOISE_WORDS } from '../../words/trade-offs.ts'
import { letterOf, type TradeOffsProps } from '../props.ts'

type Kind = keyof NoiseShares

const KINDS: readonly { readonly kind: Kind; readonly fill: Fill; readonly helps: string }[] = [
  { kind: 'photon', fill: 'blank', helps: 'more current, a slower belt or coarser pixels help' },
  { kind: 'grain', fill: 'slanted', helps: 'a shallower bed or a second energy helps; more x-rays do not' },
  { kind: 'unevenness', fill: 'dotted', helps: 'flatter food or a second energy helps; more x-rays do not' },
  { kind: 'electronics', fill: 'solid', helps: 'more signal helps: more current or a slower belt' },
  { kind: 'packaging', fill: 'lined', helps: 'a beam through less of the wall helps' },
]

const ID = 'noise-bars'

/** Where the noise comes from that hides the piece, machine by machine. */
export function NoiseSection({ present, print }: TradeOffsProps) {
  const drawn = present.flatMap(({ noise, label }, at) =>
    noise ? [{ noise, label, letter: letterOf(at) }] : [],
  )
  if (drawn.length === 0) return null
  return (
    <section aria-labelledby="noise">
      <h2 id="noise">Where the noise comes from</h2>
      <p>
        What hides this piece, at the scale of its expected size, in the picture the x-ray machine decides on.
      </p>
      <figure class="curve-figure">
        <figcaption>
          <ul class="noise-key">
            {KINDS.map(({ kind, fill, helps }) => (
              <li>
                <PatternSample id={ID} fill={fill} /> <strong>{NOISE_WORDS[kind]}</strong>: {helps}
              </li>
            ))}
          </ul>
        </figcaption>
        <PatternBars
          id={ID}
          title="Shares of the noise by kind"
          description={drawn.map(({ label, noise }) => `${label}: ${sharesWords(noise)}.`).join(' ')}
          parts={KINDS.map(({ kind, fill }) => ({ words: NOISE_WORDS[kind], fill }))}
          bars={drawn.map(({ label, letter, noise }) => ({
            label: `${letter}: ${label}`,
            shares: KINDS.map(({ kind }) => noise[kind]),
          }))}
        />
      </figure>
      <details {...(print ? { open: true } : {})}>
        <summary>Numbers of this picture</summary>
        <section class="scroll" tabindex={0} aria-labelledby="numbers-noise">
          <table class="numbers">
            <caption id="numbers-noise">Shares of the noise, per cent</caption>
            <thead>
              <tr>
                <th scope="col">Machine</th>
                {KINDS.map(({ kind }) => (
                  <th scope="col" class="n">
                    {NOISE_WORDS[kind]}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {drawn.map(({ label, letter, noise }) => (
                <tr>
                  <th scope="row">
                    {letter}: {label}
                  </th>
                  {KINDS.map(({ kind }) => (
                    <td class="n">{(noise[kind] * 100).toFixed(1)}</td>
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

function sharesWords(noise: NoiseShares): string {
  return KINDS.filter(({ kind }) => noise[kind] >= 0.005)
    .map(({ kind }) => `${NOISE_WORDS[kind]} ${Math.round(noise[kind] * 100)} %`)
    .join(', ')
}
