import type { Context } from 'hono'
import { addressOf, type TradeOffsProps } from '../../../../views/trade-offs/props.ts'
import { TradeOff, TradeOffsPage } from '../../../../views/trade-offs/trade-offs-page.tsx'
import { measureWords, pieceWords } from '../../../../views/words/contaminant.ts'
import { knownInput } from '../../../trade-offs/inputs.ts'
import { presentOf } from '../../../trade-offs/present.ts'
import { sizeAgainst, sizedMachinesAt, spectraOf } from '../../../trade-offs/trade-offs.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { askedTradeOff, inputsAt, MOST_MACHINES } from '../../asked/asked-trade-off.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'

/** Values along a curve. */
const STEPS = 13

/** Curves, chances, noise and voltages for what the address asks. */
function tradeOffs(c: Context): TradeOffsProps {
  const { packed, brief } = goodBrief(c)
  const { asked, note } = askedTradeOff(c, brief)
  const { point, contaminant, machines, input } = asked
  const { unit, scale } = knownInput(input)
  const standing = sizedMachinesAt(brief, point)
  const present = presentOf(brief, point, machines, contaminant)
  const tubes = standing.flatMap((machine) => {
    const kV = present.find((one) => one.machine === machine.id)?.tube?.kV
    return machine.family === 'xray' && kV !== undefined ? [{ machine, kV }] : []
  })
  const piece = brief.contaminants[contaminant]!
  return {
    packed,
    title: brief.title,
    asked,
    note,
    choices: {
      points: brief.points.map(({ name }) => name),
      pieces: brief.contaminants.map((one) => pieceWords(one, materialNames)),
      machines: standing.map(({ id, label }) => ({ id, label: label ?? id })),
      inputs: inputsAt(brief, point),
      mostMachines: MOST_MACHINES,
      metalDetector: standing.some(({ family }) => family === 'coil'),
    },
    unit,
    scale,
    mustFindMm: piece.mustFindMm,
    measure: measureWords(piece.shape),
    series: sizeAgainst(brief, point, machines, contaminant, input, STEPS),
    present,
    spectra: spectraOf(brief, point, contaminant, tubes),
    print: c.req.query('print') === '1',
  }
}

/** Findable size against one input. */
export const tradeOffsPage = (c: Context) => showPage(c, <TradeOffsPage {...tradeOffs(c)} />)

/** The same for the place on the page where the choice is made; the address bar follows. */
export const tradeOffsPart = (c: Context) => {
  const props = tradeOffs(c)
  c.header('HX-Replace-Url', addressOf(props.packed, props.asked))
  return showPage(c, <TradeOff {...props} />)
}
