import type { Brief, Point } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'
import { isPromised } from '../assess/meets.ts'
import { type FactSheet, FactWriter } from '../facts/fact-sheet.ts'
import { packKind } from '../facts/kinds/pack-kind.ts'
import { placeId } from '../facts/place-id.ts'
import { belongsInTheFood } from '../order/belongs.ts'
import { isShown, isTriedOnly } from '../order/order.ts'
import { aLargerBuild, aMachine, theMachine } from '../say/machine-words.ts'
import { achievedWords, nameWords, packSize, sizedWords, wordList } from '../say/words.ts'
import type { Ordered, OrderedLine, Ranked, Row } from '../stages.ts'

/** Parts that close a pack. */
const CLOSING = ['lid', 'closure', 'wrap', 'sleeve']

const isSealed = ({ stage, parts }: Point) =>
  stage === 'packed' && parts.some(({ place }) => CLOSING.includes(place))

/** A machine with the point it stands at: "a dual-energy x-ray machine at “after packing”". */
const machineAt = (brief: Brief, point: number, option: Pick<Ranked, 'equipment' | 'label' | 'askFor'>) =>
  `${option.askFor === null ? aMachine(option) : aLargerBuild(option)} at “${brief.points[point]!.name}”`

/** What is achievable of each row, by its machine. */
const achievable = (brief: Brief, rows: readonly Row[]) =>
  wordList(
    rows.flatMap(({ contaminant, finding }) =>
      finding ? [`${nameWords(brief, contaminant)} ${achievedWords(finding)}`] : [],
    ),
  )

/** Rows of a line by how they are answered. */
function sorted(line: OrderedLine, brief: Brief) {
  const { rows } = line
  const belongs = (row: Row) => belongsInTheFood(brief, line, row)
  const isAsked = ({ contaminant }: Row) => brief.contaminants[contaminant]!.mustFindMm !== null
  const by = (...ways: Row['by'][]) => rows.filter((row) => ways.includes(row.by))
  return {
    asked: rows.filter(isAsked),
    promised: by('use').filter((row) => isPromised(row.meets)),
    partly: by('use').filter((row) => row.meets === 'partly'),
    expected: by('use').filter((row) => row.meets === 'maybe'),
    short: by('nearest', 'build').filter((row) => row.meets === 'no' && !row.wouldMeet),
    forBuild: by('build').filter(({ wouldMeet }) => wouldMeet),
    reacts: by('reacts'),
    early: by('none', 'nearest').filter((row) => row.metTooEarlyAt !== null),
    lost: by('none').filter((row) => row.metTooEarlyAt === null && !belongs(row)),
    belongs: rows.filter(belongs),
    found: by('use', 'nearest', 'build'),
  }
}

