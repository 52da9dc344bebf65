import type { Advice } from '../../../src/contract/advice.ts'
import { type Names, pieceShort } from '../../words/contaminant.ts'
import { fieldWords, pathWords, unitOf } from '../../words/path.ts'
import { valueWords } from '../../words/size.ts'

type Change = Advice['changes'][number]
type Input = Change['inputs'][number]

const isPoint = (path: string) => /^points\.\d+$/.test(path)

function inputWords({ path, from, to }: Input, advice: Advice, names: Names): string {
  const said = (value: string | number) =>
    typeof value === 'string' ? (names.get(value) ?? value) : valueWords(value)
  const piece = pieceAt(path, advice)
  const what = isPoint(path)
    ? 'inspection point'
    : piece
      ? `${fieldWords(path)} of ${pieceShort(piece, names)}`
      : pathWords(path, advice)
  return `${what} from ${said(from)} to ${`${said(to)} ${unitOf(path)}`.trim()}`
}

/** The contaminant a field belongs to; undefined for a field of anything else. */
function pieceAt(path: string, advice: Advice) {
  const [, row] = /^contaminants\.(\d+)\./.exec(path) ?? []
  return row === undefined
    ? undefined
    : advice.points
        .flatMap(({ options }) => options.flatMap(({ findings }) => findings))
        .find(({ contaminant }) => contaminant === Number(row))
}

/** What is to be changed, every input with its place: "height … from 45 to 30 mm, with speed …". */
export const changeWords = (change: Change, advice: Advice, names: Names): string =>
  change.inputs.map((input) => inputWords(input, advice, names)).join(', with ')
