import { inflateSync } from 'node:zlib'

/** A PNG taken apart by the words of its standard, for tests: 8 bit grey or RGB, filters None and Sub. */
export function decodePng(png: Uint8Array) {
  const bytes = Buffer.from(png)
  if (!bytes.subarray(0, 8).equals(Buffer.from('89504e470d0a1a0a', 'hex')))
    throw new Error('no PNG signature')
  const chunks: string[] = []
  const texts: Record<string, string> = {}
  const data: Buffer[] = []
  let header = Buffer.alloc(0)
  for (let at = 8; at < bytes.length; ) {
    const length = bytes.readUInt32BE(at)
    const type = bytes.toString('latin1', at + 4, at + 8)
    const body = bytes.subarray(at + 8, at + 8 + length)
    if (bytes.readUInt32BE(at + 8 + length) !== remainder(bytes.subarray(at + 4, at + 8 + length)))
      throw new Error(`checksum of ${type} is wrong`)
    chunks.push(type)
    if (type === 'IHDR') header = body
    if (type === 'IDAT') data.push(body)
    if (type === 'tEXt') {
      const [key, value] = body.toString('latin1').split('\0')
      texts[key!] = value!
    }
    at += length + 12
  }
  const widthPx = header.readUInt32BE(0)
  const heightPx = header.readUInt32BE(4)
  const channels = header[9] === 2 ? 3 : 1
  const rows = inflateSync(Buffer.concat(data))
  const line = widthPx * channels
  const values = new Uint8Array(line * heightPx)
  for (let row = 0; row < heightPx; row++) {
    const filter = rows[row * (line + 1)]!
    if (filter > 1) throw new Error(`filter ${filter} is not read here`)
    for (let i = 0; i < line; i++) {
      const before = filter === 1 && i >= channels ? values[row * line + i - channels]! : 0
      values[row * line + i] = rows[row * (line + 1) + 1 + i]! + before
    }
  }
  return { widthPx, heightPx, channels, values, chunks, texts, data: Buffer.concat(data) }
}

/** CRC-32 bit by bit (polynomial 0xEDB88320), without a table. */
function remainder(bytes: Uint8Array): number {
  let c = 0xffffffff
  for (const byte of bytes) {
    c ^= byte
    for (let k = 0; k < 8; k++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1
  }
  return ~c >>> 0
}
