import { describe, expect, it } from 'vitest'
import { ZonePicture } from '../../views/advice/sizes/zone-picture.tsx'

const draw = (names: readonly string[], fromAbove = false) =>
  String(
    <ZonePicture
      id="c"
      label="x-ray & more"
      fromAbove={fromAbove}
      zones={names.map((name, at) => ({ name, state: at === 0 ? 'findable' : 'blind' }))}
    />,
  )

describe('the picture of a container', () => {
  it('says in words what it shows, and from where the beam looks', () => {
    const jar = draw(['body', 'heel', 'base'])
    expect(jar).toContain('body: as good as the middle; heel: hidden; base: hidden.')
    expect(jar).toContain('</tspan>: the middle')
    expect(jar).toContain('as the beam from the side sees it')
    expect(draw(['body', 'wall edge', 'heel'], true)).toContain('the beam from above')
    expect(draw(['body', 'corner', 'rim'])).toContain('Zones of the tray for x-ray &amp; more')
  })

  it('is left out for zones of no known container', () => {
    expect(draw(['spout'])).not.toContain('<svg')
  })
})
