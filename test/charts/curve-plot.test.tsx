import { describe, expect, it } from 'vitest'
import { linearAxis, sizeAxis } from '../../src/charts/axis.ts'
import { type Band, type Curve, CurvePlot } from '../../src/charts/curve-plot.tsx'

const places = [
  { x: 0, y: 1 },
  { x: 10, y: 2 },
  { x: 20, y: null },
  { x: 30, y: 3 },
  { x: 40, y: 4 },
]
const curve: Curve = { mark: 'A', dash: 0, places, dots: true }

const draw = (curves: Curve[], bands: Band[] = [], gaps: { x: number; words: string }[] = []) =>
  String(
    <CurvePlot
      id="p"
      title="Size against height"
      description="A: 1 to 4 mm"
      height={200}
      x={linearAxis(0, 40, 'height, mm')}
      y={sizeAxis([1, 5])}
      curves={curves}
      bands={bands}
      gaps={gaps}
      level={{ y: 3, words: 'you must find 3 mm' }}
      upright={{ x: 10, words: 'the brief: 10 mm' }}
    />,
  )

const pathOf = (svg: string, name: string) => new RegExp(`class="${name}"[^>]* d="([^"]*)"`).exec(svg)?.[1]

describe('curves', () => {
  it('name themselves and their description to those who cannot see them', () => {
    const svg = draw([curve])
    expect(svg).toContain('role="img"')
    expect(svg).toContain('aria-labelledby="p-title p-desc"')
    expect(svg).toContain('<title id="p-title">Size against height</title>')
    expect(svg).toContain('<desc id="p-desc">A: 1 to 4 mm</desc>')
  })

  it('break where there is no size: two pieces, no dot and nothing at zero', () => {
    const svg = draw([curve])
    expect(pathOf(svg, 'curve dash-0')!.match(/M/g)).toHaveLength(2)
    expect(svg.match(/<circle/g)).toHaveLength(4)
  })

  it('are not joined thick where the machine is set otherwise: a dotted join says so', () => {
    const turned = places.map((place) => (place.x === 10 ? { ...place, newSetting: true } : place))
    const svg = draw([{ ...curve, places: turned }])
    expect(pathOf(svg, 'curve dash-0')!.match(/M/g)).toHaveLength(3)
    expect(pathOf(svg, 'curve between')).toMatch(/^M0,[\d.]+L250,[\d.]+$/)
    expect(draw([curve])).not.toContain('between')
  })

  it('leave the words of a level clear, and so does the upright', () => {
    const flat = { ...curve, places: [0, 40].map((x) => ({ x, y: 1 })) }
    expect(draw([flat])).toMatch(/text-anchor="end">you must find 3 mm/)
  })

  it('have both axes named, with the unit and the scale', () => {
    const svg = draw([curve])
    expect(svg).toContain('>size, mm, log scale</text>')
    expect(svg).toContain('>height, mm</text>')
  })

  it('stand where the axes say, in per cent of the width', () => {
    const svg = draw([{ ...curve, ring: { x: 10, y: 2 } }])
    const ring = /class="ring" cx="([\d.]+)%"/.exec(svg)
    const upright = /class="present"><line x1="([\d.]+)%"/.exec(svg)
    expect(Number(ring?.[1])).toBe(Number(upright?.[1]))
    expect(Number(ring?.[1])).toBeCloseTo(9 + 0.25 * 86, 1)
  })

  it('carry their letter at the end, or where they first reach a value', () => {
    const markX = (svg: string) => Number(/class="marks"><text x="([\d.]+)%"/.exec(svg)?.[1])
    expect(markX(draw([curve]))).toBeCloseTo(95, 1)
    expect(markX(draw([{ ...curve, markAt: 2 }]))).toBeCloseTo(9 + 0.25 * 86, 1)
  })

  it('have an area to what can be promised, hatched to the top where nothing can', () => {
    const lower = [0, 10].map((x) => ({ x, y: 1 }))
    const upper = [0, 10].map((x) => ({ x, y: 2 }))
    const closed = draw([curve], [{ open: false, lower, upper }])
    // The axis of sizes runs from 0.7 to 7 mm here: 1 mm lies at lg(1/0.7) = 0.155 of 200 px from below, 2 mm at 0.456.
    expect(pathOf(closed, 'band')).toBe('M0,108.8L250,108.8L250,169L0,169Z')
    expect(closed).not.toContain('class="band open"')
    const open = draw([curve], [{ open: true, lower, upper: [] }])
    expect(open).toContain('fill="url(#p-open)"')
    expect(pathOf(open, 'band open')).toBe('M0,0L250,0L250,169L0,169Z')
  })

  it('say why there is a gap', () => {
    expect(draw([curve], [], [{ x: 20, words: 'food too high' }])).toContain('food too high')
  })

  it('carry no inline style, which the pages forbid', () => {
    expect(draw([curve])).not.toContain('style=')
  })
})
