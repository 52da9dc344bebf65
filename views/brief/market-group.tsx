import { choiceWords } from '../words/choices.ts'
import { Choose, Line } from './field.tsx'
import { GroupFold } from './fold.tsx'
import type { Sheet } from './sheet.ts'

/** Who eats it and whose law holds, folded to what is said. */
export function MarketGroup({ sheet }: { sheet: Sheet }) {
  const said = (path: string) => {
    const value = sheet.answers[path] ?? ''
    return value === '' ? '' : choiceWords(path, value)
  }
  const ready = { yes: 'eaten as it is', no: 'cooked or sifted later' }[sheet.answers.readyToEat ?? '']
  const holds = [said('market'), said('consumer'), ready, sheet.answers.labelClaims].filter(Boolean)
  return (
    <GroupFold
      sheet={sheet}
      paths={['market', 'consumer', 'readyToEat', 'labelClaims']}
      id="eaters"
      title="Consumer and market"
      empty="not stated: no market's law is quoted, general public, eaten as it is"
      holds={holds.join(', ')}
    >
      <div class="fields">
        <Choose sheet={sheet} path="market" empty="Not stated" />
        <Choose sheet={sheet} path="consumer" empty="Not stated" />
        <Choose sheet={sheet} path="readyToEat" empty="Not stated" />
        <Line sheet={sheet} path="labelClaims" />
      </div>
    </GroupFold>
  )
}
