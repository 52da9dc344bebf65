import type { ComparisonData } from '../contract/index.ts'
import type { Comparison } from './comparison.ts'
import type { Side } from './sides.ts'
import type { Added } from './what-it-adds.ts'

/** A comparison as programs get it; `words` are the sentences the page begins with. */
export function asData(comparison: Comparison, words: readonly string[]): ComparisonData {
  return {
    words: [...words],
    pieces: comparison.wanted.map(({ piece: { material, shape, placement, lengthMm, faceMm2 } }) => ({
      material,
      shape,
      placement,
      lengthMm,
      faceMm2,
    })),
    sides: comparison.sides.map((side, at) => ({
      ...machineOf(side),
      questions: [...(comparison.questions.toEach[at] ?? [])],
      clause: clauseOf(comparison.acceptance[at]!),
    })),
    changes: comparison.added.flatMap(changesOf),
    askOfAll: [...comparison.questions.toAll],
    ourselves: [...comparison.questions.ourselves],
  }
}

const machineOf = ({ key, laid, option, point, findings, claims }: Side) => ({
  key,
  pack: laid.mark,
  equipment: option.equipment,
  label: option.label,
  point: point.name,
  verdict: option.verdict,
  burden: option.burden,
  falseRejectsPerPack: point.falseRejectsPerPack,
  sizes: findings.map(
    (finding) =>
      finding && {
        askedMm: finding.mustFindMm,
        bestMm: finding.bestMm,
        expectedMm: finding.expectedMm,
        promisedMm: finding.cautiousMm,
        meets: finding.meets,
      },
  ),
  quoted: claims.map(({ given: { material, sizeMm }, judgement, text }) => ({
    material,
    sizeMm,
    judgement,
    text,
  })),
})

const clauseOf = ({ clean, pieces, terms }: Comparison['acceptance'][number]) => ({
  cleanPacks: clean.packs,
  pieces: pieces.map(({ contaminant, sizeMm, runs, place, lies }) => ({
    piece: contaminant,
    sizeMm,
    runs,
    missesAllowed: terms.misses,
    place,
    lies: lies.filter((lie) => lie !== ''),
  })),
})

const changesOf = ({ over, with: other, gains, losses }: Added) =>
  [gains, losses].flatMap((changes, at) =>
    changes.map(({ contaminant, turn, smallerByMm }) => ({
      over: over.key,
      with: other.key,
      piece: contaminant,
      better: at === 0,
      turn,
      smallerByMm,
    })),
  )