/** Facts of one line: what is recommended, and how much of what was asked that meets. */
export function factsOfLine(ordered: Ordered, line: number): FactSheet {
  const { brief, lines } = ordered
  const own = lines[line]!
  const { uses, seenTwice } = own.combined
  const rows = sorted(own, brief)
  const write = new FactWriter(placeId({ line }), brief)
  const sized = (those: readonly Row[]) => wordList(those.map((row) => sizedWords(brief, row.contaminant)))
  write.computed('line.count', lines.length)
  write.computed('line.useCount', uses.length)
  if (uses.length > 0)
    write.computed('line.uses', wordList(uses.map(({ point, option }) => machineAt(brief, point, option))))
  const nearest = rows.short[0] ?? rows.found[0]
  if (nearest?.option && nearest.point !== null)
    write.computed('line.nearest', machineAt(brief, nearest.point, nearest.option))
  write.computed('line.asked', rows.asked.length)
  write.computed('line.allAsked', rows.asked.length === 2 ? 'both sizes' : `all ${rows.asked.length} sizes`)
  write.computed('line.promised', rows.promised.length)
  write.computed('line.partly', rows.partly.length)
  write.computed('line.partlyNames', sized(rows.partly))
  write.computed('line.partlyPlaces', wordList([...new Set(rows.partly.flatMap(({ places }) => places))]))
  write.computed('line.expected', rows.expected.length)
  write.computed('line.expectedNames', sized(rows.expected))
  write.computed('line.short', rows.short.length)
  write.computed(
    'line.shortNames',
    wordList(
      rows.short.map((row) => {
        const inUse = uses.some(({ option }) => option === row.option)
        const by = inUse ? '' : ` with ${(row.by === 'build' ? aLargerBuild : aMachine)(row.option!)}`
        return `${sizedWords(brief, row.contaminant)} (achievable: ${achievedWords(row.finding!)}${by})`
      }),
    ),
  )
  writeOwnPieces(write, brief, rows.short)
  write.computed('line.achievable', achievable(brief, rows.short.length > 0 ? rows.short : rows.found))
  write.computed('line.lost', rows.lost.length)
  write.computed('line.lostNames', wordList(rows.lost.map((row) => nameWords(brief, row.contaminant))))
  write.computed('line.belongs', rows.belongs.length)
  write.computed('line.belongsNames', wordList(rows.belongs.map((row) => nameWords(brief, row.contaminant))))
  write.computed('line.lostAsked', rows.lost.filter((row) => rows.asked.includes(row)).length)
  writeBuild(write, brief, rows.forBuild, sized)
  writeTried(write, ordered, own)
  write.computed('line.found', rows.found.length)
  const [reacting] = rows.reacts
  write.computed('line.reacts', rows.reacts.length)
  if (reacting?.option && reacting.point !== null) {
    write.computed('line.reactsNames', sized(rows.reacts))
    write.computed('line.reactsBy', machineAt(brief, reacting.point, reacting.option))
  }
  write.computed('line.early', rows.early.length)
  write.computed('line.earlyNames', sized(rows.early))
  write.computed('line.sealedPoints', own.points.filter((at) => isSealed(brief.points[at]!)).length)
  write.computed('line.lookedTwice', seenTwice.length)
  write.computed('line.lookedTwiceNames', wordList(seenTwice.map((c) => nameWords(brief, c))))
  return write.sheet()
}

/** Of rows missed by size those of which a size says little: glass in its own jar, and fish bone. */
function writeOwnPieces(write: FactWriter, brief: Brief, short: readonly Row[]): void {
  const kindOf = ({ contaminant }: Row) => materials.get(brief.contaminants[contaminant]!.material)?.kind
  const packOf = ({ point }: Row) => (point === null ? 'none' : packKind(brief.points[point]!, materials))
  const ofJars = short.filter((row) => kindOf(row) === 'glass' && packOf(row) === 'jar')
  write.computed('line.shortGlassOfJars', ofJars.length)
  const bones = short.flatMap((row) => {
    const { material, mustFindMm } = brief.contaminants[row.contaminant]!
    return material === 'bone_fish' && mustFindMm !== null && packOf(row) !== 'can' ? [mustFindMm] : []
  })
  write.computed('line.shortFishBones', bones.length)
  if (bones.length > 0) write.computed('line.thinnestFishBoneMm', Math.min(...bones))
}

/** Machines that a trial on the product sent back behind one that was not run: what they did not show. */
function writeTried(
  write: FactWriter,
  { brief, points }: Ordered,
  { points: at, combined }: OrderedLine,
): void {
  const relied = new Set(
    combined.uses
      .flatMap(({ option, contaminants }) =>
        option.findings.filter((f) => contaminants.includes(f.contaminant) && !f.measured && !isShown(f)),
      )
      .map(({ contaminant }) => contaminant),
  )
  const inUse = combined.uses.map(({ option }) => option.equipment)
  const tried = at.flatMap((point) =>
    points[point]!.options.flatMap((option) => {
      const { equipment, findings } = option
      const its = findings.filter((f) => isTriedOnly(f) && relied.has(f.contaminant))
      return its.length === 0 || inUse.includes(equipment)
        ? []
        : [`${theMachine(option)} did not show ${wordList(its.map((f) => sizedWords(brief, f.contaminant)))}`]
    }),
  )
  write.computed('line.tried', tried.length)
  write.computed('line.triedNames', wordList([...new Set(tried)]))
}

function writeBuild(
  write: FactWriter,
  brief: Brief,
  rows: readonly Row[],
  sized: (those: readonly Row[]) => string,
): void {
  write.computed('line.forBuild', rows.length)
  const [first] = rows
  if (!first?.option || first.point === null) return
  write.computed('line.buildNames', sized(rows))
  write.computed('line.buildLabel', aMachine(first.option))
  write.computed('line.buildSize', packSize(brief.points[first.point]!))
}
