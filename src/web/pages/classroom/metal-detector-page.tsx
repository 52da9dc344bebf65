import type { Context } from 'hono'
import { MetalDetectorPage, MetalPart } from '../../../../views/trade-offs/metal-page.tsx'
import { type MetalProps, metalAddress } from '../../../../views/trade-offs/metal-props.ts'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import { metalDetectorsAt, metalsOf } from '../../../trade-offs/metal-setup.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { askedIndex } from '../../asked/asked-trade-off.ts'
import { showPage } from '../../show-page.ts'
import { materialNames } from '../../shown/choices.ts'
import { metalPicture } from '../../shown/metal-picture.ts'

/** An angle in the address: a number from 0 to 90, decimal comma or point; 0 where it is none. */
function askedAngle(given: string): { angleDeg: number; note: string } {
  const angle = Number(given.trim().replace(',', '.'))
  const good = Number.isFinite(angle) && angle >= 0 && angle <= 90
  return {
    angleDeg: good ? angle : 0,
    note: good ? '' : 'The angle is a number from 0 to 90 degrees; 0 is drawn.',
  }
}

function metalDetector(c: Context): MetalProps {
  const { packed, brief } = goodBrief(c)
  const point = askedIndex(c, 'point', brief.points.length)
  const machines = metalDetectorsAt(brief, point)
  const metals = metalsOf(brief)
  const machine = machines.find(({ id }) => id === c.req.query('machine')) ?? machines[0]
  const given = Number(c.req.query('contaminant') ?? Number.NaN)
  const contaminant = metals.includes(given) ? given : (metals[0] ?? 0)
  const { angleDeg, note } = askedAngle(c.req.query('angle') ?? '0')
  return {
    packed,
    title: brief.title,
    asked: { point, machine: machine?.id ?? '', contaminant, angleDeg },
    note,
    choices: {
      points: brief.points.map(({ name }) => name),
      machines: machines.map(({ id, label }) => ({ id, label: label ?? id })),
      metals: metals.map((index) => ({
        index,
        words: pieceWords(brief.contaminants[index]!, materialNames),
      })),
    },
    picture:
      machine && metals.length > 0
        ? metalPicture(brief, point, machine, contaminant, angleDeg, materialNames)
        : null,
    print: c.req.query('print') === '1',
  }
}

/** One metal detector and one piece of metal. */
export const metalDetectorPage = (c: Context) => showPage(c, <MetalDetectorPage {...metalDetector(c)} />)

/** The same for the place on the page where the choice is made; the address bar follows. */
export const metalDetectorPart = (c: Context) => {
  const props = metalDetector(c)
  c.header('HX-Replace-Url', metalAddress(props.packed, props.asked))
  return showPage(c, <MetalPart {...props} />)
}
