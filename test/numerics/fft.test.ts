import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fastLength, fft, fft2d, fftOfTwo } from '../../src/numerics/fft.ts'

/** The transform as its sum stands. */
function slow(re: Float64Array, im: Float64Array) {
  const n = re.length
  const sums = Array.from({ length: n }, (_, k) => {
    let [a, b] = [0, 0]
    for (let j = 0; j < n; j++) {
      const turn = (-2 * Math.PI * ((j * k) % n)) / n
      a += re[j]! * Math.cos(turn) - im[j]! * Math.sin(turn)
      b += re[j]! * Math.sin(turn) + im[j]! * Math.cos(turn)
    }
    return [a, b] as const
  })
  return { re: Float64Array.from(sums, (s) => s[0]), im: Float64Array.from(sums, (s) => s[1]) }
}

const numbers = (n: number) =>
  fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: n, maxLength: n })
const largestGap = (a: Float64Array, b: Float64Array) => Math.max(...a.map((x, i) => Math.abs(x - b[i]!)))

describe('Fourier transform', () => {
  it.each([1, 2, 3, 4, 6, 8, 9, 12, 16, 18, 24, 27, 32, 36, 48, 54, 64])('of %i numbers is its sum', (n) => {
    fc.assert(
      fc.property(numbers(n), numbers(n), (a, b) => {
        const re = Float64Array.from(a)
        const im = Float64Array.from(b)
        const expected = slow(re, im)
        fft(re, im)
        expect(largestGap(re, expected.re)).toBeLessThan(1e-11)
        expect(largestGap(im, expected.im)).toBeLessThan(1e-11)
      }),
      { numRuns: 5 },
    )
  })

  it('of a picture transforms rows and columns, and comes back', () => {
    const [columns, rows] = [12, 18]
    const re = Float64Array.from({ length: columns * rows }, (_, i) => Math.sin(i * 1.7))
    const im = Float64Array.from({ length: columns * rows }, (_, i) => Math.cos(i * 0.3))
    const [a, b] = [re.slice(), im.slice()]
    fft2d(a, b, columns, rows)
    const first = slow(
      Float64Array.from(
        { length: rows },
        (_, y) =>
          slow(re.subarray(y * columns, (y + 1) * columns), im.subarray(y * columns, (y + 1) * columns))
            .re[5]!,
      ),
      Float64Array.from(
        { length: rows },
        (_, y) =>
          slow(re.subarray(y * columns, (y + 1) * columns), im.subarray(y * columns, (y + 1) * columns))
            .im[5]!,
      ),
    )
    for (let y = 0; y < rows; y++) expect(a[y * columns + 5]).toBeCloseTo(first.re[y]!, 9)
    fft2d(a, b, columns, rows, true)
    expect(
      largestGap(
        a.map((x) => x / (columns * rows)),
        re,
      ),
    ).toBeLessThan(1e-12)
  })

  it('gives the transforms of two real pictures at once', () => {
    const [columns, rows] = [12, 8]
    const picture = (k: number) =>
      Float64Array.from({ length: columns * rows }, (_, i) => Math.sin(i * k + k))
    const alone = [1.3, 0.7].map((k) => {
      const [re, im] = [picture(k), new Float64Array(columns * rows)]
      fft2d(re, im, columns, rows)
      return { re, im }
    })
    const [re, im] = [picture(1.3), picture(0.7)]
    const second = fftOfTwo(re, im, columns, rows)
    expect(largestGap(re, alone[0]!.re)).toBeLessThan(1e-12)
    expect(largestGap(im, alone[0]!.im)).toBeLessThan(1e-12)
    expect(largestGap(second.re, alone[1]!.re)).toBeLessThan(1e-12)
    expect(largestGap(second.im, alone[1]!.im)).toBeLessThan(1e-12)
  })

  it('takes lengths of twos and threes only', () => {
    expect(() => fft(new Float64Array(14), new Float64Array(14))).toThrow(/14 was given/)
    expect([1, 5, 7, 97, 541].map(fastLength)).toEqual([1, 6, 8, 108, 576])
  })
})
