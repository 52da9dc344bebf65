import type { Advice, Brief, ConditionTrace } from '../contract/index.ts'
import { lowerBound, runsToDemonstrate } from '../numerics/binomial.ts'
import { buildOf, linesPerSecond, MACHINE_DEFAULTS } from '../xray/beam/exposure.ts'
import type { QuotedSize, Side } from './sides.ts'
import { USUAL_TERMS } from './terms.ts'

/** Something to ask the supplier of one side, and why it is asked. */
export interface Question {
  readonly ask: string
  readonly because: string
}

const percent = (share: number) => `${Math.round(share * 100)} %`
const oneIn = (share: number) => `1 in ${Math.round(1 / share).toLocaleString('en-GB')}`

/** What the quote of a size leaves open. */
function aboutQuote(quote: QuotedSize, side: Side): Question[] {
  const { obtained = 'unknown', position, runs, falseRejectsPerPack, sizeMm } = quote.given
  const asked: Question[] = []
  const size = `the quoted ${sizeMm} mm`
  if (obtained !== 'in-product') {
    asked.push({
      ask: `How was ${size} obtained? Show it in our product, in our pack, at ${side.point.speedMPerMin} m/min.`,
      because:
        obtained === 'empty'
          ? 'It was read with the machine empty; food and pack take part of it away.'
          : 'The quote does not say whether the product was in the machine.',
    })
  }
  if (!position) {
    asked.push({
      ask: `Where did the piece lie when ${size} was found?`,
      because:
        side.option.family === 'xray'
          ? 'The thickest place, an edge or a seam finds less than the middle.'
          : 'The centre of the opening finds less than the belt or a wall.',
    })
  }
  const enough = runsToDemonstrate(USUAL_TERMS, 0)
  if (runs === undefined || runs < enough) {
    asked.push({
      ask: `In how many runs was ${size} found, and how many were missed?`,
      because: runs
        ? `${runs} of ${runs} shows only that at least ${percent(lowerBound(runs, runs, USUAL_TERMS.confidence))} are found, 95 % sure; ${enough} of ${enough} shows 9 in 10.`
        : `Without the number of runs a size shows nothing; ${enough} of ${enough} shows that 9 in 10 are found, 95 % sure.`,
    })
  }
  const accepted = side.point.falseRejectsPerPack
  if (falseRejectsPerPack === undefined || falseRejectsPerPack > accepted) {
    asked.push({
      ask: `What is the size at ${oneIn(accepted)} false rejects, counted on good packs before the pieces were run?`,
      because: falseRejectsPerPack
        ? `It was quoted at ${oneIn(falseRejectsPerPack)}; we accept ${oneIn(accepted)}, and a stricter threshold finds less.`
        : 'Any machine finds more when it may reject more good packs; the quote does not say how many.',
    })
  }
  return asked
}

const XRAY_FIGURES: Readonly<Record<string, string>> = {
  sourceToDetectorMm: 'distance from source to detector',
  magnification: 'magnification at the belt',
  filterAlMm: 'aluminium filter',
  windowBeMm: 'beryllium window',
  anodeAngleDeg: 'anode angle',
  blurPixels: 'blur in pixels',
  beam: 'direction of the beam',
  views: 'number of views',
  beltMm: 'thickness of the belt',
  beamWidthMm: 'width of the beam at the belt',
}

