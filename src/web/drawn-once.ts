const KEPT = 8

const bytes = new TextEncoder()
const kept = new Map<string, { readonly of: object; readonly page: Uint8Array<ArrayBuffer> }>()

/**
 * A large page drawn once for what it is drawn of: coming back to it, or reloading it, draws nothing anew.
 * @param of the value it shows; another object under the same key is drawn afresh
 * @param key tells pages of one value apart
 */
export function drawnOnce(of: object, key: string, draw: () => unknown): Uint8Array<ArrayBuffer> {
  const found = kept.get(key)
  const page = found?.of === of ? found.page : bytes.encode(String(draw()))
  kept.delete(key)
  kept.set(key, { of, page })
  const oldest = kept.size > KEPT ? kept.keys().next().value : undefined
  if (oldest !== undefined) kept.delete(oldest)
  return page
}
