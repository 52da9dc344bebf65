import type { Spectra, TubeSpectrum } from '../../src/trade-offs/spectra.ts'
import { valueWords } from '../words/size.ts'
import { atKeV, passingWords } from './spectra-words.ts'

const ENERGIES = [15, 20, 25, 30, 40, 50, 60, 70, 80, 100, 120, 140]

/** Attenuation and spectra at round energies. */
export function SpectraNumbers({
  spectra,
  tubes,
}: {
  spectra: Spectra
  tubes: readonly { readonly tube: TubeSpectrum; readonly letter: string }[]
}) {
  const { energiesKeV, curves } = spectra
  const shown = ENERGIES.filter((keV) => keV < (energiesKeV.at(-1) ?? 0))
  const percent = (share: number) =>
    share > 0 && share < 0.0005 ? 'under 0.1' : (share * 100).toFixed(share < 0.1 ? 1 : 0)
  return (
    <>
      <section class="scroll" tabindex={0} aria-labelledby="numbers-spectra">
        <table class="numbers">
          <caption id="numbers-spectra">
            Linear attenuation, per cm, and photons, per cent of the highest sent
          </caption>
          <thead>
            <tr>
              <th scope="col" class="n">
                Energy, keV
              </th>
              {curves.map(({ label }) => (
                <th scope="col" class="n">
                  {label}, per cm
                </th>
              ))}
              {tubes.map(({ letter }) => (
                <>
                  <th scope="col" class="n">
                    {letter} sent, %
                  </th>
                  <th scope="col" class="n">
                    {letter} come through, %
                  </th>
                </>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((keV) => (
              <tr>
                <th scope="row" class="n">
                  {keV}
                </th>
                {curves.map(({ muPerCm }) => (
                  <td class="n">{valueWords(Number(atKeV(muPerCm, energiesKeV, keV).toPrecision(3)))}</td>
                ))}
                {tubes.map(({ tube }) => (
                  <>
                    <td class="n">{percent(atKeV(tube.sent, energiesKeV, keV))}</td>
                    <td class="n">{percent(atKeV(tube.through, energiesKeV, keV))}</td>
                  </>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <ul class="small">
        {tubes.map(({ tube, letter }) => (
          <li>
            {letter}, {tube.label}, {passingWords(tube)}.
          </li>
        ))}
      </ul>
      <p class="small">
        Values in bins of 1 keV, read in the bin that begins at the energy named. Attenuation from the tables
        of the x-ray model (xraylib 4.0.0, held against NIST Standard Reference Database 126); the spectrum is
        that of a tungsten tube behind its window, filter and the air.
      </p>
    </>
  )
}
