import { MEETS, VERDICTS } from '../../../contract/index.ts'
import { PACK_KINDS } from '../kinds/pack-kind.ts'
import { type FactDefinition, type FactRow, factsOf } from './fact-definition.ts'

/** How a row of the answer is answered. */
export const ANSWERED_BY = ['use', 'nearest', 'build', 'reacts', 'none'] as const

const LINE: readonly FactRow[] = [
  ['line.count', 'lines beside each other', '', 'number'],
  ['line.useCount', 'machines recommended', '', 'number'],
  ['line.uses', 'machines recommended, each with its point', '', 'string'],
  ['line.nearest', 'machine that comes nearest, with its point', '', 'string'],
  ['line.asked', 'sizes asked', '', 'number'],
  ['line.allAsked', 'all of them in words', '', 'string'],
  ['line.promised', 'sizes asked that are safe to promise', '', 'number'],
  ['line.partly', 'of them, but for places of the pack', '', 'number'],
  ['line.partlyNames', 'contaminants met but for places', '', 'string'],
  ['line.partlyPlaces', 'those places', '', 'string'],
  ['line.expected', 'sizes asked that are expected, not promised', '', 'number'],
  ['line.expectedNames', 'contaminants expected, not promised', '', 'string'],
  ['line.short', 'sizes asked that are missed by size', '', 'number'],
  ['line.shortNames', 'contaminants missed by size, with what is achievable', '', 'string'],
  ['line.shortGlassOfJars', 'of them, glass of the jar it is looked for in', '', 'number'],
  ['line.shortFishBones', 'of them, fish bones in other packs than cans', '', 'number'],
  ['line.thinnestFishBoneMm', 'thinnest of those bones', 'mm', 'number'],
  ['line.achievable', 'sizes achievable with what comes nearest', '', 'string'],
  ['line.lost', 'contaminants that nothing finds', '', 'number'],
  ['line.lostNames', 'contaminants that nothing finds', '', 'string'],
  ['line.belongs', 'bones of a food that keeps its bones', '', 'number'],
  ['line.belongsNames', 'those bones', '', 'string'],
  ['line.lostAsked', 'sizes asked that nothing finds', '', 'number'],
  ['line.forBuild', 'sizes asked that a larger build would meet', '', 'number'],
  ['line.buildNames', 'contaminants that a larger build would meet', '', 'string'],
  ['line.buildLabel', 'machine that would meet them', '', 'string'],
  ['line.buildSize', 'size of pack that it would have to take', '', 'string'],
  ['line.reacts', 'contaminants that a machine without computed sizes reacts to', '', 'number'],
  ['line.reactsNames', 'those contaminants', '', 'string'],
  ['line.reactsBy', 'that machine, with its point', '', 'string'],
  ['line.tried', 'machines that a trial on the product sent back', '', 'number'],
  ['line.triedNames', 'those machines, with what they did not show', '', 'string'],
  ['line.found', 'contaminants that something finds at some size', '', 'number'],
  ['line.early', 'sizes asked that are met where the piece can still enter behind', '', 'number'],
  ['line.earlyNames', 'those contaminants', '', 'string'],
  ['line.sealedPoints', 'points of the line that look at closed packs', '', 'number'],
  ['line.lookedTwice', 'contaminants looked for more than once', '', 'number'],
  ['line.lookedTwiceNames', 'those contaminants', '', 'string'],
]

const ROW: readonly FactRow[] = [
  ['row.by', 'how it is answered', '', 'string', ANSWERED_BY],
  ['row.meets', 'how the size asked is met', '', 'string', MEETS],
  ['row.asked', 'a size is asked', '', 'boolean'],
  ['row.piece', 'piece', '', 'string'],
  ['row.machine', 'machine', '', 'string'],
  ['row.point', 'at the point', '', 'string'],
  ['row.packKind', 'kind of pack there', '', 'string', PACK_KINDS],
  ['row.achievable', 'size achievable', '', 'string'],
  ['row.places', 'places where it is not found', '', 'string'],
  ['row.metTooEarly', 'met at a point behind which it can still enter', '', 'boolean'],
  ['row.earlyPoint', 'that point', '', 'string'],
  ['row.wouldMeet', 'a larger build would meet it', '', 'boolean'],
  ['row.testRuns', 'fresh packs, none missed, that show 9 in 10 with 95 % confidence', '', 'number'],
  ['row.buildSize', 'size of pack a build would have to take', '', 'string'],
  ['row.units', 'what is tested: packs, or portions of a flow', '', 'string'],
  ['row.timesAsked', 'size achievable over the size asked', '', 'number'],
  [
    'row.timesOwnPiece',
    'size expected over that of the food’s own pieces; 0 where it has none',
    '',
    'number',
  ],
  ['row.belongs', 'bone of a food that keeps its bones', '', 'boolean'],
  ['row.removedBy', 'what takes most of it out on this line', '', 'string'],
  ['row.removedLeastPct', 'share it takes out, unfavourable end', '%', 'number'],
  ['row.removedMostPct', 'share it takes out, favourable end', '%', 'number'],
]

