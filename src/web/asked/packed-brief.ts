import { deflateRawSync, inflateRawSync } from 'node:zlib'

/** No brief comes near this when unpacked; more is a mistake or an attack. */
const MOST_BYTES = 1_000_000

/** A brief as it travels in an address: compact JSON, deflate-raw, base64url. */
export function packBrief(brief: unknown): string {
  return deflateRawSync(JSON.stringify(brief), { level: 9 }).toString('base64url')
}

/** What an address carries, not yet checked to be a brief; null where it cannot be read. */
export function unpackBrief(packed: string): { brief: unknown } | null {
  if (!/^[\w-]+$/.test(packed)) return null
  try {
    const json = inflateRawSync(Buffer.from(packed, 'base64url'), { maxOutputLength: MOST_BYTES })
    return { brief: JSON.parse(json.toString('utf8')) }
  } catch {
    return null
  }
}
