import { deflateRawSync } from 'node:zlib'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { demos } from '../../src/brief/demos.ts'
import { packBrief, unpackBrief } from '../../src/web/asked/packed-brief.ts'

describe('a brief in an address', () => {
  it('comes back as it was packed, whatever it holds', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (anything) => {
        const packed = packBrief(anything)
        expect(packed).toMatch(/^[\w-]+$/)
        expect(unpackBrief(packed)).toEqual({ brief: JSON.parse(JSON.stringify(anything)) })
      }),
    )
  })

  it('stays short enough to send', () => {
    for (const { brief } of demos) expect(packBrief(brief).length).toBeLessThan(1500)
  })

  it('is refused, not guessed, when it was cut or mistyped', () => {
    const packed = packBrief(demos[0]!.brief)
    expect(unpackBrief(packed.slice(0, -20))).toMatchObject({ kind: 'unreadable' })
    expect(unpackBrief(`${packed.slice(0, 40)}%%%`)).toMatchObject({ kind: 'unreadable' })
    expect(unpackBrief('')).toMatchObject({ kind: 'unreadable' })
  })

  it('is refused when it would unpack to more than any brief', () => {
    const bomb = deflateRawSync(Buffer.alloc(20_000_000, 32)).toString('base64url')
    expect(bomb.length).toBeLessThan(40_000)
    expect(unpackBrief(bomb)).toMatchObject({ kind: 'too-much' })
  })
})
