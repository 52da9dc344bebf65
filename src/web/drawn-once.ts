import { Kept } from './kept.ts'

const KEPT_BYTES = 32 * 1024 * 1024

const bytes = new TextEncoder()
const kept = new Kept<{ readonly of: object; readonly page: Uint8Array<ArrayBuffer> }>(KEPT_BYTES)

/**
 * A large page drawn once for what it is drawn of: coming back to it, or reloading it, draws nothing anew.
 * @param of the value it shows; another object under the same key is drawn afresh
 * @param key tells pages of one value apart
 */
export function drawnOnce(of: object, key: string, draw: () => unknown): Uint8Array<ArrayBuffer> {
  const found = kept.get(key)
  if (found?.of === of) return found.page
  const page = bytes.encode(String(draw()))
  kept.set(key, { of, page }, page.byteLength)
  return page
}
