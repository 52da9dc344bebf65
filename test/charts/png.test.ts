import { inflateSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { encodePng } from '../../src/charts/png.ts'
import { decodePng } from './decode-png.ts'

describe('PNG', () => {
  it('gives back the picture it was given, grey and colour', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        fc.constantFrom<1 | 3>(1, 3),
        fc.infiniteStream(fc.integer({ min: 0, max: 255 })),
        (widthPx, heightPx, channels, stream) => {
          const values = Uint8Array.from({ length: widthPx * heightPx * channels }, () => stream.next().value)
          const decoded = decodePng(encodePng({ widthPx, heightPx, channels, values }))
          expect(decoded).toMatchObject({ widthPx, heightPx, channels })
          expect(decoded.values).toEqual(values)
        },
      ),
      { numRuns: 40 },
    )
  })

  it('carries its texts and ends with the end chunk', () => {
    const png = encodePng({
      widthPx: 2,
      heightPx: 1,
      channels: 1,
      values: Uint8Array.of(0, 255),
      text: { Title: 'simulated, seed 3' },
    })
    const { chunks, texts } = decodePng(png)
    expect(chunks).toEqual(['IHDR', 'tEXt', 'IDAT', 'IEND'])
    expect(texts).toEqual({ Title: 'simulated, seed 3' })
  })

  it('filters every row with Sub', () => {
    const png = encodePng({ widthPx: 3, heightPx: 2, channels: 1, values: Uint8Array.of(5, 7, 7, 9, 9, 4) })
    const rows = inflateSync(decodePng(png).data)
    expect([...rows]).toEqual([1, 5, 2, 0, 1, 9, 0, 251])
  })

  it('refuses values that do not fill the picture', () => {
    expect(() => encodePng({ widthPx: 2, heightPx: 2, channels: 3, values: new Uint8Array(4) })).toThrow(
      /12 values; 4 were given/,
    )
  })
})
