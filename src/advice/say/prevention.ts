import type { Advice, Brief } from '../../contract/index.ts'
import { type MaterialKind, materials } from '../../reference/index.ts'

/** One measure; left out where a rule that fired for the same brief says it already. */
interface Measure {
  readonly text: string
  readonly unless?: string
}

/** What keeps a kind of material out before any machine (common practice, no source). */
const BY_KIND: Partial<Record<MaterialKind, readonly Measure[]>> = {
  glass: [
    {
      text: 'Keep a register of glass and brittle plastic near open food, check it each shift, and stop, clear and clean a set area after every breakage.',
      unless: 'detector-clears-no-breakage',
    },
    {
      text: 'Invert and rinse or blow out glass packs before filling, and keep lamps and gauges over open food behind covers.',
    },
  ],
  stone: [
    {
      text: 'Take stones out by sieve, air or water before packing.',
      unless: 'stones-leave-before-packing',
    },
    {
      text: 'Ask the supplier for cleaned and sorted lots with evidence, and keep broken floors and walls away from open food.',
    },
  ],
  bone: [
    {
      text: 'Agree with the supplier and the cutting room how pieces are trimmed and checked by hand and light; sample lots, and send what was found back to the cutter who can act on it.',
    },
  ],
  polymer: [
    {
      text: 'Choose tools, seals, belts and gloves in a colour no food has, count them in and out, replace them before they shed, and keep film and liners away from open food.',
    },
    {
      text: 'A grade filled to be detectable still has a smallest size.',
      unless: 'detectable-plastic-has-a-size',
    },
  ],
  organic: [
    {
      text: 'Keep wood out of open-food areas, control pests and screens, and have shells, stalks and stones sorted out by size, weight or colour before packing, with the supplier’s own sorting proved.',
    },
  ],
  metal: [
    {
      text: 'Count blades, needles and sieve wires at each change.',
      unless: 'count-blades-and-needles',
    },
    {
      text: 'Release a line after maintenance only when parts and tools are accounted for, and put magnets and sieves where the product is loose.',
    },
  ],
  paper: [
    {
      text: 'Open sacks and cartons away from open food, cut no liners over the hopper, and sieve what allows it.',
    },
  ],
}

/** Tissue the animal brings along is not kept out by rules for its bone alone. */
const BY_MATERIAL: Readonly<Record<string, readonly Measure[]>> = {
  cartilage: [
    {
      text: 'Cartilage is cut out, not detected: agree trimming and sampling with the supplier and the cutting room, and say on the label what may remain.',
    },
  ],
  insect: [
    {
      text: 'Keep insects out by storage, screens and fumigation or cold where allowed, inspect lots on arrival, and sieve or sort by colour before packing.',
    },
  ],
}

/** The source of every measure here, as the rule book names it. */
export const PREVENTION_SOURCES = ['trade-practice'] as const

/** How to keep out each of these contaminants; `fired` are the rules that have spoken, so that nothing is said twice. */
export function preventionOf(
  brief: Brief,
  contaminants: readonly number[],
  fired: ReadonlySet<string> = new Set(),
): Omit<Advice['prevention'][number], 'lines'>[] {
  return [...new Set(contaminants)]
    .sort((a, b) => a - b)
    .flatMap((contaminant) => {
      const { material } = brief.contaminants[contaminant]!
      const kind = materials.get(material)?.kind
      const measures = BY_MATERIAL[material] ?? (kind ? BY_KIND[kind] : undefined) ?? []
      const text = measures
        .filter(({ unless }) => unless === undefined || !fired.has(unless))
        .map((measure) => measure.text)
        .join(' ')
      return text ? [{ contaminant, text, sources: [...PREVENTION_SOURCES] }] : []
    })
}
