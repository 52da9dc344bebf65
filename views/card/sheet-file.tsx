import type { DrawnSheet } from '../../src/card/drawn-sheet.ts'
import { SheetPicture } from './sheet-picture.tsx'

const STYLE =
  '.sheet-picture{font-family:sans-serif;background:#fff}image{image-rendering:pixelated}path{fill:none;vector-effect:non-scaling-stroke}.mark-under{stroke:#000;stroke-width:3.2px;stroke-opacity:.75}.mark-over{stroke:#fff;stroke-width:1.5px}.dashed path{stroke-dasharray:4 3}.leader{stroke:#777;stroke-width:1px}.scale-bar{stroke:#000;stroke-width:2px}'

/** A sheet as a file of its own: the picture's bytes, its marks and its style within one SVG. */
export function sheetFile(sheet: DrawnSheet, png: Uint8Array, alt: string, marks: boolean): string {
  const href = `data:image/png;base64,${Buffer.from(png).toString('base64')}`
  const svg = String(<SheetPicture sheet={sheet} href={href} alt={alt} marks={marks} />)
  return `${svg.replace('<svg ', '<svg xmlns="http://www.w3.org/2000/svg" ').replace('>', `><style>${STYLE}</style>`)}\n`
}
