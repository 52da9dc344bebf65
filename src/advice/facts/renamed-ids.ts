/** An id of a calculation as it was written up to version 0.1 and as it is written now. */
interface Renamed {
  readonly was: RegExp
  readonly now: string
}

/** Every renaming there has been; a saved link or a figure copied into a report still finds its calculation. */
export const RENAMED_CALCULATIONS: readonly Renamed[] = [
  // "p0.coil-single.contaminant.3.expected" → "p0.coil-single.c3.expected"
  { was: /^(p\d{1,2}\..{1,80})\.contaminant\.(\d{1,2})\./, now: '$1.c$2.' },
  // "p0.coil-single.product.offCentre" → "p0.coil-single.product.off-centre"
  { was: /^(p\d{1,2}\..{1,80})\.product\.offCentre$/, now: '$1.product.off-centre' },
  // "fit.widthNeededMm (point 0, xray-dual)" → "p0.xray-dual.fit.widthNeededMm"
  { was: /^([\w.]{1,60}) \(point (\d{1,2}), ([^()]{1,80})\)$/, now: 'p$2.$3.$1' },
  // "flow.gapMm (point 0)" → "p0.flow.gapMm"
  { was: /^([\w.]{1,60}) \(point (\d{1,2})\)$/, now: 'p$2.$1' },
]

/** The id a calculation has now; an id that was never another one is given back as it is. */
export function currentCalculation(id: string): string {
  const renamed = RENAMED_CALCULATIONS.find(({ was }) => was.test(id))
  return renamed ? id.replace(renamed.was, renamed.now) : id
}
