import type { Advice, Ask, Brief, Calculation, Checks, Hazard, Register, Said } from '../contract/index.ts'
import { materials } from '../reference/index.ts'
import { hazardOf } from '../register/hazard/hazard.ts'
import { type Given, type HazardNumbers, hazardNumbers } from '../register/hazard/hazard-numbers.ts'
import { Answers } from '../register/line/answers.ts'
import { findingOf, type Line, linesOf } from '../register/line/controls-in-place.ts'
import { type Throughput, throughputOf } from '../register/line/throughput.ts'
import { toConfirm } from '../register/line/to-confirm.ts'
import { sentencesFor } from '../register/say/sentences.ts'
import { checkPointOf, type Planned, pieceWords } from './check-point.ts'

export interface Records {
  readonly register: Register
  readonly checks: Checks
  readonly calculations: readonly Calculation[]
}

/** An advice given in passing, without its records. */
export const NO_RECORDS: Records = {
  register: {
    hazards: [],
    lines: [],
    plant: [],
    revalidate: [],
    law: [],
    lawElsewhere: [],
    auditor: [],
    notes: [],
    confirm: [],
    cites: [],
    overruled: [],
    unread: [],
  },
  checks: { points: [], siteList: [] },
  calculations: [],
}

interface Worked {
  readonly line: Line
  readonly throughput: Throughput | null
  readonly numbers: readonly HazardNumbers[]
  readonly plans: readonly Planned[]
}

/** Hazard register and check plan of an advice: the figures first, then what the rules say of them. */
export async function recordsOf(
  brief: Brief,
  advice: Pick<Advice, 'points' | 'combination'>,
  { ask, ...given }: Given & { readonly ask: Ask },
): Promise<Records> {
  const answers = new Answers(brief)
  const contaminants = brief.contaminants.map(named)
  const worked: Worked[] = []
  for (const line of linesOf(brief, advice, answers)) {
    const throughput = throughputOf(brief, line.points, answers)
    const numbers = contaminants.map((_, c) => hazardNumbers(brief, line, c, throughput, answers, given))
    const plans: Planned[] = []
    for (const [at, control] of line.controls.entries())
      plans.push(
        await checkPointOf({
          brief,
          line,
          control,
          throughput,
          foundPerMillion: foundAt(numbers, at),
          kinds: contaminants.map(({ kind }) => kind),
          metals: contaminants.filter(({ metal }) => metal).length,
          answers,
          ask,
        }),
      )
    worked.push({ line, throughput, numbers, plans })
  }
  const hazards: Hazard[] = []
  for (const { numbers, throughput, plans } of worked)
    for (const one of numbers)
      hazards.push(
        await hazardOf({
          brief,
          numbers: one,
          removals: advice.points.flatMap(({ name, removals }) =>
            removals.map((removal) => ({ point: name, ...removal })),
          ),
          label: contaminants[one.contaminant]!.label,
          throughput,
          checks: plans.map(({ point }) => ({
            pieces: point.pieces
              .filter(({ routineMm }) => routineMm !== null)
              .map(pieceWords)
              .join('; '),
            intervalMin: point.intervalMin,
          })),
          answers,
          ask,
        }),
      )
  const register = await registerOf(brief, worked, hazards, answers, ask)
  return {
    register,
    checks: {
      points: worked.flatMap(({ plans }) => plans.map(({ point }) => point)),
      siteList: siteList(
        worked.flatMap(({ plans }) => plans.flatMap(({ site }) => site)),
        answers,
      ),
    },
    calculations: worked.flatMap(({ numbers, plans }) => [
      ...numbers.flatMap(({ calculations }) => calculations),
      ...plans.flatMap(({ calculations }) => calculations),
    ]),
  }
}

/** A contaminant as the register names it, with its kind. */
function named({ material, shape, lengthMm, faceMm2 }: Brief['contaminants'][number]) {
  const known = materials.get(material)
  const name = known?.label ?? material
  const piece = shape === 'wire' ? `${name}, wire ${lengthMm} mm long` : `${name}, flake of ${faceMm2} mm²`
  const kind = known?.kind ?? ''
  return { label: shape === 'sphere' ? name : piece, kind, metal: kind === 'metal' }
}

/** Pieces a machine finds per million, over the contaminants whose finds are logged; null where none is. */
function foundAt(numbers: readonly HazardNumbers[], control: number): number | null {
  const logs = numbers.flatMap((one) => one.logs.filter((log) => log.control === control))
  return logs.length === 0 ? null : logs.reduce((sum, log) => sum + log.found / log.millionPacks, 0)
}

