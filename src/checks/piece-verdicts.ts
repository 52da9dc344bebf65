import type { CheckPiece, FactValues } from '../contract/index.ts'

/** What the pieces of a check can and cannot verify, as facts for the rules that say it. */
export function pieceVerdicts(pieces: readonly CheckPiece[]): FactValues {
  const larger = ({ routineMm, sizeToFindMm }: CheckPiece) =>
    routineMm !== null && sizeToFindMm !== null && routineMm > sizeToFindMm
  const serve = pieces.filter(({ routineMm }) => routineMm !== null)
  const verify = serve.filter((piece) => !larger(piece))
  const none = pieces.filter(({ routineMm }) => routineMm === null)
  const other = serve.filter(({ routineMm, logit }) => logit.routineMm !== routineMm)
  return {
    'check.piecesVerify': listed(verify, ({ routineMm }) => `, ${routineMm} mm`),
    'check.piecesLarger': listed(
      serve.filter(larger),
      ({ routineMm, sizeToFindMm }) => `, ${routineMm} mm for a size to find of ${sizeToFindMm} mm`,
    ),
    'check.piecesNone': listed(none, () => ''),
    'check.piecesByLogit': listed(other, ({ logit }) =>
      logit.routineMm === null ? ', no piece of the series' : `, ${logit.routineMm} mm`,
    ),
    'check.pieceCurve': curveOf(serve),
  }
}

const listed = (pieces: readonly CheckPiece[], size: (piece: CheckPiece) => string): string =>
  pieces.map((piece) => `${nameOf(piece)}${size(piece)}`).join('; ')

/** A piece in words: material, and the length or face that goes with its shape. */
const nameOf = ({ pieceMaterial, shape, lengthMm, faceMm2 }: CheckPiece): string =>
  shape === 'wire'
    ? `${pieceMaterial}, wire ${lengthMm} mm long`
    : shape === 'flake'
      ? `${pieceMaterial}, flake of ${faceMm2} mm²`
      : `${pieceMaterial}, ball`

/** By which curve the pieces were chosen. */
function curveOf(pieces: readonly CheckPiece[]): string {
  const shown = pieces.filter(({ basis }) => basis === 'demonstrated')
  if (shown.length === 0) return 'on the cautious curve, nothing demonstrated yet'
  if (shown.length === pieces.length) return 'on the demonstrated curve'
  return `${listed(shown, () => '')} on the demonstrated curve, the others on the cautious one, nothing demonstrated yet`
}
