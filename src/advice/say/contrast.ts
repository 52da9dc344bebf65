import type { Brief, Contrast, Option } from '../../contract/index.ts'
import type { Apart, PartingOfTwo, Worst } from '../stages.ts'
import { traceKey } from './reason.ts'
import { nameWords, sizedWords, wordList } from './words.ts'

const times = ({ ratio }: Worst) =>
  ratio === Number.POSITIVE_INFINITY ? 'no size at all' : `${Number(ratio.toPrecision(2))} times`

/** Whose size the worst of an option is. */
const whose = (brief: Brief, { contaminant }: Worst) =>
  contaminant === null ? '' : ` (${nameWords(brief, contaminant)})`

function unmetWords(brief: Brief, label: string, unmet: readonly number[]): string {
  if (unmet.length === 0) return `${label} leaves none`
  return `${label} leaves ${wordList(unmet.map((c) => nameWords(brief, c)))}`
}

const sizedNames = (brief: Brief, contaminants: readonly number[]) =>
  wordList(contaminants.map((c) => sizedWords(brief, c)))

/** What trials on the product say for the one ahead and of the one behind. */
function trialWords(
  brief: Brief,
  { shown, tried }: PartingOfTwo,
  labels: readonly string[],
  a: 0 | 1,
): string {
  const b = a === 0 ? 1 : 0
  const ahead =
    shown[a].length > 0
      ? `A trial on the product showed ${sizedNames(brief, shown[a])} with ${labels[a]}.`
      : `${labels[a]} is computed to do as well and was not tried: run the same trial on it.`
  const behind =
    tried[b].length > 0
      ? `${labels[b]} was tried on the product and did not show ${sizedNames(brief, tried[b])}.`
      : `The sizes of ${labels[b]} are computed.`
  return `${ahead} ${behind}`
}

/** What puts one option before the other, by the first step of the order at which they part. */
function partingWords(brief: Brief, parting: PartingOfTwo, options: readonly [Option, Option]): string {
  const [a, b] = parting.sign > 0 ? ([1, 0] as const) : ([0, 1] as const)
  const [ahead, behind] = [options[a], options[b]]
  const unmetSentence = () =>
    `Of the sizes of severity ${parting.severity}, ${unmetWords(brief, ahead.label, parting.unmet[a])} unmet at the value that can be promised; ${unmetWords(brief, behind.label, parting.unmet[b])}.`
  switch (parting.step) {
    case 'excluded':
      return `${behind.label} is excluded: ${behind.because}`
    case 'verdict':
      return parting.severity === null
        ? `${ahead.label}: ${ahead.because} ${behind.label}: ${behind.because}`
        : unmetSentence()
    case 'unmet':
      return unmetSentence()
    case 'trial':
      return trialWords(
        brief,
        parting,
        options.map(({ label }) => label),
        a,
      )
    case 'ratio':
      return `Both leave as many sizes unmet. The worst size ${ahead.label} can promise is ${times(parting.worst[a])} the size to find${whose(brief, parting.worst[a])}; that of ${behind.label} is ${times(parting.worst[b])}${whose(brief, parting.worst[b])}.`
    case 'burden':
      return `Both do as well on the sizes; ${ahead.label} asks less: burden ${ahead.burden} against ${behind.burden}.`
    case 'partly':
      return `Both do as well and ask as much; ${ahead.label} leaves fewer places of the pack out.`
    case 'nothing':
      return 'The order cannot tell the two apart; they stand as they are listed.'
  }
}

function becauseOf(brief: Brief, apart: Apart, options: readonly [Option, Option]): string {
  if (apart.parting) return partingWords(brief, apart.parting, options)
  const ideal = options.find(({ rank }) => rank === null)
  if (!ideal) return 'Neither is suitable here, so nothing puts one before the other.'
  return `${ideal.label} is an ideal shown for teaching and has no place in the order.`
}

/** What two options of a point differ in, with what puts one before the other and what the rules say. */
export function contrastWords(
  brief: Brief,
  pointIndex: number,
  apart: Apart,
  options: readonly [Option, Option],
): Contrast {
  const textOf = ({ equipment, reasons }: Option, rule: string, contaminant: number | null) => {
    const key = traceKey({ pointIndex, equipment, contaminant, rule })
    return reasons.find(({ trace }) => trace === key)?.text
  }
  const { parting: _parting, ...same } = apart
  return {
    ...same,
    because: becauseOf(brief, apart, options),
    rules: apart.rules.map((one) => ({
      ...one,
      text:
        textOf(options[0], one.rule, one.contaminant) ?? textOf(options[1], one.rule, one.contaminant) ?? '',
    })),
  }
}
