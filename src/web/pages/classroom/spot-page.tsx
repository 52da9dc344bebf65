import type { Context } from 'hono'
import { HTTPException } from 'hono/http-exception'
import { NoCardPage } from '../../../../views/card/no-card-page.tsx'
import { SpotPage, type SpotState } from '../../../../views/exercises/spot-page.tsx'
import { lineUp } from '../../../advice/assess/line-up.ts'
import { lateFor } from '../../../card/shows-most.ts'
import type { Brief } from '../../../contract/index.ts'
import { ofMachine, ofPeople } from '../../../exercises/spot/score.ts'
import { LEVELS, ROUNDS, type SpotRound, spotRound } from '../../../exercises/spot/spot-round.ts'
import { gridOver, readSquares } from '../../../exercises/spot/squares.ts'
import { goodBrief } from '../../asked/asked-brief.ts'
import { askedWhole } from '../../asked/asked-whole.ts'
import { Kept } from '../../kept.ts'
import { showPage } from '../../show-page.ts'
import { disposition } from '../../shown/attachment.ts'

const KEPT_BYTES = 16 * 1024 * 1024
const kept = new Kept<SpotRound | null>(KEPT_BYTES)

const MOST_POINTS = 1000

/** X-ray machines of a point, those first that show most of its pack. */
function xrayAt(brief: Brief, index: number) {
  const point = brief.points[index]!
  return lineUp(brief, point)
    .flatMap(({ machine }) => (machine.family === 'xray' ? [machine] : []))
    .map((machine) => ({
      value: machine.id,
      words: machine.label ?? machine.id,
      late: lateFor(point, machine),
    }))
    .sort((a, b) => a.late - b.late)
}

/** Round, machine and score of an address; null where the brief has no x-ray machine to play against. */
function asked(c: Context): { brief: Brief; state: SpotState; machines: ReturnType<typeof xrayAt> } | null {
  const { packed, brief } = goodBrief(c)
  const first = brief.points.findIndex((_, i) => xrayAt(brief, i).length > 0)
  if (first < 0) return null
  const point = askedWhole(c, 'point', first, 0, brief.points.length - 1)
  const machines = xrayAt(brief, point)
  const wanted = c.req.query('machine')
  const machine = machines.find(({ value }) => value === wanted) ?? machines[0]
  if (!machine) return null
  const level = LEVELS.find(({ id }) => id === c.req.query('level')) ?? LEVELS[0]
  const step = c.req.query('step')
  return {
    brief,
    machines,
    state: {
      packed,
      point,
      machine: machine.value,
      level: level.id,
      seed: askedWhole(c, 'seed', 1, 0, 99_999),
      round: askedWhole(c, 'round', 1, 1, ROUNDS),
      squares: (c.req.query('squares') ?? '').slice(0, 600),
      step: step === 'marks' || step === 'food-off' ? step : 'look',
      people: askedWhole(c, 'people', 0, -MOST_POINTS, MOST_POINTS),
      machinePoints: askedWhole(c, 'machine-points', 0, -MOST_POINTS, MOST_POINTS),
      present: c.req.query('present') === '1',
    },
  }
}

function roundOf(brief: Brief, state: SpotState): SpotRound | null {
  const { point, machine, seed, round } = state
  const level = LEVELS.find(({ id }) => id === state.level)!
  const key = JSON.stringify([brief.given, point, machine, seed, round, level.id])
  const found = kept.get(key)
  if (found !== undefined) return found
  const made = spotRound(brief, { point, machine, seed, round, level })
  kept.set(key, made, 10_000 + (made?.pictures.reduce((sum, { png }) => sum + png.byteLength, 0) ?? 0))
  return made
}

/** The round of an address; where its machine finds nothing this brief names, that of the first one that does. */
function playable({ brief, state, machines }: NonNullable<ReturnType<typeof asked>>) {
  for (const machine of [state.machine, ...machines.map(({ value }) => value)]) {
    const round = roundOf(brief, { ...state, machine })
    if (round) return { round, state: { ...state, machine } }
  }
  return null
}

/** Spot the piece: a pack, the squares people marked, and what the machine made of it. */
export const spotPage = (c: Context) => {
  const given = asked(c)
  const played = given && playable(given)
  if (!given || !played) {
    const { packed, brief } = goodBrief(c)
    return showPage(c, <NoCardPage title={brief.title} packed={packed} />)
  }
  const { brief, machines } = given
  const { round, state } = played
  const grid = gridOver(round.sheet.frame)
  const { squares, unknown } = readSquares(state.squares, grid)
  return showPage(
    c,
    <SpotPage
      state={{ ...state, squares: squares.map(({ name }) => name).join('.') }}
      rounds={ROUNDS}
      levels={LEVELS}
      points={brief.points.flatMap(({ name }, i) =>
        xrayAt(brief, i).length > 0 ? [{ value: String(i), words: name }] : [],
      )}
      machines={machines}
      sheet={round.sheet}
      pictures={round.pictures}
      grid={grid}
      marked={squares}
      unknown={unknown}
      people={ofPeople(round.sheet, grid, squares)}
      machine={ofMachine(round.sheet)}
      machineLabel={round.machineLabel}
    />,
  )
}

/** A picture of a round as PNG: it holds no marks, and its address says nothing of where a piece lies. */
export const spotPicture = (c: Context) => {
  const given = asked(c)
  const name = c.req.query('picture') ?? ''
  const picture = given && roundOf(given.brief, given.state)?.pictures.find((one) => one.name === name)
  if (!picture) throw new HTTPException(404, { message: 'This round has no picture of that name.' })
  return c.body(new Uint8Array(picture.png).buffer, 200, {
    'content-type': 'image/png',
    'content-disposition': disposition('inline', `${picture.name}.png`),
  })
}
