import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { NoCardPage } from '../../../../views/card/no-card-page.tsx'
import { DialPage, DialPart, type DialProps, type DialState } from '../../../../views/exercises/dial-page.tsx'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import { INPUT_WORDS } from '../../../../views/words/trade-offs.ts'
import { lineUp } from '../../../advice/assess/line-up.ts'
import type { Brief } from '../../../contract/index.ts'
import { DIAL_INPUTS, type DialShown, dialAt, dialValues, STOPS } from '../../../exercises/dial/dial.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { askedIndex } from '../../asked/asked-trade-off.ts'
import { Kept } from '../../kept.ts'
import { showPage } from '../../show-page.ts'
import { disposition } from '../../shown/attachment.ts'
import { materialNames } from '../../shown/choices.ts'

const KEPT_BYTES = 8 * 1024 * 1024
const kept = new Kept<{ shown: DialShown | null }>(KEPT_BYTES)

function shownAt(brief: Brief, state: DialState, stop: number): DialShown | null {
  const { point, machine, contaminant, input } = state
  const key = JSON.stringify([brief.given, point, machine, contaminant, input, stop])
  const found = kept.get(key)
  if (found) return found.shown
  const shown = dialAt(brief, {
    point,
    machine,
    contaminant,
    input: input as (typeof DIAL_INPUTS)[number],
    stop,
  })
  kept.set(key, { shown }, 20_000 + (shown?.pictures.reduce((sum, { png }) => sum + png.byteLength, 0) ?? 0))
  return shown
}

/** The choice in the address; null where no x-ray machine stands anywhere in the brief. */
function dial(c: Context): DialProps | null {
  const { packed, brief } = goodBrief(c)
  const xrayAt = (index: number) =>
    lineUp(brief, brief.points[index]!).flatMap(({ machine }) =>
      machine.family === 'xray' ? [{ value: machine.id, words: machine.label ?? machine.id }] : [],
    )
  const seen = brief.points.flatMap(({ name }, i) =>
    xrayAt(i).length > 0 ? [{ value: String(i), words: name }] : [],
  )
  if (seen.length === 0) return null
  const wanted = askedIndex(c, 'point', brief.points.length)
  const point = seen.some(({ value }) => value === String(wanted)) ? wanted : Number(seen[0]!.value)
  const machines = xrayAt(point)
  const machine = (machines.find(({ value }) => value === c.req.query('machine')) ?? machines[0]!).value
  const contaminant = askedIndex(c, 'contaminant', brief.contaminants.length)
  const inputs = DIAL_INPUTS.filter(
    (input) => dialValues(brief, { point, machine, contaminant, input }) !== null,
  )
  const input = inputs.find((id) => id === c.req.query('input')) ?? inputs[0] ?? 'speed'
  const values = dialValues(brief, { point, machine, contaminant, input })
  const stops = values?.values.length ?? STOPS
  const given = c.req.query('stop')
  const stop = given === undefined ? (values?.present ?? 0) : askedIndex(c, 'stop', stops)
  const state: DialState = {
    packed,
    point,
    machine,
    contaminant,
    input,
    stop: given === undefined ? null : stop,
    present: c.req.query('present') === '1',
  }
  return {
    state,
    title: brief.title,
    points: seen,
    machines,
    contaminants: brief.contaminants.map((one, i) => ({
      value: String(i),
      words: pieceWords(one, materialNames),
    })),
    inputs: inputs.map((id) => ({ value: id, words: INPUT_WORDS[id].name })),
    stop,
    stops,
    shown: shownAt(brief, state, stop),
    pieceWords: pieceWords(brief.contaminants[contaminant]!, materialNames),
  }
}

/** One thing of a pack or machine moved, with what the picture, the curve and the hills make of it. */
export const dialPage = (c: Context) => {
  const props = dial(c)
  if (props) return showPage(c, <DialPage {...props} />)
  const { packed, brief } = goodBrief(c)
  return showPage(c, <NoCardPage title={brief.title} packed={packed} />)
}

/** The same for the place on the page that follows the control. */
export const dialPart = (c: Context) => {
  const props = dial(c)
  if (!props) throw new HTTPException(404, { message: 'No x-ray machine of this brief sees a pack.' })
  return showPage(c, <DialPart {...props} />)
}

/** The picture at one place of the control. */
export const dialPicture = (c: Context) => {
  const picture = dial(c)?.shown?.pictures.find(({ name }) => name === c.req.query('picture'))
  if (!picture) throw new HTTPException(404, { message: 'There is no such picture.' })
  return c.body(new Uint8Array(picture.png).buffer, 200, {
    'content-type': 'image/png',
    'content-disposition': disposition('inline', `${picture.name}.png`),
  })
}