async function registerOf(
  brief: Brief,
  worked: readonly Worked[],
  hazards: readonly Hazard[],
  answers: Answers,
  ask: Ask,
): Promise<Register> {
  const pairs = hazards.flatMap(({ controls }) => controls)
  const open = hazards.filter((hazard) => hazard.class === 'not-controlled-here')
  const confirm = toConfirm(
    brief,
    worked.flatMap(({ numbers }) => numbers),
    answers,
  )
  const author = answers.word('plant.author', '').value
  const said = await ask(
    { ground: 'record', pointIndex: null, equipment: null, contaminant: null },
    {
      'record.controls': worked.reduce((sum, { line }) => sum + line.controls.length, 0),
      'record.pairs': pairs.length,
      'record.demonstrated': pairs.filter(({ demonstratedMm }) => demonstratedMm !== null).length,
      'record.ccps': pairs.filter((pair) => pair.class === 'CCP').length,
      'record.openHazards': open.length,
      'record.openNames':
        open.length === 0 ? 'none' : [...new Set(open.map(({ label }) => label))].join('; '),
      'record.xray': worked.some(({ line }) => line.controls.some(({ option }) => option.family === 'xray')),
      'record.finds': brief.finds.length,
      'record.toConfirm': confirm.length,
      'record.overruled': answers.overruled.length,
      'record.author': author === '' ? 'nobody is named yet' : author,
      'record.flowConfirmed': answers.word('plant.flow-confirmed', '').value !== '',
      'record.animalFood': brief.consumer === 'animals',
    },
  )
  return {
    hazards: [...hazards].sort(byOpenFirst),
    lines: worked.map(({ line, throughput }) => ({
      name: line.name,
      controls: line.controls.map(({ option, point }) => ({
        point,
        equipment: option.equipment,
        label: option.label,
        finds: option.findings.flatMap((f) =>
          findingOf({ pointIndex: 0, point, option }, f.contaminant)?.expectedMm !== null
            ? [f.contaminant]
            : [],
        ),
      })),
      unit: throughput?.unit ?? 'packs',
      perYear: throughput?.perYear ?? null,
    })),
    plant: PLANT.map(([id, label]) => ({
      id: `plant.${id}`,
      label,
      ...(id === 'retention'
        ? retentionOf(said, answers)
        : { value: answers.word(`plant.${id}`, '').value, rule: '' }),
    })),
    revalidate: itemsAsSentences(said, 'revalidate'),
    law: [],
    lawElsewhere: [],
    auditor: said
      .filter(({ slot }) => slot === 'auditor')
      .flatMap(({ items, rule }) =>
        items.map(({ about, text }) => ({ question: about, answer: text, rule })),
      ),
    notes: sentencesFor(said, 'note'),
    confirm,
    cites: [],
    overruled: [...answers.overruled],
    unread: [...answers.unread],
  }
}

/** How long records are kept: as a person says, else by the law of the market. */
function retentionOf(said: readonly Said[], answers: Answers): { value: string; rule: string } {
  const filled = said.find(({ slot }) => slot === 'retention')
  const { value, from } = answers.word('plant.retention', filled?.text ?? '')
  return { value, rule: from === 'entered' ? '' : (filled?.rule ?? '') }
}

/** What a person says of the plant and the register as a whole; empty until somebody does. */
const PLANT = [
  ['author', 'Answers for the register'],
  ['team', 'Team and its competence'],
  ['flow-confirmed', 'Flow confirmed on site'],
  ['released-by', 'Holds and releases product'],
  ['rework-to', 'Rework comes back in at'],
  ['issue', 'Issue and date'],
  ['changed', 'Changed since the last issue'],
  ['retention', 'Records are kept for'],
] as const

/** What nothing here controls stands at the top; the order of lines and contaminants is kept otherwise. */
const byOpenFirst = (a: Hazard, b: Hazard): number =>
  Number(b.class === 'not-controlled-here') - Number(a.class === 'not-controlled-here')

const itemsAsSentences = (said: readonly Said[], slot: 'revalidate') =>
  said
    .filter((one) => one.slot === slot)
    .flatMap(({ items, rule, sources }) => items.map(({ text }) => ({ text, rule, sources: [...sources] })))

/** Questions of the site list, each once, with the answers a person gave. */
function siteList(said: readonly Said[], answers: Answers): Checks['siteList'] {
  const questions = said.flatMap(({ items, rule }) =>
    items.map(({ about, text }) => ({ id: `site.${about}`, question: text, rule })),
  )
  return [...new Map(questions.map((one) => [one.id, one])).values()].map((one) => {
    const { value, because } = answers.word(one.id, '')
    return { ...one, answer: value, because }
  })
}
