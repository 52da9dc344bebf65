import type { Calculation } from '../../contract/index.ts'
import type { CoilFinding } from '../assessment.ts'
import type { FindingContext } from '../decide/finding-context.ts'
import type { Listening } from '../decide/reading.ts'
import { metalFreeZoneMm } from '../opening/surroundings.ts'
import type { Piece } from '../piece/piece.ts'
import type { Scene } from '../scene.ts'
import type { Situation } from '../situation.ts'
import { TrailBuilder } from './trail-builder.ts'
import { pieceRows } from './trail-piece.ts'
import { sceneRows } from './trail-scene.ts'

interface TrailFacts {
  readonly idPrefix: string
  readonly situation: Situation
  readonly scene: Scene
  readonly context: FindingContext
  readonly listen: Listening
  readonly pieces: readonly (Piece | null)[]
  readonly findings: readonly CoilFinding[]
}

/** Every calculation from a size down to the conductivities, each with its sources. */
export function coilTrail(facts: TrailFacts): readonly Calculation[] {
  const trail = new TrailBuilder(facts.idPrefix)
  const { context, listen, situation, scene } = facts
  const ids = sceneRows(trail, situation, scene, context, listen.hearing)
  const looks = context.parameters.looksPerPack
  const shared = [
    trail.add(
      'threshold',
      'threshold',
      'z',
      listen.thresholdZ,
      '',
      `upper quantile of the false-reject rate over ${looks} looks at a pack`,
    ),
    trail.add(
      'spread',
      'spread of the size',
      's',
      listen.spread,
      '',
      'log-normal; 0.10 without a signal of the food, 0.15 from 0.01 S/m, between them straight in ln σ',
      [],
      ['coil-spread'],
    ),
    trail.add(
      'limit',
      'largest size the model speaks of',
      '',
      context.limitMm,
      'mm',
      '12 mm, or the bore of pipe or throat',
    ),
  ]
  facts.pieces.forEach((piece, index) => {
    if (piece) pieceRows(trail, listen, ids, shared, piece, facts.findings[index]!)
  })
  const free = metalFreeZoneMm(scene.opening.heightM * 1000)
  trail.add(
    'surroundings.fixed',
    'free of fixed metal before and behind',
    '',
    free.fixedMm,
    'mm',
    '1.5·h',
    [`${facts.idPrefix}.opening.height`],
    ['metal-free-zone'],
  )
  trail.add(
    'surroundings.moving',
    'free of moving metal before and behind',
    '',
    free.movingMm,
    'mm',
    '2·h',
    [`${facts.idPrefix}.opening.height`],
    ['metal-free-zone'],
  )
  return trail.rows
}
