import type { CurveRoute, OneSizeRoute, PlanPiece } from '../../contract/index.ts'
import { randomStream } from '../../xray/image/food/random.ts'

/** Each pack carries a piece at most so often, never the same size twice. */
const MOST_A_PACK = 2
const FEWEST_PACKS = 20

/** Every piece of the trial in the order to run it: drawn by lot, with its pack, place and lie. */
export function drawLots(
  clause: OneSizeRoute,
  drawn: CurveRoute,
  place: string,
  lies: readonly string[],
  seed: number,
): { pieces: PlanPiece[]; packs: number } {
  const random = randomStream(seed, 'order of the trial')
  const wanted = lies.flatMap((lie) => [
    ...Array.from({ length: clause.pieces }, () => ({ part: 'clause' as const, sizeMm: clause.sizeMm, lie })),
    // The clause's own size serves the curve too.
    ...drawn.sizesMm
      .filter((sizeMm) => sizeMm !== clause.sizeMm)
      .flatMap((sizeMm) =>
        Array.from({ length: drawn.perSize }, () => ({ part: 'curve' as const, sizeMm, lie })),
      ),
  ])
  const commonest = Math.max(clause.pieces, drawn.perSize) * lies.length
  const packs = Math.max(FEWEST_PACKS, commonest, Math.ceil(wanted.length / MOST_A_PACK))
  const shuffled = shuffle(wanted, () => random.uniform())
  const carries = Array.from({ length: packs }, () => [] as number[])
  const pieces = shuffled.map((piece, i): PlanPiece => {
    const pack = freest(carries, piece.sizeMm)
    carries[pack]!.push(piece.sizeMm)
    return { order: i + 1, ...piece, pack: String(pack + 1), position: place }
  })
  return { pieces, packs }
}

function shuffle<Item>(items: readonly Item[], uniform: () => number): Item[] {
  const order = [...items]
  for (let i = order.length - 1; i > 0; i--) {
    const j = Math.floor(uniform() * (i + 1))
    const swap = order[i]!
    order[i] = order[j]!
    order[j] = swap
  }
  return order
}

/** The pack with fewest pieces that has not carried this size, the first of equals. */
function freest(carries: readonly (readonly number[])[], sizeMm: number): number {
  let best = 0
  let least = Infinity
  for (const [pack, sizes] of carries.entries()) {
    const load = sizes.length + (sizes.includes(sizeMm) ? 1000 : 0)
    if (load < least) [best, least] = [pack, load]
  }
  return best
}
