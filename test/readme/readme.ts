import { readFileSync } from 'node:fs'
import { advise } from '../../src/advise.ts'
import { AnswerPicture } from '../../src/charts/answer-picture.tsx'
import { adviceText } from '../../src/commands/text/advice-text.ts'
import type { Advice, Brief } from '../../src/contract/index.ts'
import { materialNames } from '../../src/web/shown/choices.ts'
import { findingOf, wantedOf } from '../../views/advice/sizes/findings.ts'
import { axisOf } from '../../views/advice/sizes/size-axis.ts'
import { pieceShort } from '../../views/words/contaminant.ts'
import { sizeWords } from '../../views/words/size.ts'
import { ANSWER_WORDS } from '../../views/words/verdict.ts'
import { briefOf, QUICK } from '../advice/demo.ts'

export const README = new URL('../../README.md', import.meta.url)
export const PICTURE = new URL('answer.svg', import.meta.url)

/** The terminal session stands between its command and the end of its block. */
export const SESSION = /(```console\n\$ gritwise advise nuts\.json \| head -n (\d+)\n)([\s\S]*?)(```)/

/** What the README shows of the program: the brief in it, advised on, as a picture and as a terminal prints it. */
export async function shownInReadme(): Promise<{ picture: string; session: string }> {
  const text = readFileSync(README, 'utf8')
  const example = /```json\n([\s\S]*?)```/.exec(text)?.[1]
  const lines = Number(SESSION.exec(text)?.[2])
  if (!example || !lines) throw new Error('the README has no brief, or no terminal session')
  const brief = briefOf(JSON.parse(example))
  const advice = await advise(brief, QUICK)
  const printed = adviceText(brief, advice).split('\n').slice(0, lines)
  return { picture: pictureOf(brief, advice), session: `${printed.join('\n')}\n` }
}

function pictureOf(brief: Brief, advice: Advice): string {
  const wanted = wantedOf(advice)
  const rows = advice.answer.rows.map((row) => {
    const option = advice.points
      .find(({ name }) => name === row.point)
      ?.options.find(({ equipment }) => equipment === row.equipment)
    const { mark, words } = ANSWER_WORDS[row.meets]
    return {
      name: pieceShort(wanted[row.contaminant]!, materialNames),
      asked: String(row.askedMm ?? '–'),
      expected: row.expectedMm === null ? 'none' : sizeWords(row.expectedMm),
      promised: row.promisedMm === null ? 'none' : sizeWords(row.promisedMm),
      answer: `${mark} ${words}`,
      sizes: {
        bestMm: (option && findingOf(option, row.contaminant)?.bestMm) ?? null,
        expectedMm: row.expectedMm,
        cautiousMm: row.promisedMm,
      },
      askedMm: row.askedMm,
    }
  })
  return `${AnswerPicture({ title: brief.title, sentence: advice.answer.sentence, axis: axisOf(advice), rows })}\n`
}
