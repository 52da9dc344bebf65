import { describe, expect, it } from 'vitest'
import { mmAxis } from '../../src/charts/mm-axis.ts'
import { type LadderRow, SizeLadder } from '../../src/charts/size-ladder.tsx'

const axis = mmAxis([0.5, 10])

const row: LadderRow = {
  label: 'x-ray',
  bestMm: 1.2,
  halfMm: 1.5,
  expectedMm: 2,
  sureMm: 2.6,
  cautiousMm: 3.1,
  mark: '● yes',
  numbers: '2.0 to 3.1 mm',
  ruledOut: false,
}

const draw = (rows: LadderRow[], mustFindMm: number | null = 3, groups = [{ name: '', rows }]) =>
  String(
    <SizeLadder
      id="p"
      title="Size ladder: quartz"
      description="x-ray: 2.0 to 3.1 mm"
      axis={axis}
      mustFindMm={mustFindMm}
      mustFindWords={`you must find ${mustFindMm} mm`}
      groups={groups}
    />,
  )

/** Where a line or bar of a class begins, in percent. */
const at = (svg: string, name: string) =>
  Number(
    new RegExp(`class="${name}"[^>]*? x1?="([\\d.]+)%"|x1?="([\\d.]+)%"[^>]*class="${name}"`)
      .exec(svg)
      ?.slice(1)
      .find(Boolean),
  )

describe('the size ladder', () => {
  it('names itself and its description to those who cannot see it', () => {
    const svg = draw([row])
    expect(svg).toContain('role="img"')
    expect(svg).toContain('aria-labelledby="p-title p-desc"')
    expect(svg).toContain('<title id="p-title">Size ladder: quartz</title>')
    expect(svg).toContain('<desc id="p-desc">x-ray: 2.0 to 3.1 mm</desc>')
  })

  it('draws the bar from expected to cautious, the tick at best possible, the line at the size to find', () => {
    const svg = draw([row])
    expect(at(svg, 'closed')).toBe(axis.percent(2))
    const width = Number(/<rect[^>]*width="([\d.]+)%"/.exec(svg)?.[1])
    expect(axis.percent(2) + width).toBeCloseTo(axis.percent(3.1), 1)
    expect(at(svg, 'best')).toBe(axis.percent(1.2))
    expect(svg.split('class="must-find"')[1]).toContain(`x1="${axis.percent(3)}%"`)
    const whisker = svg.split('class="whisker"')[1] ?? ''
    expect(whisker).toContain(`x1="${axis.percent(1.5)}%" x2="${axis.percent(2.6)}%"`)
  })

  it('leaves the bar open, hatched to the edge, where nothing can be promised', () => {
    const svg = draw([{ ...row, cautiousMm: null }])
    expect(svg).toContain('class="open"')
    expect(svg).not.toContain('class="closed"')
    const [, x = '', width = ''] = /<rect x="([\d.]+)%" width="([\d.]+)%"/.exec(svg) ?? []
    expect(Number(x) + Number(width)).toBeCloseTo(100, 1)
  })

  it('shows best possible alone where nothing is expected, and words alone where there is no size', () => {
    const alone = draw([{ ...row, halfMm: null, expectedMm: null, sureMm: null, cautiousMm: null }])
    expect(alone).toContain('class="best"')
    expect(alone).not.toContain('<rect')
    const none = draw([
      {
        ...row,
        bestMm: null,
        halfMm: null,
        expectedMm: null,
        sureMm: null,
        cautiousMm: null,
        numbers: 'no size',
      },
    ])
    expect(none).not.toContain('class="best"')
    expect(none).toContain('no size')
  })

  it('leaves the bar hollow where a rule rules the machine out', () => {
    expect(draw([{ ...row, ruledOut: true }])).toContain('class="machine ruled-out"')
    expect(draw([row])).not.toContain('ruled-out')
  })

  it('draws no line where no size was asked', () => {
    expect(draw([row], null)).not.toContain('must-find')
  })

  it('names the points only where there are several', () => {
    expect(draw([row])).not.toContain('class="group"')
    const two = draw([], 3, [
      { name: 'belt', rows: [row] },
      { name: 'packed', rows: [row] },
    ])
    expect(two).toContain('belt')
    expect(two).toContain('packed')
  })

  it('keeps the numbers inside the picture, beside the bar', () => {
    const text = (svg: string) =>
      /<text class="numbers" x="([\d.]+)%" dx="(-?\d+)"[^>]*text-anchor="(\w+)"/.exec(svg)
    expect(text(draw([row]))?.slice(1)).toEqual([String(axis.percent(3.1)), '8', 'start'])
    const right = { ...row, bestMm: 4, halfMm: 5, expectedMm: 6, sureMm: 7, cautiousMm: 9 }
    expect(text(draw([right]))?.slice(1)).toEqual([String(axis.percent(4)), '-8', 'end'])
    expect(text(draw([{ ...row, bestMm: 0.6, cautiousMm: null }]))?.slice(1)).toEqual(['100', '-8', 'end'])
  })

  it('carries no inline style, which the pages forbid', () => {
    expect(draw([row])).not.toContain('style=')
  })
})
