/** Characters of a file name made of a person's words; with four bytes each still within what disks take. */
const LONGEST = 60

/** Names that some systems keep for devices, whatever follows the dot. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i

/**
 * A single file name, without ending, made of any words: letters and digits of every script, with "-" for the rest.
 * Never a path, never hidden, never empty. The one way from words to names.
 */
export function fileName(words: string, otherwise: string): string {
  const plain = words.normalize('NFC').replace(/[^\p{L}\p{N}\p{M}]+/gu, '-')
  const name = [...plain].slice(0, LONGEST).join('').replace(/^-|-$/g, '')
  if (name === '') return otherwise
  return DEVICE.test(name) ? `${otherwise}-${name}` : name
}

/** One name each, none twice, not even on disks that take "A" and "a" for the same. */
export function fileNames(words: readonly string[], otherwise: string): string[] {
  const taken = new Set<string>()
  return words.map((one) => {
    const base = fileName(one, otherwise)
    let name = base
    for (let number = 2; taken.has(name.toLowerCase()); number++) name = `${base}-${number}`
    taken.add(name.toLowerCase())
    return name
  })
}
