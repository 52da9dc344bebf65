import type { Advice } from '../../../src/contract/advice.ts'
import type { Names } from '../../words/contaminant.ts'
import { pathWords, unitOf } from '../../words/path.ts'
import { valueWords } from '../../words/size.ts'

type Change = Advice['changes'][number]
type Input = Change['inputs'][number]

const isPoint = (path: string) => /^points\.\d+$/.test(path)

function inputWords({ path, from, to }: Input, advice: Advice, names: Names): string {
  const said = (value: string | number) =>
    typeof value === 'string' ? (names.get(value) ?? value) : valueWords(value)
  const what = isPoint(path) ? 'inspection point' : pathWords(path, advice)
  return `${what} from ${said(from)} to ${`${said(to)} ${unitOf(path)}`.trim()}`
}

/** What is to be changed, every input with its place: "height … from 45 to 30 mm, with speed …". */
export const changeWords = (change: Change, advice: Advice, names: Names): string =>
  change.inputs.map((input) => inputWords(input, advice, names)).join(', with ')
