import { deflateRawSync, inflateRawSync } from 'node:zlib'
import { MOST_BYTES } from '../../intake/bounds.ts'
import { type ReadJson, readJsonText } from '../../intake/json-text.ts'

export type Unpacked = { readonly brief: unknown } | Extract<ReadJson, { ok: false }>

/** A brief as it travels in an address: compact JSON, deflate-raw, base64url. */
export function packBrief(brief: unknown): string {
  return deflateRawSync(JSON.stringify(brief), { level: 9 }).toString('base64url')
}

const UNREADABLE: Unpacked = { ok: false, kind: 'unreadable', because: 'it may have been cut short' }

const TOO_MUCH: Unpacked = {
  ok: false,
  kind: 'too-much',
  because: `unpacked, it has more than ${MOST_BYTES / 1024} kB`,
}

/** What an address carries, not yet checked to be a brief. */
export function unpackBrief(packed: string): Unpacked {
  if (!/^[\w-]+$/.test(packed)) return UNREADABLE
  try {
    const json = inflateRawSync(Buffer.from(packed, 'base64url'), { maxOutputLength: MOST_BYTES })
    const read = readJsonText(json.toString('utf8'))
    return read.ok ? { brief: read.value } : read
  } catch (error) {
    return (error as { code?: string }).code === 'ERR_BUFFER_TOO_LARGE' ? TOO_MUCH : UNREADABLE
  }
}
