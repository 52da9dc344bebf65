import type { Contaminant, Point } from '../contract/index.ts'
import type { RemovalFamily, RemovalMachine } from './assessment.ts'

/** Whether a machine can be put to use at a point at all; the sentence says why not. */
export type Suitability = { readonly suits: true } | { readonly suits: false; readonly because: string }

const no = (because: string): Suitability => ({ suits: false, because })
const YES: Suitability = { suits: true }

const WORDS: Readonly<Record<RemovalFamily, string>> = {
  sieve: 'A sieve',
  magnet: 'A magnet',
  optical: 'An optical sorter',
  density: 'A density separator',
}

function sieveSuits(point: Point, meshMm: number | undefined): Suitability {
  const { structure } = point.product
  switch (structure) {
    case 'granular':
    case 'powder':
      return YES
    case 'liquid':
      return point.stage === 'pumped' ? YES : no('A liquid is strained in its pipe, not here.')
    case 'pieces-in-liquid':
      if (point.stage !== 'pumped') return no('Pieces in liquid are strained in a pipe, not here.')
      return meshMm === undefined
        ? no('The size of the pieces in the liquid is not known, so no opening can be chosen for them.')
        : YES
    case 'plates':
      return no('The face of the plates is not part of the brief, so no opening can be chosen for them.')
    case 'solid':
    case 'inclusions':
      return no('The food does not fall through an opening: a block cannot be sieved.')
  }
}

const isBlock = (point: Point) =>
  point.product.structure === 'solid' || point.product.structure === 'inclusions'

function opticalSuits(point: Point): Suitability {
  if (point.stage === 'pumped') return no('Nothing can be seen inside a pipe.')
  switch (point.product.structure) {
    case 'granular':
    case 'plates':
    case 'solid':
    case 'inclusions':
      return YES
    case 'powder':
      return no('A powder never lies as a single layer of grains that a camera could tell apart.')
    case 'liquid':
    case 'pieces-in-liquid':
      return no('A liquid does not lie as a single layer of pieces.')
  }
}

function densitySuits(point: Point): Suitability {
  if (point.stage === 'pumped') return no('A filled pipe leaves no room for pieces to settle apart.')
  switch (point.product.structure) {
    case 'granular':
      return YES
    case 'plates':
      return no('How fast the plates settle is not known: their face is not part of the brief.')
    case 'powder':
      return no('A powder is carried off by the stream that should part it.')
    case 'solid':
    case 'inclusions':
    case 'liquid':
    case 'pieces-in-liquid':
      return no('The food does not settle as single grains.')
  }
}

/** Whether the machine can stand at the point with this product. */
export function suitsPoint(machine: RemovalMachine, point: Point): Suitability {
  if (point.stage === 'packed')
    return no(`${WORDS[machine.family]} needs the food open: nothing can be taken out of a pack.`)
  switch (machine.family) {
    case 'sieve':
      return sieveSuits(point, machine.meshMm)
    case 'magnet':
      return YES
    case 'optical':
      return opticalSuits(point)
    case 'density':
      return densitySuits(point)
  }
}

/** Whether it can take this contaminant out of this product: what is inside a block stays there. */
export function suitsContaminant(
  machine: RemovalMachine,
  point: Point,
  contaminant: Contaminant,
): Suitability {
  if (!isBlock(point) || contaminant.placement === 'outside') return YES
  if (machine.family === 'optical') return no('What is hidden inside the food cannot be seen.')
  if (machine.family === 'magnet' && point.stage !== 'pumped')
    return no('What is held inside a firm piece of food cannot be pulled out of it.')
  return YES
}
