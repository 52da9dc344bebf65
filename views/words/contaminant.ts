import type { Finding } from '../../src/contract/advice.ts'

export type Names = ReadonlyMap<string, string>

type Piece = Pick<Finding, 'material' | 'shape' | 'lengthMm' | 'faceMm2' | 'placement'>

/** "stainless steel 304, wire 10 mm long"; the id itself where the name is not known. */
export function pieceWords(piece: Piece, names: Names): string {
  const form =
    piece.shape === 'wire'
      ? `wire${piece.lengthMm === null ? '' : ` ${piece.lengthMm} mm long`}`
      : piece.shape === 'flake'
        ? `flake${piece.faceMm2 === null ? '' : ` of ${piece.faceMm2} mm²`}`
        : piece.shape
  const place = piece.placement === 'outside' ? ', test card on the pack' : ''
  return `${names.get(piece.material) ?? piece.material}, ${form}${place}`
}

/** What the size of a piece measures. */
export function measureWords(shape: string): string {
  return shape === 'wire' ? 'wire diameter' : shape === 'flake' ? 'flake thickness' : 'sphere diameter'
}

/** The same in few words, for tables: a sphere goes unsaid, "kind not known" too where the word says it. */
export function pieceShort(piece: Piece, names: Names): string {
  const form =
    piece.shape === 'wire'
      ? ` wire${piece.lengthMm === null ? '' : `, ${piece.lengthMm} mm`}`
      : piece.shape === 'flake'
        ? ` flake${piece.faceMm2 === null ? '' : `, ${piece.faceMm2} mm²`}`
        : ''
  const name = (names.get(piece.material) ?? piece.material).replace(/\s*\([^)]*\)|, kind not known$/g, '')
  return `${name}${form}${piece.placement === 'outside' ? ', on the pack' : ''}`
}
