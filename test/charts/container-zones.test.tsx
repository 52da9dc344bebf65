import { describe, expect, it } from 'vitest'
import { CONTAINERS, type Container, containerOf } from '../../src/charts/container-shapes.ts'
import { ContainerZones } from '../../src/charts/container-zones.tsx'

const draw = (container: Container, fromAbove = false) =>
  String(
    <ContainerZones
      id="z"
      title="Zones of the container"
      description="heel: worse; base: hidden"
      container={container}
      fromAbove={fromAbove}
      zones={Object.keys(CONTAINERS[container].zones).map((name, at) => ({
        name,
        state: (['findable', 'degraded', 'blind'] as const)[at % 3]!,
        words: `words ${at}`,
      }))}
    />,
  )

describe('a container drawn with its zones', () => {
  it.each(Object.keys(CONTAINERS) as Container[])(
    '%s: every zone has a shape, a line and its name',
    (kind) => {
      const svg = draw(kind)
      const names = Object.keys(CONTAINERS[kind].zones)
      expect(svg.match(/class="part"/g)).toHaveLength(names.length)
      expect(svg.match(/class="leader"/g)).toHaveLength(names.length)
      for (const name of names) expect(svg).toContain(`>${name}</tspan>`)
      expect(svg).toContain('role="img"')
      expect(svg).toContain('<desc id="z-desc">heel: worse; base: hidden</desc>')
    },
  )

  it('tells states apart by pattern, without colour', () => {
    const svg = draw('tray')
    expect(svg).toContain('fill="none"')
    expect(svg).toContain('fill="url(#z-slanted)"')
    expect(svg).toContain('fill="url(#z-solid)"')
  })

  it('keeps names apart and inside the picture', () => {
    const rows = [...draw('jar').matchAll(/<text x="244" y="([\d.]+)"/g)].map(([, y]) => Number(y))
    rows.sort((a, b) => a - b)
    for (const [at, y] of rows.entries()) {
      if (at > 0) expect(y - rows[at - 1]!).toBeGreaterThanOrEqual(20)
      expect(y).toBeLessThan(240)
    }
  })

  it('shows a beam only where it comes from above', () => {
    expect(draw('jar', true)).toContain('class="beam"')
    expect(draw('jar')).not.toContain('class="beam"')
  })

  it('knows a container by its zones, and draws none it does not know', () => {
    expect(containerOf(['body', 'wall edge', 'heel', 'shoulder', 'base'])).toBe('jar')
    expect(containerOf(['body', 'wall edge', 'seam', 'base', 'closure'])).toBe('can')
    expect(containerOf(['body', 'corner', 'rim'])).toBe('tray')
    expect(containerOf(['body', 'crimp'])).toBeNull()
    expect(containerOf(['body', 'heel', 'spout'])).toBeNull()
    expect(containerOf([])).toBeNull()
  })
})
