import { Line, Radios } from './field.tsx'
import type { Sheet } from './sheet.ts'

export function MarketGroup({ sheet }: { sheet: Sheet }) {
  return (
    <fieldset class="group" id="eaters">
      <legend>
        <h2>Consumer and market</h2>
      </legend>
      <Radios sheet={sheet} path="market" empty="Not said" />
      <Radios sheet={sheet} path="consumer" empty="Not said" />
      <Radios sheet={sheet} path="readyToEat" empty="Not said" />
      <Line sheet={sheet} path="labelClaims" />
    </fieldset>
  )
}
