import type { Piece } from '../piece/piece.ts'
import type { Orientation } from '../piece/target.ts'
import type { FindingContext } from './finding-context.ts'
import type { MissedAgain } from './last-crossing.ts'
import type { Listening } from './reading.ts'

interface NoteFacts {
  readonly best: number | null
  readonly expectedMm: number | null
  readonly limitMm: number
  readonly weak: Orientation | null
  readonly windows: readonly MissedAgain[]
  readonly piece: Piece
  readonly frequencyUnsuitable: boolean
  readonly listen: Listening
  readonly context: FindingContext
}

const mm = (size: number): string => `${size.toFixed(1)} mm`

function orientationText(piece: Piece, weak: Orientation): string {
  const way = weak === 'along' ? 'along' : 'across'
  return piece.shape.kind === 'wire'
    ? `The weak way for this wire is lying ${way} the travel.`
    : `The weak way for this flake is its plane lying ${way} the travel.`
}

function windowText(windows: readonly MissedAgain[]): string {
  return windows
    .map(({ fromMm, toMm }) =>
      toMm === null
        ? `Found up to ${mm(fromMm)}, missed again above it.`
        : `Found up to ${mm(fromMm)}, then missed again up to ${mm(toMm)}.`,
    )
    .join(' ')
}

/** Why a size is missing, or what the reader must know beside it. */
export function noteOf(facts: NoteFacts): string {
  const { best, expectedMm, limitMm, weak, windows, piece, frequencyUnsuitable, listen, context } = facts
  const texts: string[] = []
  if (best === null) {
    texts.push(`Not found up to ${mm(limitMm)} even in the empty opening.`)
  } else if (expectedMm === null) {
    const cause =
      context.scene.layers.length > 0 && context.scene.block
        ? 'food and pack hide it'
        : context.scene.layers.length > 0
          ? 'the conducting pack hides it'
          : context.scene.block
            ? 'the signal of the food hides it'
            : 'the opening is too large for it'
    texts.push(`Not found reliably up to ${mm(limitMm)}: ${cause}.`)
  }
  if (windows.length > 0) texts.push(windowText(windows))
  if (frequencyUnsuitable) {
    const khz = listen.hearing.frequenciesHz.map((f) => f / 1000).join(', ')
    texts.push(
      `${khz} kHz does not suit iron here: a piece of iron this large turns from magnetic to flux-expelling, and its size is not to be trusted.`,
    )
  }
  if (weak) texts.push(orientationText(piece, weak))
  return texts.join(' ')
}
