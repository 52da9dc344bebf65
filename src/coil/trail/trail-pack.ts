import { magnitude } from '../../numerics/complex.ts'
import type { Hearing, Scene } from '../scene.ts'
import type { TrailBuilder } from './trail-builder.ts'

/** Rows of the conducting parts of the pack: their signals, and what closed ones leave inside. */
export function layerRows(
  trail: TrailBuilder,
  scene: Scene,
  hearing: Hearing,
): { clutter: string[]; inside: string[] } {
  const clutter: string[] = []
  const inside: string[] = []
  scene.layers.forEach((layer, l) => {
    const sources = layer.film ? ['metallised-film-resistance'] : ['resistivity-tables']
    const conductance = trail.add(
      `pack.${l}.conductance`,
      `sheet conductance of ${layer.part.material} (${layer.part.place})`,
      'S',
      layer.conductanceS,
      'S',
      'σ·t, or 1 over the sheet resistance',
      [],
      sources,
    )
    hearing.frequenciesHz.forEach((f, k) => {
      const answer = hearing.layers[k]![l]!
      clutter.push(
        trail.add(
          `pack.${l}.${f / 1000}`,
          `signal of the ${layer.kind} at ${f / 1000} kHz`,
          '|W|',
          magnitude(answer.alpha),
          'm³',
          'one time constant between the resistive and the perfect limit',
          [conductance],
          ['thin-sheet', 'coil-model'],
        ),
      )
      if (layer.kind === 'closed tube' || layer.kind === 'closed container') {
        inside.push(
          trail.add(
            `pack.${l}.inside.${f / 1000}`,
            `field left inside at ${f / 1000} kHz`,
            '|T|',
            magnitude(answer.inside),
            '',
            '|1/(1 + iωμ0S·A/P)|; a piece inside answers with T²',
            [conductance],
            ['thin-sheet'],
          ),
        )
      }
    })
  })
  return { clutter, inside }
}
