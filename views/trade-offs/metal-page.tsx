import { Page } from '../page.tsx'
import { capital } from '../words/capital.ts'
import { sizeWords, valueWords } from '../words/size.ts'
import { GAP_WORDS } from '../words/trade-offs.ts'
import { MetalChooser } from './metal-chooser.tsx'
import { type MetalPicture, type MetalProps, metalAddress } from './metal-props.ts'
import { MetalSizes } from './metal-sizes.tsx'
import { OpeningSection } from './sections/opening-section.tsx'
import { PlaneSection } from './sections/plane-section.tsx'
import { TurnedSection } from './sections/turned-section.tsx'

/** One metal detector and one piece of metal: what it hears, and what moves the findable size. */
export function MetalDetectorPage(props: MetalProps) {
  const { packed, title, print } = props
  return (
    <Page title={`Metal detector response: ${title}`} packed={packed} here="trade-offs" print={print}>
      <p class="over-title">
        <a href={`/trade-offs?b=${packed}`}>Trade-offs</a>
      </p>
      <h1>Metal detector response</h1>
      <p class="standfirst">{title}</p>
      <div id="trade-off">
        <MetalPart {...props} />
      </div>
    </Page>
  )
}

/** The form and what it draws. */
export function MetalPart(props: MetalProps) {
  const { packed, asked, choices, picture, print } = props
  return (
    <>
      {print ? null : <MetalChooser {...props} />}
      {picture ? (
        <>
          {print ? null : (
            <ul class="acts">
              <li>
                <a href={metalAddress(packed, asked)}>Address of this picture</a>
              </li>
              <li>
                <a href={metalAddress(packed, asked, true)}>Print, everything open</a>
              </li>
            </ul>
          )}
          <Answer picture={picture} />
          <PlaneSection picture={picture} print={print} />
          <MetalSizes picture={picture} print={print} />
          <TurnedSection picture={picture} print={print} />
          <OpeningSection picture={picture} print={print} />
        </>
      ) : (
        <p class="answer">
          {choices.machines.length === 0
            ? `No metal detector stands at ${choices.points[asked.point]}.`
            : 'This brief names no metal with known constants; a coil answers to metals only.'}
        </p>
      )}
    </>
  )
}

function Answer({ picture }: { picture: MetalPicture }) {
  const { label, piece, measure, frequenciesKHz, refused, expectedMm, cautiousMm, conductivity } = picture
  const promise = cautiousMm === null ? 'nothing to promise' : `safe to promise ${sizeWords(cautiousMm)} mm`
  const sizes = expectedMm === null ? 'no size to expect' : `${sizeWords(expectedMm)} mm expected, ${promise}`
  return (
    <p class="answer">
      {capital(label)} at {frequenciesKHz.join(' and ')} kHz, {piece}: {sizes} ({measure}). The food is taken
      to conduct {valueWords(conductivity.sPerM)} S/m, {conductivity.words}.
      {refused === null ? '' : ` But the food does not pass: ${GAP_WORDS[refused]}.`}
    </p>
  )
}
