import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { NoCardPage } from '../../../../views/card/no-card-page.tsx'
import { DialPage, DialPart, type DialProps, type DialState } from '../../../../views/exercises/dial-page.tsx'
import { type Moved, movedWords } from '../../../../views/exercises/dial-words.ts'
import { pieceWords } from '../../../../views/words/contaminant.ts'
import { lineUp } from '../../../advice/assess/line-up.ts'
import { lateFor } from '../../../card/shows-most.ts'
import type { Brief } from '../../../contract/index.ts'
import {
  DIAL_INPUTS,
  type DialInput,
  type DialShown,
  dialAt,
  dialValues,
  isSlow,
} from '../../../exercises/dial/dial.ts'
import {
  METAL_INPUTS,
  type MetalInput,
  type MetalShown,
  metalAt,
  metalStops,
} from '../../../exercises/dial/metal-dial.ts'
import { STOPS } from '../../../exercises/dial/stops.ts'
import { metalDetectorsAt, metalsOf } from '../../../trade-offs/metal-setup.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { askedIndex } from '../../asked/asked-trade-off.ts'
import { Kept } from '../../kept.ts'
import { sameAgain } from '../../same-again.ts'
import { showPage } from '../../show-page.ts'
import { disposition } from '../../shown/attachment.ts'
import { materialNames } from '../../shown/choices.ts'

const KEPT_BYTES = 8 * 1024 * 1024
type Shown = DialShown | MetalShown
const kept = new Kept<{ shown: Shown | null }>(KEPT_BYTES)

/** What a place shows; as a draft where that may be, takes long and is not at hand. */
function shownAt(brief: Brief, state: DialState, stop: number, mayDraft: boolean): Shown | null {
  const { point, machine, contaminant, input } = state
  const key = (draft: boolean) =>
    JSON.stringify([brief.given, point, machine, contaminant, input, stop, ...(draft ? ['draft'] : [])])
  const found = kept.get(key(false))
  if (found) return found.shown
  const asked = { point, machine, contaminant, stop }
  const coil = isCoil(brief, point, machine)
  const draft = mayDraft && !coil && isSlow(brief.points[point]!)
  const drafted = draft ? kept.get(key(true)) : undefined
  if (drafted) return drafted.shown
  const shown = coil
    ? metalAt(brief, { ...asked, input: input as MetalInput })
    : dialAt(brief, { ...asked, input: input as DialInput }, draft)
  const pictures = shown?.kind === 'x-ray' ? shown.pictures : []
  kept.set(key(draft), { shown }, 20_000 + pictures.reduce((sum, { png }) => sum + png.byteLength, 0))
  return shown
}

const isCoil = (brief: Brief, point: number, machine: string) =>
  metalDetectorsAt(brief, point).some(({ id }) => id === machine)

/** What a machine can be asked to move for a piece. */
function inputsFor(brief: Brief, asked: { point: number; machine: string; contaminant: number }): Moved[] {
  return isCoil(brief, asked.point, asked.machine)
    ? METAL_INPUTS.filter((input) => metalStops(brief, { ...asked, input }) !== null)
    : DIAL_INPUTS.filter((input) => dialValues(brief, { ...asked, input }) !== null)
}

const stopsFor = (
  brief: Brief,
  asked: { point: number; machine: string; contaminant: number },
  input: Moved,
) =>
  isCoil(brief, asked.point, asked.machine)
    ? metalStops(brief, { ...asked, input: input as MetalInput })
    : dialValues(brief, { ...asked, input: input as DialInput })

/** The choice in the address; null where no machine that can be moved stands anywhere in the brief. */
function dial(c: Context, mayDraft = false): DialProps | null {
  const { packed, brief } = goodBrief(c)
  const metals = metalsOf(brief)
  const movedAt = (index: number) =>
    lineUp(brief, brief.points[index]!).flatMap(({ machine }) =>
      machine.family === 'xray' || (machine.family === 'coil' && metals.length > 0)
        ? [
            {
              value: machine.id,
              words: machine.label ?? machine.id,
              coil: machine.family === 'coil',
              late: machine.family === 'xray' ? lateFor(brief.points[index]!, machine) : 0,
            },
          ]
        : [],
    )
  const seen = brief.points.flatMap(({ name }, i) =>
    movedAt(i).length > 0 ? [{ value: String(i), words: name }] : [],
  )
  if (seen.length === 0) return null
  const wanted = askedIndex(c, 'point', brief.points.length)
  const point = seen.some(({ value }) => value === String(wanted)) ? wanted : Number(seen[0]!.value)
  // An x-ray machine comes first: its picture is what a room looks at.
  const machines = movedAt(point).sort((a, b) => Number(a.coil) - Number(b.coil) || a.late - b.late)
  const { value: machine, coil } =
    machines.find(({ value }) => value === c.req.query('machine')) ?? machines[0]!
  const chosen = askedIndex(c, 'contaminant', brief.contaminants.length)
  const contaminant = coil && !metals.includes(chosen) ? metals[0]! : chosen
  const inputs = inputsFor(brief, { point, machine, contaminant })
  const input = inputs.find((id) => id === c.req.query('input')) ?? inputs[0] ?? 'speed'
  const values = stopsFor(brief, { point, machine, contaminant }, input)
  const stops = values?.values.length ?? STOPS
  const given = c.req.query('stop')
  const stop = given === undefined ? Math.max(0, values?.present ?? 0) : askedIndex(c, 'stop', stops)
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
    contaminants: brief.contaminants.flatMap((one, i) =>
      coil && !metals.includes(i) ? [] : [{ value: String(i), words: pieceWords(one, materialNames) }],
    ),
    inputs: inputs.map((id) => ({ value: id, words: movedWords(id) })),
    stop,
    stops,
    shown: shownAt(brief, state, stop, mayDraft),
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

/** The same for the place on the page that follows the control; draft=1: as a draft first, where the whole takes long. */
export const dialPart = (c: Context) => {
  const props = dial(c, c.req.query('draft') === '1')
  if (!props) throw new HTTPException(404, { message: 'No machine of this brief sees a pack.' })
  if (!(props.shown?.kind === 'x-ray' && props.shown.draft)) sameAgain(c)
  return showPage(c, <DialPart {...props} />)
}

/** The picture at one place of the control. */
export const dialPicture = (c: Context) => {
  const shown = dial(c, c.req.query('draft') === '1')?.shown
  const pictures = shown?.kind === 'x-ray' ? shown.pictures : []
  const picture = pictures.find(({ name }) => name === c.req.query('picture'))
  if (!picture) throw new HTTPException(404, { message: 'There is no such picture.' })
  sameAgain(c)
  return c.body(new Uint8Array(picture.png).buffer, 200, {
    'content-type': 'image/png',
    'content-disposition': disposition('inline', `${picture.name}.png`),
  })
}
