import type { CoilAssessment } from '../coil/assessment.ts'
import type {
  Advice,
  ANSWERED_BY,
  Ask,
  Brief,
  Calculation,
  ConditionTrace,
  Contrast,
  Fact,
  FactValues,
  Finding,
  HEADLINE_PARTS,
  LEFT,
  Machine,
  Meets,
  Option,
  Quote,
  Reason,
  RuleTrace,
  Slot,
  Truth,
  Verdict,
  XrayMachine,
} from '../contract/index.ts'
import type { RemovalAssessment } from '../separation/assessment.ts'
import type { XrayAssessment } from '../xray/assessment.ts'
import type { LinedUp } from './assess/line-up.ts'
import type { Rulebook } from './book/rule-schema.ts'
import type { RuleScope, SearchedGround } from './book/rule-scope.ts'
import type { MissKind, QuoteKind } from './facts/list/size-facts.ts'

/**
 * What a brief has become after each stage of `advise`: every stage is handed the whole of the one before and
 * adds its own. Types only, so that any storey may name what it is handed without knowing who made it.
 */

/** A machine at a point with what the physics says of it. */
export type AssessedOption =
  | {
      readonly family: 'xray'
      readonly pointIndex: number
      readonly machine: XrayMachine
      readonly assessment: XrayAssessment
    }
  | {
      readonly family: 'coil' | 'static-field'
      readonly pointIndex: number
      readonly machine: Machine
      readonly assessment: CoilAssessment
    }

/** A detector of the line-up, assessed. */
export interface Detector {
  readonly linedUp: LinedUp
  readonly assessed: AssessedOption
  readonly findings: readonly Finding[]
}

/** After `assess/`: sizes and shares of every machine, by inspection point. */
export interface Assessed {
  readonly brief: Brief
  readonly detectors: readonly (readonly Detector[])[]
  readonly removals: readonly (readonly RemovalAssessment[])[]
}

/** What became of one rule: outcome, the explainer's tree, and the words for a reader. */
export interface RuleOutcome {
  readonly rule: string
  readonly title: string
  readonly scope: RuleScope
  readonly type: Reason['type']
  /** Asks for something that caps the verdict until it is answered. */
  readonly open: boolean
  readonly answeredBy: (typeof ANSWERED_BY)[number] | null
  /** Of a headline rule: which part of the sentence; of one on what is left to do: its kind. */
  readonly part: (typeof HEADLINE_PARTS)[number] | null
  readonly left: (typeof LEFT)[number] | null
  readonly outcome: RuleTrace['outcome']
  readonly truth: Truth
  /** Filled with this run's values when the rule fired, else empty. */
  readonly text: string
  /** Of a rule of the register or the check plan: where it stands, what it is about, what belongs to it. */
  readonly slot: Slot | null
  readonly about: string
  readonly items: readonly { readonly about: string; readonly text: string }[]
  readonly because: string
  readonly exception: string
  readonly evidence: Reason['evidence']
  /** Sources of the rule, then of the thresholds it compares with, each once. */
  readonly sources: readonly string[]
  readonly book: string
  readonly conditions: ConditionTrace
  /** Paths into `conditions` of the leaves that settle it; of an unknown rule, of the values that are missing. */
  readonly decisive: readonly string[]
}

/** An outcome with its place: a rule on "brief" has neither point nor equipment. */
export interface PlacedOutcome extends RuleOutcome {
  readonly pointIndex: number | null
  readonly equipment: string | null
  readonly contaminant: number | null
}

export interface Judgement {
  /** Every fact once, with its scope; for the trace. */
  readonly facts: readonly Fact[]
  /** Small calculations made while the facts were collected; for the trace, beside those of the physics. */
  readonly calculations: readonly Calculation[]
  /** In the order brief, points, options; within a place by contaminant and rule id. */
  readonly outcomes: readonly PlacedOutcome[]
}

/** After `decide/`: what every rule says wherever it was asked. */
export interface Judged extends Assessed, Judgement {
  readonly book: Rulebook
}

/** An option as the order sees it. */
export interface Standing {
  readonly equipment: string
  readonly label: string
  readonly family: string
  /** Ruled out by a rule that speaks of the machine itself. */
  readonly excluded: boolean
  readonly rank: number | null
  readonly burden: number
  readonly verdict: Verdict
  /** What a machine has to take where no build compared here does, mm; null where the build takes the pack. */
  readonly askFor: Option['askFor']
  readonly findings: readonly Finding[]
}

/** A size missed by an option; `others` are missed at every size for the same reason. */
export interface Missed {
  readonly kind: MissKind
  readonly finding: Finding
  readonly others: readonly number[]
  readonly gapMm: number | null
}

/** A quote with the point and finding it is held against; null where the advice has none of them. */
export interface Quoted {
  readonly quote: Quote
  readonly index: number
  readonly point: number | null
  readonly finding: Finding | null
  readonly kind: QuoteKind
  readonly judgement: Advice['quotes'][number]['judgement']
}

/** An option in its place, with all it was judged by. */
export interface Ranked extends Standing {
  readonly detector: Detector
  /** Fired rules that speak of this machine. */
  readonly outcomes: readonly PlacedOutcome[]
  /** The rule that rules it out, whatever the piece; null where none does. */
  readonly excludedBy: PlacedOutcome | null
  /** Metallised film alone stands between it and the sizes asked. */
  readonly onlyTheFilm: boolean
  /** The best fit of its point where another one is, with the most that this one finds smaller, mm. */
  readonly behind: { readonly burden: number; readonly smallerByMm: number | null } | null
}

