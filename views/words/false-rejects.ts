const number = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 })

/**
 * A false-reject rate as people feel it: "1 in 1,000: about 77 packs a day".
 * @param packsPerMin null where there are no packs; the second half is then left out
 */
export function falseRejectWords(perPack: number, packsPerMin: number | null, hoursPerDay: number): string {
  const share = `1 in ${number.format(1 / perPack)}`
  if (packsPerMin === null) return share
  const perDay = packsPerMin * 60 * hoursPerDay * perPack
  return `${share}: about ${perDay < 10 ? Number(perDay.toPrecision(2)) : number.format(perDay)} packs a day`
}