/** What the description of the machine leaves open. */
function aboutMachine({ machine, point }: Side, brief: Brief): Question[] {
  const described = brief.equipment.some((one) => typeof one !== 'string' && one.id === machine.id)
  const asked: Question[] = []
  if (!described) {
    asked.push({
      ask:
        machine.family === 'xray'
          ? 'Give tube voltage, power, pixel size, detector layers and distances of the machine you offer.'
          : 'Give the frequencies and the opening of the machine you offer.',
      because: 'The sizes here are those of a class of machine, not of the one offered.',
    })
  }
  if (machine.family === 'xray') {
    if (described) {
      const open = Object.entries(XRAY_FIGURES).filter(([field]) => !(field in machine))
      if (open.length > 0) {
        asked.push({
          ask: `Give ${open.map(([, words]) => words).join(', ')}.`,
          because: `Not said; taken as ${open.map(([field]) => MACHINE_DEFAULTS[field as keyof typeof MACHINE_DEFAULTS]).join(', ')}.`,
        })
      }
    }
    if (machine.maxLinesPerSecond === undefined) {
      const lines = Math.ceil(linesPerSecond(buildOf(machine), point.speedMPerMin) / 10) * 10
      asked.push({
        ask: `Does the detector read ${lines} lines a second, which ${point.speedMPerMin} m/min needs?`,
        because: 'The line rate is not said; a slower one stretches the pixel along the travel.',
      })
    }
  }
  if (machine.family === 'coil' && !machine.apertureHeightMm && point.apertureHeightMm === null) {
    asked.push({
      ask: 'Which opening is offered, height and width?',
      because: 'Not said; taken as the smallest usual one that lets the pack through.',
    })
  }
  return asked
}

/** Facts that a rule asked for and nobody knew, by their labels; the machine's own, or all others. */
function unknownFacts(condition: ConditionTrace, ofMachine: boolean): string[] {
  if (condition.truth !== 'unknown') return []
  if (condition.kind !== 'leaf')
    return (condition.children ?? []).flatMap((child) => unknownFacts(child, ofMachine))
  return (condition.fact ?? '').startsWith('machine.') === ofMachine ? [condition.label ?? ''] : []
}

function unknownFor({ option, point }: Side, { trace }: Advice, ofMachine: boolean): Question[] {
  const mine = trace.rules.filter(
    (rule) => rule.outcome === 'unknown' && rule.equipment === option.equipment && rule.point === point.name,
  )
  const labels = new Set(mine.flatMap(({ conditions }) => unknownFacts(conditions, ofMachine)))
  return [...labels]
    .filter((label) => label !== '')
    .map((label) => ({
      ask: `What is the ${label.charAt(0).toLowerCase()}${label.slice(1)}?`,
      because: 'A rule needs it and nobody has said.',
    }))
}

/** What nobody can answer but the buyer: facts of food, pack and line that the rules miss. */
export function questionsToOurselves(sides: readonly Side[], advice: Advice): Question[] {
  const all = sides.flatMap((side) => unknownFor(side, advice, false))
  return [...new Map(all.map((question) => [question.ask, question])).values()]
}

function aboutRules(side: Side, advice: Advice): Question[] {
  const asks = [...side.option.reasons, ...(advice.points[side.pointIndex]?.reasons ?? [])]
    .filter(({ type, truth }) => type === 'requires' && truth !== 'false')
    .map(({ text, title }) => ({ ask: `How do you meet this? ${text}`, because: `${title}.` }))
  return [...unknownFor(side, advice, true), ...asks]
}

/** Sizes that are expected and not to be promised. */
function aboutSizes({ option }: Side, pieces: readonly string[]): Question[] {
  return option.findings
    .filter(({ meets }) => meets === 'maybe')
    .map(({ contaminant, mustFindMm, widest }) => ({
      ask: `Show ${mustFindMm} mm of ${pieces[contaminant]} in our product before the order.`,
      because: `It is expected, but not to be promised${widest === '' ? '' : `; what widens the range most is ${widest}`}.`,
    }))
}

/** What to ask the supplier of one side, made from what is unknown, assumed or not to be promised. */
export function questionsTo(
  side: Side,
  { brief, advice, pieces }: { brief: Brief; advice: Advice; pieces: readonly string[] },
): Question[] {
  const all = [
    ...side.quotes.flatMap((quote) => aboutQuote(quote, side)),
    ...aboutSizes(side, pieces),
    ...aboutMachine(side, brief),
    ...aboutRules(side, advice),
  ]
  return [...new Map(all.map((question) => [question.ask, question])).values()]
}
