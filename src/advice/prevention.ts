import type { Advice, Brief } from '../contract/index.ts'
import { type MaterialKind, materials } from '../reference/index.ts'

/** What keeps a kind of material out before any machine (common practice, no source). */
const BY_KIND: Partial<Record<MaterialKind, string>> = {
  glass:
    'Keep a register of glass and brittle plastic near open food, check it each shift, and stop, clear and clean a set area after every breakage. Invert and rinse or blow out glass packs before filling.',
  stone:
    'Ask the supplier for cleaned and sorted lots with evidence; take stones out by sieve, air or water before packing, and keep broken floors and walls away from open food.',
  bone: 'Agree with the supplier and the cutting room how pieces are trimmed and checked by hand and light; sample lots, and send what was found back to the cutter who can act on it.',
  polymer:
    'Choose tools, seals, belts and gloves in a colour no food has, count them in and out, replace them before they shed, and keep film and liners away from open food. A grade filled to be detectable still has a smallest size.',
  organic:
    'Keep wood out of open-food areas, control pests and screens, and have shells, stalks and stones sorted out by size, weight or colour before packing, with the supplier’s own sorting proved.',
  metal:
    'Count blades, needles and sieve wires at each change, release a line after maintenance only when parts and tools are accounted for, and put magnets and sieves where the product is loose.',
  paper:
    'Open sacks and cartons away from open food, cut no liners over the hopper, and sieve what allows it.',
}

/** Tissue the animal brings along is not kept out by rules for its bone alone. */
const BY_MATERIAL: Readonly<Record<string, string>> = {
  cartilage:
    'Cartilage is cut out, not detected: agree trimming and sampling with the supplier and the cutting room, and say on the label what may remain.',
  insect:
    'Keep insects out by storage, screens and fumigation or cold where allowed, inspect lots on arrival, and sieve or sort by colour before packing.',
}

/** How to keep out each of these contaminants. */
export function preventionOf(brief: Brief, contaminants: readonly number[]): Advice['prevention'] {
  return [...new Set(contaminants)]
    .sort((a, b) => a - b)
    .flatMap((contaminant) => {
      const { material } = brief.contaminants[contaminant]!
      const kind = materials.get(material)?.kind
      const text = BY_MATERIAL[material] ?? (kind ? BY_KIND[kind] : undefined)
      return text ? [{ contaminant, text }] : []
    })
}
