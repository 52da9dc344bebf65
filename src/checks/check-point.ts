import type { Ask, Brief, Calculation, CheckPoint, PlanItem, Said, Slot } from '../contract/index.ts'
import type { Answers } from '../register/line/answers.ts'
import type { InPlace, Line } from '../register/line/controls-in-place.ts'
import { type Throughput, USUAL_DAYS } from '../register/line/throughput.ts'
import { calculation, HOLD } from '../register/line/trail.ts'
import { sentencesFor } from '../register/say/sentences.ts'
import { checksPerDay, holdRow, INTERVALS_MIN } from './hold-table.ts'
import { pieceVerdicts } from './piece-verdicts.ts'
import { piecesOf } from './pieces.ts'
import { rejectAt } from './reject-plan.ts'
import { rejectWorkload } from './reject-workload.ts'

/** Interval the plan is drawn up with where none is set (assumption: it is to be chosen from the table). */
const DRAFT_INTERVAL_MIN = 60
const USUAL_REACT_MIN = 10
const USUAL_MINUTES_PER_CHECK = 4
/** Re-inspection runs at this share of the line's pace (assumption). */
const REINSPECT_SHARE = 0.6
const USUAL_MINUTES_PER_REJECT = 5
const STAND_INS = ['glass', 'stone', 'bone']

export interface CheckInput {
  readonly brief: Brief
  readonly line: Line
  readonly control: InPlace
  readonly throughput: Throughput | null
  /** Pieces found per million by this machine, all contaminants together; null where no log says. */
  readonly foundPerMillion: number | null
  readonly kinds: readonly string[]
  readonly metals: number
  readonly answers: Answers
  readonly ask: Ask
}

export interface Planned {
  readonly point: CheckPoint
  readonly site: readonly Said[]
  readonly calculations: readonly Calculation[]
}

