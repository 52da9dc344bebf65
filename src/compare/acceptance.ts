import type { Finding, Zone } from '../contract/index.ts'
import { binomialAtMost, runsToDemonstrate } from '../numerics/binomial.ts'
import { chanceOnCurve } from '../numerics/chance-on-curve.ts'
import type { Side } from './sides.ts'
import { type Terms, USUAL_TERMS } from './terms.ts'

/** One test piece of the clause. */
export interface AcceptancePiece {
  /** Its number in the list of pieces. */
  readonly contaminant: number
  readonly finding: Finding
  readonly sizeMm: number
  /** asked: the size of the brief; promised: none was asked, so the size that can be promised. */
  readonly origin: 'asked' | 'promised'
  /**
   * Where the counted runs are made: the weakest place that the size covers, else the ordinary one; empty where
   * no places are told apart.
   */
  readonly place: string
  /** Places the size does not cover, each with the size expected there (null: none). */
  readonly notCovered: readonly { readonly place: string; readonly sizeMm: number | null }[]
  /** Lies of a wire or flake, each with its own runs; one empty string for a sphere. */
  readonly lies: readonly string[]
  readonly runs: number
  /** Chance that a machine which finds as computed comes through, all lies together; null where not known. */
  readonly comesThrough: number | null
}

export interface Acceptance {
  readonly side: Side
  readonly terms: Terms
  readonly pieces: readonly AcceptancePiece[]
  /** Contaminants no piece can be asked for, with the reason. */
  readonly left: readonly { readonly contaminant: number; readonly because: string }[]
  readonly clean: {
    readonly packs: number
    readonly falseRejectsPerPack: number
    /** Time the clean run takes, min; null where there are no packs. */
    readonly minutes: number | null
    /** Chance that a machine with half the allowed false-reject rate comes through. */
    readonly comesThroughAtHalf: number
  }
}

/** Sizes in a clause go up to the next 0.1 mm (below 1 mm: 0.05 mm), as test pieces are sold (common practice). */
function upToPiece(mm: number): number {
  const step = mm < 1 ? 0.05 : 0.1
  return Number((Math.ceil(mm / step - 1e-9) * step).toFixed(2))
}

function liesOf(finding: Finding, family: string): string[] {
  if (finding.shape === 'sphere') return ['']
  if (family !== 'xray') return ['along the travel', 'across the travel']
  return [finding.shape === 'wire' ? 'lying flat to the beam' : 'lying flat, its face to the beam']
}

const covers = ({ sizes: { expectedMm } }: Zone, sizeMm: number) =>
  expectedMm !== null && expectedMm <= sizeMm

function pieceOf(
  finding: Finding,
  contaminant: number,
  family: string,
  terms: Terms,
): AcceptancePiece | string {
  const { mustFindMm, cautiousMm, bestMm, expectedMm } = finding
  if (bestMm === null) return 'nothing of this build finds it here, so no size can be asked of it'
  if (mustFindMm === null && cautiousMm === null)
    return 'no size was asked and none can be promised; a test on the product comes first'
  if (mustFindMm !== null && expectedMm === null)
    return 'no size is expected of it here; a test on the product comes first'
  const sizeMm = mustFindMm ?? upToPiece(cautiousMm!)
  const covered = finding.zones.filter((zone) => zone.canLieThere && covers(zone, sizeMm))
  const weakest = [...covered].sort((a, b) => b.sizes.expectedMm! - a.sizes.expectedMm!)[0]
  const lies = liesOf(finding, family)
  const runs = runsToDemonstrate(terms, terms.misses)
  const chance =
    mustFindMm === null ? chanceOnCurve(finding.curve, sizeMm) : (finding.chanceAtMustFind ?? null)
  return {
    contaminant,
    finding,
    sizeMm,
    origin: mustFindMm === null ? 'promised' : 'asked',
    place: (weakest ?? finding.zones[0])?.name ?? '',
    notCovered: finding.zones
      .filter((zone) => zone.canLieThere && !covers(zone, sizeMm))
      .map((zone) => ({ place: zone.name, sizeMm: zone.sizes.expectedMm })),
    lies,
    runs,
    comesThrough: chance === null ? null : binomialAtMost(terms.misses, runs, 1 - chance) ** lies.length,
  }
}

/** The figures of an acceptance clause for one side: pieces, places, runs, misses, clean packs. */
export function acceptanceOf(side: Side, terms: Terms = USUAL_TERMS): Acceptance {
  const { option, point, findings } = side
  const asked = findings.flatMap((finding, contaminant) =>
    finding ? [{ contaminant, piece: pieceOf(finding, contaminant, option.family, terms) }] : [],
  )
  const rate = point.falseRejectsPerPack
  const packs = runsToDemonstrate({ chance: 1 - rate, confidence: terms.confidence }, terms.falseRejects)
  return {
    side,
    terms,
    pieces: asked.flatMap(({ piece }) => (typeof piece === 'string' ? [] : [piece])),
    left: asked.flatMap(({ contaminant, piece }) =>
      typeof piece === 'string' ? [{ contaminant, because: piece }] : [],
    ),
    clean: {
      packs,
      falseRejectsPerPack: rate,
      minutes: point.packsPerMin === null ? null : packs / point.packsPerMin,
      comesThroughAtHalf: binomialAtMost(terms.falseRejects, packs, rate / 2),
    },
  }
}
