import { linearAxis, logAxis } from '../../../src/charts/axis.ts'
import { CurvePlot } from '../../../src/charts/curve-plot.tsx'
import type { AttenuationCurve, TubeSpectrum } from '../../../src/trade-offs/spectra.ts'
import { letterOf, type TradeOffsProps } from '../props.ts'
import { SpectraNumbers } from '../spectra-numbers.tsx'
import { atKeV, passingWords } from '../spectra-words.ts'

const CURVES: Readonly<Record<AttenuationCurve['kind'], { mark: string; dash: number; of: string }>> = {
  food: { mark: 'F', dash: 1, of: 'the food itself, without air' },
  piece: { mark: 'P', dash: 0, of: 'the piece' },
  pack: { mark: 'W', dash: 2, of: 'what stops most in the pack' },
}

const FIRST_KEV = 10
/** A curve whose highest is below this share is drawn larger beside itself. */
const SEEN = 0.25
const round = (value: number) => Number(value.toPrecision(2))

/** How strongly food, piece and pack stop x-rays at each energy, and with which energies each machine looks. */
export function SpectraSection({ spectra, present, print }: TradeOffsProps) {
  if (!spectra) return null
  const { energiesKeV, curves, tubes } = spectra
  const letters = new Map(present.map(({ machine }, at) => [machine, letterOf(at)]))
  const drawn = tubes.map((tube) => ({ tube, letter: letters.get(tube.machine) ?? '' }))
  const last = energiesKeV.at(-1) ?? 150
  const values = curves.flatMap(({ muPerCm }) => muPerCm.slice(FIRST_KEV - Math.floor(energiesKeV[0] ?? 0)))
  return (
    <section aria-labelledby="spectra">
      <h2 id="spectra">Attenuation and tube spectrum</h2>
      <p>
        A piece stands out where its line lies far from that of the food, most at low energies; but only
        energies that come through the pack tell anything. Higher tube voltage moves the hills to the right:
        more comes through, and everything looks more alike.
      </p>
      <figure class="curve-figure">
        <figcaption>
          <h3>Attenuation against energy</h3>
          <ul class="letters">
            {curves.map(({ kind, label }) => (
              <li>
                <strong>{CURVES[kind].mark}</strong> {label} ({CURVES[kind].of})
              </li>
            ))}
          </ul>
        </figcaption>
        <CurvePlot
          id="attenuation-curves"
          title="Linear attenuation against x-ray energy"
          description={curves
            .map(({ kind, label, muPerCm }) => {
              const [low, high] = [atKeV(muPerCm, energiesKeV, 30), atKeV(muPerCm, energiesKeV, last)]
              return `${CURVES[kind].mark}, ${label}: ${round(low)} per cm at 30 keV, ${round(high)} per cm at ${Math.round(last)} keV.`
            })
            .join(' ')}
          height={230}
          x={logAxis(FIRST_KEV, Math.max(...tubes.map(({ kV }) => kV)), 'x-ray energy, keV')}
          y={logAxis(Math.min(...values) * 0.9, Math.max(...values) * 1.1, 'attenuation, per cm')}
          curves={curves.map(({ kind, muPerCm }) => ({
            mark: CURVES[kind].mark,
            dash: CURVES[kind].dash,
            dots: false,
            places: muPerCm.flatMap((y, i) =>
              energiesKeV[i]! >= FIRST_KEV ? [{ x: energiesKeV[i]!, y }] : [],
            ),
          }))}
        />
      </figure>
      <div class="ladders">
        {drawn.map(({ tube, letter }) => (
          <TubePanel tube={tube} letter={letter} energiesKeV={energiesKeV} />
        ))}
      </div>
      <details {...(print ? { open: true } : {})}>
        <summary>Numbers of these pictures</summary>
        <SpectraNumbers spectra={spectra} tubes={drawn} />
      </details>
    </section>
  )
}

function TubePanel({
  tube,
  letter,
  energiesKeV,
}: {
  tube: TubeSpectrum
  letter: string
  energiesKeV: readonly number[]
}) {
  const words = passingWords(tube)
  const larger = enlargement(tube.through)
  const places = (shares: readonly number[]) => shares.map((y, i) => ({ x: energiesKeV[i]!, y }))
  return (
    <figure class="curve-figure">
      <figcaption>
        <h3>
          {letter}: {tube.label}
        </h3>
        <p class="small">{words}</p>
      </figcaption>
      <CurvePlot
        id={`spectrum-${letter}`}
        title={`${tube.label}: photons against energy, sent and come through`}
        description={`Solid: sent at ${tube.kV} kV. Broken: come through food and pack. Both in per cent of the highest sent. ${words}`}
        height={170}
        x={linearAxis(0, Math.max(...energiesKeV) + 0.5, 'x-ray energy, keV')}
        y={linearAxis(0, 1, 'photons, % of the highest sent', (value) => String(Math.round(value * 100)), 4)}
        curves={[
          { mark: '', dash: 0, thin: true, dots: false, places: places(tube.sent) },
          { mark: '', dash: 1, dots: false, places: places(tube.through) },
          ...(larger === null
            ? []
            : [
                {
                  mark: '',
                  dash: 2,
                  thin: true,
                  dots: false,
                  places: places(tube.through.map((share) => share * larger)),
                },
              ]),
        ]}
        upright={{ x: tube.kV, words: `${tube.kV} kV` }}
      />
      <p class="small">
        Solid: photons sent. Broken: come through food and pack, on the same scale.
        {larger === null
          ? ''
          : ` Dotted: the same drawn ${larger.toLocaleString('en-GB')} times larger, to show its shape.`}
      </p>
    </figure>
  )
}

/** A round factor that brings what comes through near to the full height; null where it is seen as it is. */
function enlargement(through: readonly number[]): number | null {
  const most = Math.max(...through)
  if (!(most > 0) || most > SEEN) return null
  const power = 10 ** Math.floor(Math.log10(1 / most))
  return [5, 2, 1].map((step) => step * power).find((factor) => factor * most <= 1) ?? null
}