/** The check plan of one machine. */
export async function checkPointOf(input: CheckInput): Promise<Planned> {
  const { brief, line, control, throughput, answers, ask } = input
  const point = brief.points[control.pointIndex]!
  const key = `p${control.pointIndex}`
  const given = point.checkIntervalMin
  const interval = answers.number(`${key}.interval`, given ?? 0, 'min', [1, 10080])
  const intervalMin = interval.value > 0 ? interval.value : null
  const drafted = intervalMin ?? DRAFT_INTERVAL_MIN
  const number = (name: string, filled: number, unit: string, range: readonly [number, number]) =>
    answers.number(`${key}.${name}`, filled, unit, range).value
  const reactMin = number('react', point.reactMin ?? USUAL_REACT_MIN, 'min', [0, 1440])
  const minutesPerCheck = number('minutes-per-check', USUAL_MINUTES_PER_CHECK, 'min', [0.1, 240])
  const minutesPerReject = number('minutes-per-reject', USUAL_MINUTES_PER_REJECT, 'min', [0.1, 240])
  const days = answers.number('plant.days', USUAL_DAYS, '', [1, 366]).value
  const rhythm = { checksPerDay: checksPerDay(point.hoursPerDay, drafted), daysPerYear: days }
  const { pieces, calculations } = piecesOf(brief, control, rhythm)
  const perMin = throughput?.perMin ?? null
  const reinspectPerMin =
    perMin === null ? null : number('reinspect-per-min', REINSPECT_SHARE * perMin, '', [0.01, 1e6])
  const held =
    perMin === null || reinspectPerMin === null
      ? null
      : {
          packsPerMin: perMin,
          massG: throughput?.massG ?? null,
          hoursPerDay: point.hoursPerDay,
          reactMin,
          reinspectPerMin,
          minutesPerCheck,
        }
  const intervals = [...new Set([...INTERVALS_MIN, ...(intervalMin === null ? [] : [intervalMin])])].sort(
    (a, b) => a - b,
  )
  const workload =
    throughput === null || throughput.unit === 'kg'
      ? null
      : rejectWorkload(throughput.perDay, point.falseRejectsPerPack, input.foundPerMillion, minutesPerReject)
  const reject = rejectAt(brief, control.pointIndex)
  const keyHolder = answers.word(`${key}.key-holder`, '').value
  const others = line.controls.filter(({ pointIndex }) => pointIndex > control.pointIndex)
  const said = await ask(
    {
      ground: 'check',
      pointIndex: control.pointIndex,
      equipment: control.option.equipment,
      contaminant: null,
    },
    {
      'check.label': control.option.label,
      'check.family': control.option.family,
      'check.intervalKnown': intervalMin !== null,
      'check.intervalMin': intervalMin,
      'check.heldPacks': held && intervalMin !== null ? holdRow(held, intervalMin).packsHeld : null,
      'check.unit': throughput?.unit ?? 'packs',
      'check.laterControl': others.length > 0,
      'check.metals': input.metals,
      'check.standIns': input.kinds.filter((kind) => STAND_INS.includes(kind)).length,
      'check.pieceNames': pieces.map(pieceWords).join('; '),
      'check.pieceCount': pieces.length,
      ...pieceVerdicts(pieces),
      ...reject.facts,
      'check.keyHolder': keyHolder,
      'check.keyHolderNamed': keyHolder !== '',
      'check.falseRejectsPerDay': workload?.falsePerDay ?? null,
    },
  )
  const assumed = [
    [`${key}.react`, 'time to react', `${reactMin} min`],
    [`${key}.minutes-per-check`, 'time a check takes', `${minutesPerCheck} min`],
    ...(workload === null
      ? []
      : [[`${key}.minutes-per-reject`, 'time to open a rejected pack', `${minutesPerReject} min`]]),
    ...(reinspectPerMin === null
      ? []
      : [
          [
            `${key}.reinspect-per-min`,
            're-inspected a minute',
            `${Number(reinspectPerMin.toPrecision(3))} ${throughput?.unit ?? 'packs'}`,
          ],
        ]),
  ] as [string, string, string][]
  const id = `${key}.${control.option.equipment}`
  const sums = [
    ...(held === null
      ? []
      : [
          calculation(
            `${id}.hold`,
            `held when a check fails, ${drafted} min between checks`,
            'H',
            holdRow(held, drafted).packsHeld,
            throughput?.unit ?? 'packs',
            'a minute · (time between checks + time to react)',
            [],
            [HOLD],
          ),
        ]),
    ...(workload === null
      ? []
      : [
          calculation(
            `${id}.rejects`,
            'good packs rejected a day',
            'R',
            workload.falsePerDay,
            'packs a day',
            'packs a day · false rejects a pack; pieces a day from the finds log · packs a day',
            [],
            [HOLD],
          ),
        ]),
  ]
  return {
    calculations: [...calculations, ...sums],
    site: said.filter(({ slot }) => slot === 'site'),
    point: {
      line: line.name,
      point: control.point,
      pointIndex: control.pointIndex,
      equipment: control.option.equipment,
      label: control.option.label,
      family: control.option.family,
      stage: point.stage,
      unit: throughput?.unit ?? 'packs',
      pieces,
      intervalMin,
      intervalFrom:
        interval.from === 'entered' ? interval.because : given !== null ? 'entered in the brief' : '',
      draftIntervalMin: drafted,
      holdTable: held === null ? [] : intervals.map((one) => holdRow(held, one)),
      assumed: assumed.map(([id, label, value]) => ({ id, label, value })),
      workload,
      reject: {
        ...reject.plan,
        because: [...sentencesFor(said, 'reject-type'), ...sentencesFor(said, 'reject-timing')],
      },
      carrier: sentencesFor(said, 'carrier'),
      notes: [...sentencesFor(said, 'pieces'), ...sentencesFor(said, 'position')],
      when: itemsFor(said, 'when'),
      proofs: said
        .filter(({ slot }) => slot === 'proof')
        .flatMap(({ items, rule }) =>
          items.map(({ about, text }) => {
            const [link = '', failure = ''] = about.split(': ')
            return { link, failure, proof: text, rule }
          }),
        ),
      ifFails: itemsFor(said, 'if-fails'),
      rejects: itemsFor(said, 'rejects'),
      records: itemsFor(said, 'record-line'),
      keeping: itemsFor(said, 'keeping'),
      drill: itemsFor(said, 'drill'),
      careful: sentencesFor(said, 'careful'),
    },
  }
}

/** A piece in words: "2 mm stand-in for glass". */
export function pieceWords(piece: CheckPoint['pieces'][number]): string {
  const size = piece.routineMm === null ? 'no size' : `${piece.routineMm} mm`
  const shape =
    piece.shape === 'wire' ? `, wire ${piece.lengthMm} mm long` : piece.shape === 'flake' ? ', flake' : ''
  return `${size} ${piece.pieceMaterial}${shape}`
}

/** Items of the rules of a slot; a rule without items is an item itself. */
function itemsFor(said: readonly Said[], slot: Slot): PlanItem[] {
  return said
    .filter((one) => one.slot === slot)
    .flatMap(({ items, about, text, rule }) =>
      items.length > 0 ? items.map((item) => ({ ...item, rule })) : [{ about, text, rule }],
    )
}
