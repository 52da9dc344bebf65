/** Characters of one line of a file; a longer one is cut there, and is no row of anything. */
export const LONGEST_LINE = 65_536

/**
 * Lines of a text that arrives in pieces, without their ends; nothing but the line in hand is held. UTF-8, or UTF-16
 * (little-endian) where its byte order mark says so; a byte order mark is no part of the text.
 */
export async function* textLines(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  let decoder: InstanceType<typeof TextDecoder> | null = null
  let rest = ''
  for await (const piece of bytes) {
    decoder ??= new TextDecoder(piece[0] === 0xff && piece[1] === 0xfe ? 'utf-16le' : 'utf-8')
    const lines = (rest + decoder.decode(piece, { stream: true })).split('\n')
    rest = lines.pop()!.slice(0, LONGEST_LINE + 1)
    for (const line of lines) yield ended(line)
  }
  rest += decoder?.decode() ?? ''
  if (rest !== '') yield ended(rest)
}

const ended = (line: string) => (line.endsWith('\r') ? line.slice(0, -1) : line)
