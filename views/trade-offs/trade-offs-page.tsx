import { Page } from '../page.tsx'
import { Chooser } from './chooser.tsx'
import { addressOf, type TradeOffsProps } from './props.ts'
import { ChanceSection } from './sections/chance-section.tsx'
import { NoiseSection } from './sections/noise-section.tsx'
import { SizeSection } from './sections/size-section.tsx'
import { SpectraSection } from './sections/spectra-section.tsx'
import { VoltageSection } from './sections/voltage-section.tsx'

/** Findable size against one input, then what stands behind it in the brief as it is. */
export function TradeOffsPage(props: TradeOffsProps) {
  const { title, packed, print } = props
  return (
    <Page title={`Trade-offs: ${title}`} packed={packed} here="trade-offs" print={print}>
      <p class="over-title">Trade-offs</p>
      <h1>{title}</h1>
      <p class="standfirst">
        Move one thing and see what it does to the findable size, everything else as in the brief.
      </p>
      <div id="trade-off">
        <TradeOff {...props} />
      </div>
    </Page>
  )
}

/** The form and what it draws: the part that changes when something else is asked for. */
export function TradeOff(props: TradeOffsProps) {
  const { packed, asked, choices, print } = props
  return (
    <>
      {print ? <AskedWords {...props} /> : <Chooser {...props} />}
      {print ? null : (
        <ul class="acts">
          <li>
            <a href={addressOf(packed, asked)}>Address of this picture</a>
          </li>
          <li>
            <a href={addressOf(packed, asked, true)}>Print, everything open</a>
          </li>
          {choices.metalDetector ? (
            <li>
              <a href={`/trade-offs/metal-detector?b=${packed}&point=${asked.point}`}>
                Metal detector response
              </a>
            </li>
          ) : null}
        </ul>
      )}
      <SizeSection {...props} />
      <ChanceSection {...props} />
      <NoiseSection {...props} />
      <VoltageSection {...props} />
      <SpectraSection {...props} />
    </>
  )
}

function AskedWords({ choices, asked, note }: TradeOffsProps) {
  return (
    <p>
      {choices.points[asked.point]}: {choices.pieces[asked.contaminant]}. {note}
    </p>
  )
}
