import { deflateSync } from 'node:zlib'

/**
 * A picture as PNG bytes (W3C Portable Network Graphics, third edition): 8 bit, grey (one value per pixel)
 * or RGB (three), every row with the Sub filter. `text` goes into tEXt chunks (Latin-1 keyword and value).
 */
export interface PngInput {
  readonly widthPx: number
  readonly heightPx: number
  readonly channels: 1 | 3
  /** Row by row, widthPx × heightPx × channels values 0 to 255. */
  readonly values: Uint8Array | Uint8ClampedArray
  readonly text?: Readonly<Record<string, string>>
}

const SIGNATURE = Uint8Array.of(137, 80, 78, 71, 13, 10, 26, 10)
const SUB = 1
const GREY = 0
const RGB = 2

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1
  return c
})

function crc32(bytes: Uint8Array): number {
  let c = 0xffffffff
  for (let i = 0; i < bytes.length; i++) c = CRC_TABLE[(c ^ bytes[i]!) & 255]! ^ (c >>> 8)
  return (c ^ 0xffffffff) >>> 0
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const bytes = new Uint8Array(data.length + 12)
  const view = new DataView(bytes.buffer)
  view.setUint32(0, data.length)
  for (let i = 0; i < 4; i++) bytes[4 + i] = type.charCodeAt(i)
  bytes.set(data, 8)
  view.setUint32(data.length + 8, crc32(bytes.subarray(4, data.length + 8)))
  return bytes
}

/** Encodes a picture; the same input gives the same bytes. Throws when the sizes do not fit together. */
export function encodePng({ widthPx, heightPx, channels, values, text = {} }: PngInput): Uint8Array {
  const line = widthPx * channels
  if (values.length !== line * heightPx)
    throw new RangeError(
      `${widthPx} × ${heightPx} pixels need ${line * heightPx} values; ${values.length} were given`,
    )
  const header = new Uint8Array(13)
  const view = new DataView(header.buffer)
  view.setUint32(0, widthPx)
  view.setUint32(4, heightPx)
  header[8] = 8
  header[9] = channels === 1 ? GREY : RGB
  const filtered = new Uint8Array((line + 1) * heightPx)
  for (let row = 0; row < heightPx; row++) {
    const to = row * (line + 1)
    const from = row * line
    filtered[to] = SUB
    for (let i = 0; i < line; i++) {
      filtered[to + 1 + i] = values[from + i]! - (i < channels ? 0 : values[from + i - channels]!)
    }
  }
  const texts = Object.entries(text).map(([key, value]) =>
    chunk('tEXt', Buffer.from(`${key}\0${value}`, 'latin1')),
  )
  const parts = [
    SIGNATURE,
    chunk('IHDR', header),
    ...texts,
    chunk('IDAT', deflateSync(filtered, { level: 3 })),
    chunk('IEND', new Uint8Array(0)),
  ]
  return Uint8Array.from(Buffer.concat(parts))
}
