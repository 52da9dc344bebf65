import type { Context } from 'hono'
import { CardPage } from '../../../../views/card/card-page.tsx'
import { NoCardPage } from '../../../../views/card/no-card-page.tsx'
import { lineUp } from '../../../advice/assess/line-up.ts'
import type { Point } from '../../../contract/index.ts'
import { materials } from '../../../reference/index.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'
import { answerCard, askedCard } from '../../shown/cards.ts'

/** Machines drawn when none are chosen: enough to compare, few enough to wait for. */
const USUAL = 3

/** Simulated test-card radiographs of a brief. */
export const cardPage = (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const xrayAt = (point: Point) =>
    lineUp(brief, point)
      .filter(({ machine }) => machine.family === 'xray')
      .map(({ machine }) => ({ value: machine.id, words: machine.label ?? machine.id }))
  const first = brief.points.findIndex((point) => xrayAt(point).length > 0)
  if (first < 0) return showPage(c, <NoCardPage title={brief.title} packed={packed} />)
  const given = askedCard(c)
  const asked = c.req.query('point') === undefined ? { ...given, point: first } : given
  const point = brief.points[asked.point ?? 0]
  const machines = point ? xrayAt(point) : []
  const equipment = asked.equipment ?? machines.slice(0, USUAL).map(({ value }) => value)
  const options = equipment.length > 0 ? { ...asked, equipment } : asked
  return showPage(
    c,
    <CardPage
      title={brief.title}
      packed={packed}
      card={answerCard(brief, options)}
      machines={machines}
      chosen={equipment}
      points={brief.points.map(({ name }, i) => ({ value: String(i), words: name }))}
      placement={asked.placement ?? ''}
      food={materials.get(point?.product.food ?? '')?.label ?? 'food'}
      marks={c.req.query('marks') !== 'off'}
      kV={asked.kV ?? {}}
      sizesMm={asked.sizesMm ?? []}
    />,
  )
}