/** The step of the order at which two options part; a negative sign puts the first one before. */
export interface Parting {
  readonly step: 'excluded' | 'verdict' | 'unmet' | 'trial' | 'ratio' | 'burden' | 'partly' | 'nothing'
  /** Severity of the sizes counted, at the step `unmet`, and where they say the same as the verdicts. */
  readonly severity: number | null
  readonly sign: number
}

/** A parting with what each of the two has at its step. */
export interface PartingOfTwo extends Parting {
  /** Contaminants of that severity that each leaves unmet. */
  readonly unmet: readonly [readonly number[], readonly number[]]
  /** Contaminants that a trial on the product showed with each at the size asked, and that it tried in vain. */
  readonly shown: readonly [readonly number[], readonly number[]]
  readonly tried: readonly [readonly number[], readonly number[]]
  /** The worst size each can promise over the size to find, infinite for none, and whose size it is. */
  readonly worst: readonly [Worst, Worst]
}

export interface Worst {
  readonly ratio: number
  readonly contaminant: number | null
}

/** What two options of one point differ in; no parting where one has no place in the order, or both are ruled out. */
export interface Apart extends Omit<Contrast, 'because' | 'grounds' | 'rules'> {
  readonly parting: PartingOfTwo | null
  readonly rules: readonly Omit<Contrast['rules'][number], 'text'>[]
}

/** Another option comes first somewhere between expected and cautious sizes. */
export interface Close {
  readonly first: Standing
  readonly second: Standing
  /** What the second option's place hangs on. */
  readonly contaminants: readonly number[]
  /** True where it meets them nearer to the expected values; false where only sizes compare. */
  readonly turned: boolean
}

export interface OrderedPoint {
  readonly options: readonly Ranked[]
  readonly apart: readonly Apart[]
  readonly close: Close | null
}

/** A line: its name and the inspection points on it, in the order of the flow. */
export interface Line {
  readonly name: string
  readonly points: readonly number[]
}

/** A machine at a point, there for some contaminants. */
export interface Use<Placed extends Standing = Ranked> {
  readonly point: number
  readonly option: Placed
  readonly contaminants: readonly number[]
}

/** The smallest set of one line. */
export interface Combined<Placed extends Standing = Ranked> {
  readonly kind: 'nothing-asked' | 'nothing-met' | 'met'
  readonly uses: readonly Use<Placed>[]
  /** Contaminants that more than one of the uses can find at some size. */
  readonly seenTwice: readonly number[]
}

/** A contaminant on a line: the machine that answers for it, and its finding there. */
export interface Row<Placed extends Standing = Ranked> {
  readonly contaminant: number
  /**
   * use: by a machine of the recommendation; nearest: by what comes nearest; build: by a larger build than those
   * compared; reacts: by a machine without computed sizes.
   */
  readonly by: 'use' | 'nearest' | 'build' | 'reacts' | 'none'
  /** A larger build would meet the size asked. */
  readonly wouldMeet: boolean
  readonly point: number | null
  readonly option: Placed | null
  readonly finding: Finding | null
  /** How the size asked is met: nothing by a build that is too small, and by no machine at all. */
  readonly meets: Meets
  /** Places of the pack where a piece can lie and is missed, though it is found elsewhere. */
  readonly places: readonly string[]
  /** A point where a machine meets it, but behind which it can still enter; null where there is none. */
  readonly metTooEarlyAt: number | null
}

export interface OrderedLine extends Line {
  readonly combined: Combined
  readonly rows: readonly Row[]
}

/** After `order/`: verdicts, ranks, and what to use on each line, as values. */
export interface Ordered extends Judged {
  readonly points: readonly OrderedPoint[]
  readonly lines: readonly OrderedLine[]
}

/** Where a rule of the second run was asked: of a line, of a row, of a machine in use, or of an option. */
export interface LineOutcome extends PlacedOutcome {
  readonly line: number | null
  /** Of two machines the place of the other one: "p0.coil-single"; of what was searched for the path of the value. */
  readonly beside?: string
}

/** After `answer/`: what the rules say of the order. */
export interface Answered extends Ordered {
  /** Sizes missed by the options that are not the best fit of their point. */
  readonly misses: readonly (Missed & { readonly pointIndex: number; readonly equipment: string })[]
  readonly quoted: readonly Quoted[]
  readonly answers: readonly LineOutcome[]
}

/** Where the rules are asked of what was searched for; `beside` is the path of the value in the brief. */
export interface FoundAt {
  readonly ground: SearchedGround
  readonly pointIndex: number | null
  readonly equipment: string | null
  readonly contaminant: number | null
  readonly beside: string
}

/** Asks the book of what was searched for: the rules that fired. */
export type AskFound = (at: FoundAt, values: FactValues) => Promise<readonly LineOutcome[]>

/** A way to ask the book once the options are in order, and what came of it, for the trace. */
export interface Asker {
  readonly book: Rulebook
  /** About the register and the check plan. */
  readonly ask: Ask
  readonly askFound: AskFound
  readonly outcomes: readonly LineOutcome[]
  /** By place and id, each once. */
  readonly facts: ReadonlyMap<string, Fact>
}
