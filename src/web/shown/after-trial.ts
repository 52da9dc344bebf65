import type { Updated } from '../../../views/runs/before-after.tsx'
import { pieceWords } from '../../../views/words/contaminant.ts'
import { parseBrief } from '../../brief/index.ts'
import { enteredOf } from '../../brief/usual/usual-contaminants.ts'
import { type Advice, type Brief, type RunsAnswer, speaksOfPiece } from '../../contract/index.ts'
import { withRecords } from '../../runs/index.ts'
import type { Advisor } from '../advisor.ts'
import { packBrief } from '../asked/packed-brief.ts'
import { materialNames } from './choices.ts'
import { machineName } from './trial.ts'

/** The advice before and after a trial, piece by piece, and the brief that holds it; null where it adds nothing. */
export async function afterTrial(
  advisor: Advisor,
  brief: Brief,
  { records }: RunsAnswer,
): Promise<{ updated: Updated[]; packed: string } | null> {
  if (!records || records.measured.length + records.demonstrated.length === 0) return null
  const next = parseBrief(withRecords(brief.given, records))
  if (!next.ok) return null
  const [before, after] = [await advisor.quick(brief), await advisor.quick(next.brief)]
  const tried = [...records.measured.filter(speaksOfPiece), ...records.demonstrated]
  // The signal of clean packs moves the machine's other pieces too.
  const about = tried.flatMap(({ point, equipment, contaminant }) => [
    [point, equipment, contaminant] as const,
    ...brief.contaminants.flatMap((_, c) => {
      const [was, is] = [before, after].map((advice) => findingIn(advice, point, equipment, c))
      return was?.expectedMm === is?.expectedMm ? [] : [[point, equipment, c] as const]
    }),
  ])
  const once = [...new Map(about.map((one) => [one.join('|'), one])).values()]
  return {
    packed: packBrief(enteredOf(next.brief)),
    updated: once.flatMap(([point, equipment, contaminant]) => {
      const [was, is] = [before, after].map((advice) => findingIn(advice, point, equipment, contaminant))
      if (!was || !is) return []
      const piece = pieceWords(brief.contaminants[contaminant]!, materialNames)
      return [
        {
          title: `${machineName(equipment)}, ${point}: ${piece}`,
          before: was,
          after: is,
          demonstrated: is.demonstrated,
        },
      ]
    }),
  }
}

const findingIn = (advice: Advice, point: string, equipment: string, contaminant: number) =>
  advice.points
    .find(({ name }) => name === point)
    ?.options.find((option) => option.equipment === equipment)
    ?.findings.find((finding) => finding.contaminant === contaminant)
