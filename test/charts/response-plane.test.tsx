import { describe, expect, it } from 'vitest'
import { OpeningPicture } from '../../src/charts/opening-picture.tsx'
import { ResponsePlane } from '../../src/charts/response-plane.tsx'
import { TurnedSketch } from '../../src/charts/turned-sketch.tsx'

const plane = String(
  <ResponsePlane
    id="r"
    title="Plane"
    description="piece and food"
    along="loss"
    up="in step"
    curves={[
      {
        mark: 'A',
        dash: 0,
        places: [
          { x: 1, y: 0 },
          { x: 3, y: -4 },
        ],
        spots: [
          { x: 0, y: 0, words: 'zero', ring: false },
          { x: 2, y: 0, words: 'right', ring: true },
          { x: 0, y: -2, words: 'down', ring: true },
        ],
      },
    ]}
  />,
)

describe('the response plane', () => {
  it('has the same scale on both axes, so that angles are true', () => {
    const [zero, right, down] = [...plane.matchAll(/<circle[^>]* cx="([\d.]+)" cy="([\d.]+)"/g)].map(
      ([, x, y]) => ({ x: Number(x), y: Number(y) }),
    )
    expect(right!.x - zero!.x).toBeCloseTo(down!.y - zero!.y, 0)
    expect(right!.y).toBe(zero!.y)
    expect(down!.x).toBe(zero!.x)
  })

  it('names itself and its axes', () => {
    expect(plane).toContain('<title id="r-title">Plane</title>')
    expect(plane).toContain('>loss</text>')
    expect(plane).toContain('>in step</text>')
  })
})

describe('words in the response plane', () => {
  it('stand clear of each other, of rings and of the curve', () => {
    const svg = String(
      <ResponsePlane
        id="q"
        title="Plane"
        description="a wire"
        along="loss"
        up="in step"
        curves={[
          {
            mark: 'A',
            dash: 0,
            places: Array.from({ length: 60 }, (_, i) => ({ x: i / 170, y: 0.056 - 0.06 * (i / 59) ** 2 })),
            spots: [
              { x: 0.001, y: 0.056, words: '10 kHz', ring: false },
              { x: 59 / 170, y: -0.004, words: '1000 kHz', ring: false },
              { x: 0.303, y: 0.012, words: '850 kHz', ring: true },
            ],
          },
        ]}
      />,
    )
    const rings = [...svg.matchAll(/<circle[^>]* cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ])
    const boxes = [
      ...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)" text-anchor="(start|end)">([^<]*kHz)/g),
    ].map(([, x, y, anchor, words]) => {
      const wide = 8 * words!.length
      const left = anchor === 'start' ? Number(x) : Number(x) - wide
      return { left, right: left + wide, top: Number(y) - 12, foot: Number(y) + 2 }
    })
    expect(boxes).toHaveLength(3)
    const path = [...(/class="curve[^>]* d="M([^"]*)"/.exec(svg)?.[1] ?? '').split('L')].map((pair) =>
      pair.split(',').map(Number),
    )
    boxes.forEach((a, i) => {
      for (const b of boxes.slice(i + 1))
        expect(a.left < b.right && b.left < a.right && a.top < b.foot && b.top < a.foot).toBe(false)
      for (const [x, y] of [...rings, ...path])
        expect(x! > a.left && x! < a.right && y! > a.top && y! < a.foot, `${i}`).toBe(false)
    })
  })
})

describe('the opening', () => {
  it('is drawn in proportion, each number at its place', () => {
    const svg = String(
      <OpeningPicture
        id="o"
        title="Opening"
        description="weakest in the centre"
        widthMm={400}
        heightMm={200}
        food={{ widthMm: 100, heightMm: 50 }}
        places={[
          { across: 0, up: 0, words: '1.0' },
          { across: -0.4, up: 0.4, words: '2.1' },
        ]}
      />,
    )
    const opening = /class="opening"[^>]* width="([\d.]+)" height="([\d.]+)"/.exec(svg)
    expect(Number(opening?.[1]) / Number(opening?.[2])).toBeCloseTo(2, 2)
    const [centre, corner] = [...svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"/g)]
    expect(Number(corner?.[1])).toBeLessThan(Number(centre?.[1]))
    expect(Number(corner?.[2])).toBeLessThan(Number(centre?.[2]))
  })
})

describe('a piece turned', () => {
  it('lies along the travel at 0 degrees and across it at 90', () => {
    const ends = (angleDeg: number) =>
      /class="piece" x1="([\d.]+)" y1="([\d.]+)" x2="([\d.]+)" y2="([\d.]+)"/
        .exec(String(<TurnedSketch id="t" angleDeg={angleDeg} words="wire" />))
        ?.slice(1)
        .map(Number)
    const [x1, y1, x2, y2] = ends(0)!
    expect(y1).toBe(y2)
    expect(x2! - x1!).toBe(68)
    const [a1, b1, a2, b2] = ends(90)!
    expect(a1).toBe(a2)
    expect(Math.abs(b2! - b1!)).toBe(68)
  })
})
