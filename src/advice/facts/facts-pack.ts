import { insertKind } from '../../brief/insert-kind.ts'
import type { Point } from '../../contract/index.ts'
import type { FactWriter } from './fact-sheet.ts'
import { isFoil, isMetallisedFilm, isRigid, type Materials, packKind } from './kinds/pack-kind.ts'
import {
  bringsMetal,
  foilPlace,
  isMagneticPart,
  isMetalClosure,
  isPlainClosure,
  metalNames,
} from './kinds/pack-metal.ts'

/** Facts of the pack at a point: what kind it is, where it carries metal, how it lies. */
export function writePack(write: FactWriter, point: Point, materials: Materials): void {
  const { parts } = point
  const kind = packKind(point, materials)
  const foils = parts.filter((part) => isFoil(part, materials)).map((part) => 1000 * part.mm)
  write.computed('pack.kind', kind)
  write.computed('pack.rigid', isRigid(kind))
  write.computed('pack.foilMicrometres', Math.max(0, ...foils))
  write.computed('pack.foilPlace', foilPlace(parts, materials))
  write.computed(
    'pack.metallisedFilm',
    parts.some((part) => isMetallisedFilm(part, materials)),
  )
  write.computed('pack.bringsMetal', bringsMetal(point, materials))
  write.computed('pack.metalNames', metalNames(point, materials))
  write.computed(
    'pack.metalClosure',
    parts.some((part) => isMetalClosure(part, materials)),
  )
  write.computed(
    'pack.plainClosure',
    parts.some((part) => isPlainClosure(part, materials)),
  )
  write.computed('pack.magneticParts', parts.filter(isMagneticPart).length)
  writeInserts(write, point.inserts)
  writeShape(write, point)
}

function writeInserts(write: FactWriter, inserts: readonly string[]): void {
  const kinds = inserts.map(insertKind)
  const count = (...wanted: (typeof kinds)[number][]) => kinds.filter((kind) => wanted.includes(kind)).length
  write.computed('pack.insertCount', inserts.length)
  write.computed('pack.inserts', inserts.join(', '))
  write.computed('pack.metalInserts', count('metal', 'iron'))
  write.computed('pack.ironInserts', count('iron'))
  write.computed('pack.plainInserts', count('no metal'))
  write.computed('pack.unclearInserts', count('unknown'))
  write.computed('pack.unclearNames', inserts.filter((_, i) => kinds[i] === 'unknown').join(', '))
}

function writeShape(write: FactWriter, point: Point): void {
  const { heightMm, widthMm, lengthMm } = point
  write.derived('pack.heightOverWidth', heightMm / widthMm, 'h/w', 'height ÷ width', [
    'point.heightMm',
    'point.widthMm',
  ])
  const across = ['point.widthMm', 'point.lengthMm']
  write.derived('pack.widthOverLength', widthMm / lengthMm, 'w/L', 'width ÷ length', across)
  write.derived(
    'pack.shortSideMm',
    Math.min(widthMm, lengthMm),
    's',
    'the smaller of width and length',
    across,
  )
}
