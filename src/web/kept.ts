/** Values kept by key as long as they fit into so many bytes together; those not asked for longest go first. */
export class Kept<Value> {
  readonly #most: number
  readonly #values = new Map<string, { readonly value: Value; bytes: number }>()
  #bytes = 0

  constructor(mostBytes: number) {
    this.#most = mostBytes
  }

  get(key: string): Value | undefined {
    const found = this.#values.get(key)
    if (!found) return undefined
    this.#values.delete(key)
    this.#values.set(key, found)
    return found.value
  }

  /** Keeps a value: one larger than all the room is not kept. */
  set(key: string, value: Value, bytes: number): void {
    this.delete(key)
    this.#values.set(key, { value, bytes })
    this.#bytes += bytes
    for (const oldest of this.#values.keys()) {
      if (this.#bytes <= this.#most) break
      this.delete(oldest)
    }
  }

  delete(key: string): void {
    this.#bytes -= this.#values.get(key)?.bytes ?? 0
    this.#values.delete(key)
  }

  /** Bytes kept now. */
  get bytes(): number {
    return this.#bytes
  }
}
