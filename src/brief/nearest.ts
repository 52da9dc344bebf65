/** Number of single-letter edits between two words. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let j = 1; j <= b.length; j++) {
      const change = row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)
      next[j] = Math.min(change, row[j]! + 1, next[j - 1]! + 1)
    }
    row = next
  }
  return row[b.length]!
}

/** Characters of a word that may be a slip of another; what is longer is no word. */
const LONGEST = 100

/** The allowed word nearest to what was given, or null when none is near. */
export function nearestWord(given: string, allowed: Iterable<string>): string | null {
  if (given.length > LONGEST) return null
  const word = given.toLowerCase()
  let best: string | null = null
  let bestDistance = Number.POSITIVE_INFINITY
  for (const candidate of allowed) {
    const other = candidate.toLowerCase()
    const contained = other.length > 2 && word.length > 2 && (other.includes(word) || word.includes(other))
    const distance = editDistance(word, other) - (contained ? 2 : 0)
    if (distance < bestDistance) {
      bestDistance = distance
      best = candidate
    }
  }
  return bestDistance <= Math.max(2, given.length / 2) ? best : null
}
