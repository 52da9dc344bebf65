import { type FactDefinition, type FactRow, factsOf } from './fact-definition.ts'

/** How a size asked is missed: at no size, above what is expected, with nothing to promise, or above what is promised. */
export const MISS_KINDS = ['none', 'above', 'unpromised', 'promised-above'] as const
export type MissKind = (typeof MISS_KINDS)[number]

/**
 * How a quoted size stands to what is computed: nothing stands beside it, the machine finds no size, it lies below the
 * possible, it was obtained elsewhere, it leaves room, it is about the best possible, or it lies between that and what
 * can be promised.
 */
export const QUOTE_KINDS = [
  'nothing-beside',
  'finds-none',
  'below',
  'elsewhere',
  'loose',
  'near',
  'between',
] as const
export type QuoteKind = (typeof QUOTE_KINDS)[number]

const MISS: readonly FactRow[] = [
  ['miss.kind', 'how the size asked is missed', '', 'string', MISS_KINDS],
  ['miss.pieces', 'contaminants missed', '', 'string'],
  ['miss.asked', 'size asked', '', 'string'],
  ['miss.expected', 'size expected', '', 'string'],
  ['miss.promise', 'size that can be promised', '', 'string'],
  ['miss.gap', 'how far that lies above the size asked', '', 'string'],
  ['miss.note', 'what limits it', '', 'string'],
]

const QUOTE: readonly FactRow[] = [
  ['quote.kind', 'how the quoted size stands to what is computed', '', 'string', QUOTE_KINDS],
  ['quote.machine', 'machine it was quoted for', '', 'string'],
  ['quote.material', 'material of the quoted piece', '', 'string'],
  ['quote.shape', 'shape of the quoted piece', '', 'string'],
  ['quote.piece', 'the quoted piece, with how it is turned', '', 'string'],
  ['quote.sizeMm', 'quoted size', 'mm', 'number'],
  ['quote.compared', 'a computed size stands beside it', '', 'boolean'],
  ['quote.inProduct', 'obtained in the product', '', 'boolean'],
  ['quote.obtained', 'how it was obtained', '', 'string'],
  ['quote.positionStated', 'the place of the piece is stated', '', 'boolean'],
  ['quote.runsStated', 'the number of runs is stated', '', 'boolean'],
  ['quote.runs', 'runs of the quote', '', 'number'],
  ['quote.runsNeeded', 'runs, none missed, that show 9 in 10 with 95 % confidence', '', 'number'],
  ['quote.falseRejectsStated', 'good packs rejected are stated', '', 'boolean'],
  ['quote.best', 'best possible size in this product', '', 'string'],
  ['quote.lowest', 'best possible size with less of the product in the beam', '', 'string'],
  ['quote.hasRange', 'the best possible size has a lower end', '', 'boolean'],
  ['quote.hasPromise', 'a size can be promised', '', 'boolean'],
  ['quote.promise', 'size that can be promised', '', 'string'],
  ['quote.sizeAsked', 'a size to find is given', '', 'boolean'],
  ['quote.mustFindMm', 'size to find', 'mm', 'number'],
]

const FOUND: readonly FactRow[] = [
  ['found.piece', 'the piece, with its size', '', 'string'],
  ['found.material', 'its material', '', 'string'],
  ['found.kindKnown', 'which of its kind the material is, is known', '', 'boolean'],
  ['found.machinesNamed', 'the brief names the machines of the line', '', 'boolean'],
  ['found.inPacks', 'the last point of the line looks at packs', '', 'boolean'],
  ['found.anyChance', 'a chance is computed for some machine', '', 'boolean'],
  ['found.best', 'machine with the highest chance, with its point', '', 'string'],
  ['found.bestOften', 'how often it finds such a piece', '', 'string'],
  ['found.several', 'several machines of the line look for it', '', 'boolean'],
  ['found.atLeast', 'how often one of them finds it if all miss the same pieces', '', 'string'],
  ['found.atMost', 'how often one of them finds it if they miss independently', '', 'string'],
]

const FINDER: readonly FactRow[] = [
  ['finder.sized', 'sizes are computed for the machine', '', 'boolean'],
  ['finder.size', 'size of the piece', '', 'string'],
  ['finder.expected', 'size expected', '', 'string'],
  ['finder.hasPromise', 'a size can be promised', '', 'boolean'],
  ['finder.promise', 'size that can be promised', '', 'string'],
  ['finder.belowBest', 'the piece is smaller than the best possible size', '', 'boolean'],
  ['finder.best', 'best possible size', '', 'string'],
  ['finder.hasWidest', 'an assumption widens the range', '', 'boolean'],
  ['finder.widest', 'assumption that widens the range most', '', 'string'],
]

/** Facts of a size that is missed or quoted, and of a piece that was found. */
export const SIZE_FACTS: readonly FactDefinition[] = [
  ...factsOf('miss', MISS),
  ...factsOf('quote', QUOTE),
  ...factsOf('found', FOUND),
  ...factsOf('finder', FINDER),
]