const USE: readonly FactRow[] = [
  ['use.family', 'family of the machine', '', 'string'],
  ['use.label', 'machine', '', 'string'],
  ['use.promised', 'sizes it is there to promise', '', 'number'],
  ['use.promisedNames', 'contaminants it is there to promise, with their sizes', '', 'string'],
  ['use.partly', 'of them, but for places of the pack', '', 'number'],
  ['use.partlyPlaces', 'those places', '', 'string'],
  ['use.shownInProduct', 'a size quoted for it was obtained in the product', '', 'boolean'],
  ['use.units', 'what is tested: packs, or portions of a flow', '', 'string'],
  ['use.testRuns', 'fresh packs, none missed, that show 9 in 10 with 95 % confidence', '', 'number'],
]

const PLACE: readonly FactRow[] = [
  ['place.verdict', 'verdict', '', 'string', VERDICTS],
  ['place.ranked', 'takes part in the order', '', 'boolean'],
  ['place.ruledOut', 'ruled out by a rule', '', 'boolean'],
  ['place.ruledOutBecause', 'what rules it out', '', 'string'],
  ['place.behindBest', 'meets every size too, behind the best fit', '', 'boolean'],
  ['place.burden', 'cost and effort, 1 to 5', '', 'number'],
  ['place.bestBurden', 'cost and effort of the best fit', '', 'number'],
  ['place.smallerByMm', 'most it finds smaller than the best fit', 'mm', 'number'],
  ['place.findsSmaller', 'it finds something smaller than the best fit', '', 'boolean'],
  ['place.onlyTheFilm', 'metallised film alone stands in the way', '', 'boolean'],
  ['place.partly', 'sizes met but for places', '', 'number'],
  ['place.partlyNames', 'contaminants met but for places', '', 'string'],
  ['place.partlyPlaces', 'those places', '', 'string'],
  ['place.expected', 'sizes expected, not promised', '', 'number'],
  ['place.expectedNames', 'contaminants expected, not promised', '', 'string'],
  ['place.missed', 'sizes asked that it misses', '', 'number'],
  ['place.missedNames', 'contaminants it misses, with what is achievable', '', 'string'],
  ['place.untested', 'sizes asked that no computation settles', '', 'number'],
  ['place.untestedNames', 'contaminants that no computation settles', '', 'string'],
  ['place.tooSmall', 'no build compared here takes the pack', '', 'boolean'],
  ['place.asked', 'sizes asked', '', 'number'],
  ['place.achievable', 'sizes achievable', '', 'string'],
  ['place.achieves', 'contaminants it finds at some size', '', 'number'],
  ['place.buildSize', 'size of pack it would have to take', '', 'string'],
]

const TOGETHER: readonly FactRow[] = [
  ['together.first', 'one of the two machines', '', 'string'],
  ['together.second', 'the other machine', '', 'string'],
  ['together.samePrinciple', 'both look at the same property of a piece', '', 'boolean'],
  ['together.samePoint', 'both stand at the same point', '', 'boolean'],
]

const CLOSE: readonly FactRow[] = [
  ['close.first', 'machine that comes first at the sizes that can be promised', '', 'string'],
  ['close.second', 'machine that comes first nearer to the sizes that are expected', '', 'string'],
  ['close.pieces', 'pieces the order hangs on, with their sizes', '', 'string'],
  ['close.turned', 'the second is expected to meet a size that it cannot promise', '', 'boolean'],
  ['close.testRuns', 'fresh packs, none missed, that show 9 in 10 with 95 % confidence', '', 'number'],
]

/** Where two options part: the step of the order, a verdict that follows from sizes being the sizes. */
export const PARTED_BY = [
  'excluded',
  'verdict',
  'unmet',
  'trial',
  'ratio',
  'burden',
  'partly',
  'nothing',
  'undecided',
] as const

const APART: readonly FactRow[] = [
  ['apart.by', 'step of the order at which the two part', '', 'string', PARTED_BY],
  ['apart.ahead', 'machine that comes before the other', '', 'string'],
  ['apart.behind', 'machine that comes behind the other', '', 'string'],
  ['apart.hasIdeal', 'one of the two is an ideal without a place in the order', '', 'boolean'],
  ['apart.ideal', 'that one', '', 'string'],
  ['apart.aheadBecause', 'ground of the verdict of the one ahead', '', 'string'],
  ['apart.behindBecause', 'ground of the verdict of the one behind', '', 'string'],
  ['apart.severity', 'severity of the sizes at which they part', '', 'number'],
  ['apart.aheadLeaves', 'what the one ahead leaves unmet of that severity', '', 'string'],
  ['apart.behindLeaves', 'what the one behind leaves unmet of that severity', '', 'string'],
  ['apart.aheadShown', 'a trial on the product showed sizes with the one ahead', '', 'boolean'],
  ['apart.aheadShownNames', 'those sizes', '', 'string'],
  ['apart.behindTried', 'the one behind was tried on the product in vain', '', 'boolean'],
  ['apart.behindTriedNames', 'sizes it did not show', '', 'string'],
  ['apart.aheadWorst', 'worst size the one ahead can promise', '', 'string'],
  ['apart.behindWorst', 'worst size the one behind can promise', '', 'string'],
  ['apart.aheadBurden', 'burden of the one ahead', '', 'number'],
  ['apart.behindBurden', 'burden of the one behind', '', 'number'],
]

/** Facts that are known once the options are in order. */
export const ANSWER_FACTS: readonly FactDefinition[] = [
  ...factsOf('line', LINE),
  ...factsOf('row', ROW),
  ...factsOf('use', USE),
  ...factsOf('place', PLACE),
  ...factsOf('together', TOGETHER),
  ...factsOf('close', CLOSE),
  ...factsOf('apart', APART),
]
