import { describe, expect, it } from 'vitest'
import { FILLS, PatternBars, PatternSample } from '../../src/charts/pattern-bars.tsx'

const svg = String(
  <PatternBars
    id="n"
    title="Shares"
    description="one machine"
    parts={FILLS.map((fill) => ({ words: fill, fill }))}
    bars={[{ label: 'A', shares: [0.5, 0.3, 0.12, 0.08, 0] }]}
  />,
)

describe('bars told apart by pattern', () => {
  it('lie end to end over the whole width', () => {
    const rects = [...svg.matchAll(/<rect[^>]* x="([\d.]+)%"[^>]* width="([\d.]+)%"/g)]
    expect(rects).toHaveLength(5)
    let end = 0
    for (const [, x, width] of rects) {
      expect(Number(x)).toBeCloseTo(end, 2)
      end += Number(width)
    }
    expect(end).toBeCloseTo(100, 2)
  })

  it('have a pattern each and a number where there is room', () => {
    for (const fill of FILLS) {
      expect(svg).toContain(`id="n-${fill}"`)
      expect(svg).toContain(`fill="url(#n-${fill})"`)
    }
    expect(svg).toContain('50 %')
    expect(svg).toContain('12 %')
    expect(svg).not.toContain('8 %</text>')
  })

  it('lend their pattern to the key', () => {
    expect(String(<PatternSample id="n" fill="dotted" />)).toContain('url(#n-dotted)')
  })
})
