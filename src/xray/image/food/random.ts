/**
 * Repeatable random numbers: xoshiro128** (Blackman & Vigna 2021, ACM Trans. Math. Softw. 47:36), its state
 * filled from a seed and a name, so that every part of a picture has its own stream and the order in which
 * parts are drawn changes nothing.
 */
export class Random {
  readonly #state: Int32Array

  constructor(state: Int32Array) {
    this.#state = state
  }

  /** 32 random bits, as a signed whole number. */
  bits(): number {
    const s = this.#state
    const b = s[1]!
    const m = Math.imul(b, 5)
    const result = Math.imul((m << 7) | (m >>> 25), 9)
    const c = s[2]! ^ s[0]!
    const d = s[3]! ^ b
    s[1] = b ^ c
    s[0] = s[0]! ^ d
    s[2] = c ^ (b << 9)
    s[3] = (d << 11) | (d >>> 21)
    return result
  }

  /** Even on (0, 1). */
  uniform(): number {
    return ((this.bits() >>> 0) + 0.5) / 4294967296
  }

  /** Standard normal by layers (Marsaglia & Tsang 2000, J. Stat. Softw. 5:8; in the form of Doornik 2005). */
  normal(): number {
    for (;;) {
      const u = this.bits() / 2147483648
      const layer = this.bits() & (LAYERS - 1)
      if (Math.abs(u) < RATIO[layer]!) return u * EDGE[layer]!
      if (layer === 0) return u < 0 ? -this.#tail() : this.#tail()
      const x = u * EDGE[layer]!
      const outer = Math.exp(-0.5 * (EDGE[layer]! ** 2 - x * x))
      const inner = Math.exp(-0.5 * (EDGE[layer + 1]! ** 2 - x * x))
      if (inner + this.uniform() * (outer - inner) < 1) return x
    }
  }

  #tail(): number {
    for (;;) {
      const x = -Math.log(this.uniform()) / TAIL_START
      const y = -Math.log(this.uniform())
      if (2 * y >= x * x) return TAIL_START + x
    }
  }

  /** Poisson count of a mean up to about 50, by multiplication (Knuth, Art of Computer Programming 3.4.1). */
  poisson(mean: number): number {
    const floor = Math.exp(-mean)
    let count = 0
    for (let product = this.uniform(); product > floor; product *= this.uniform()) count++
    return count
  }
}

/** Layers of equal area under the normal curve; the last is the tail beyond TAIL_START. */
const LAYERS = 128
const TAIL_START = 3.442619855899
const LAYER_AREA = 9.91256303526217e-3
const EDGE = new Float64Array(LAYERS + 1)
EDGE[0] = LAYER_AREA / Math.exp(-0.5 * TAIL_START ** 2)
EDGE[1] = TAIL_START
for (let i = 2; i < LAYERS; i++) {
  const below = EDGE[i - 1]!
  EDGE[i] = Math.sqrt(-2 * Math.log(LAYER_AREA / below + Math.exp(-0.5 * below * below)))
}
const RATIO = Float64Array.from({ length: LAYERS }, (_, i) => EDGE[i + 1]! / EDGE[i]!)

/** The stream of a name under a seed (a whole number). */
export function randomStream(seed: number, name: string): Random {
  let h = 0x811c9dc5 ^ Math.imul(seed | 0, 0x01000193)
  for (let i = 0; i < name.length; i++) h = Math.imul(h ^ name.charCodeAt(i), 0x01000193)
  const state = Int32Array.from({ length: 4 }, (_, i) => scrambled(h + Math.imul(i + 1, 0x9e3779b9)))
  return new Random(state)
}

/** A number with its bits well mixed (finaliser of MurmurHash3, A. Appleby 2011, public domain). */
function scrambled(word: number): number {
  let z = word | 0
  z = Math.imul(z ^ (z >>> 16), 0x85ebca6b)
  z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35)
  return z ^ (z >>> 16)
}
