import type { Context } from 'hono'
import { CardPage } from '../../../../views/card/card-page.tsx'
import { NoCardPage } from '../../../../views/card/no-card-page.tsx'
import { lineUp } from '../../../advice/assess/line-up.ts'
import { runsCsv } from '../../../card/card-runs.ts'
import { deepBed } from '../../../card/one-layer.ts'
import type { Point } from '../../../contract/index.ts'
import { materials } from '../../../reference/index.ts'
import { buildOf } from '../../../xray/beam/exposure.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { showPage } from '../../show-page.ts'
import { answerCard, askedCard } from '../../shown/cards.ts'

/** Machines drawn when none are chosen: enough to compare, few enough to wait for. */
const USUAL = 3

/** The first machines of a point; before a standing jar or can those that see it from the side come first. */
function usualMachines(machines: readonly XrayChoice[], point: Point | undefined): string[] {
  const first = (one: XrayChoice) => (point?.outline === 'cylinder' && one.beam === 'side' ? 0 : 1)
  return [...machines]
    .sort((a, b) => first(a) - first(b))
    .slice(0, USUAL)
    .map(({ value }) => value)
}

interface XrayChoice {
  readonly value: string
  readonly words: string
  readonly beam: string
}

/** Simulated test-card radiographs of a brief. */
export const cardPage = async (c: Context) => {
  const { packed, brief } = goodBrief(c)
  const xrayAt = (point: Point) =>
    lineUp(brief, point).flatMap(({ machine }) =>
      machine.family === 'xray'
        ? [{ value: machine.id, words: machine.label ?? machine.id, beam: buildOf(machine).beam }]
        : [],
    )
  const first = brief.points.findIndex((point) => xrayAt(point).length > 0)
  if (first < 0) return showPage(c, <NoCardPage title={brief.title} packed={packed} />)
  const given = askedCard(c)
  const asked = c.req.query('point') === undefined ? { ...given, point: first } : given
  const point = brief.points[asked.point ?? 0]
  const machines = point ? xrayAt(point) : []
  const equipment = asked.equipment ?? usualMachines(machines, point)
  const options = equipment.length > 0 ? { ...asked, equipment } : asked
  const card = await answerCard(brief, options)
  return showPage(
    c,
    <CardPage
      title={brief.title}
      packed={packed}
      card={card}
      runs={runsCsv(card)}
      machines={machines}
      chosen={equipment}
      points={brief.points.map(({ name }, i) => ({ value: String(i), words: name }))}
      placement={asked.placement ?? ''}
      taught={asked.taughtPacks !== undefined}
      food={materials.get(point?.product.food ?? '')?.label ?? 'food'}
      marks={c.req.query('marks') !== 'off'}
      kV={asked.kV ?? {}}
      sizesMm={asked.sizesMm ?? []}
      deepBed={point ? deepBed(point) : null}
    />,
  )
}
