import { LIKELIHOOD_WORDS, SEVERITY_WORDS } from '../../src/register/class/look-up.ts'

/** "1: a nuisance, no harm" by number. */
const numbered = (words: readonly string[]) =>
  Object.fromEntries(words.map((word, at) => [at + 1, `${at + 1}: ${word}`]))

/** Words for the choices of the brief; each line ours. */
export const CHOICE_WORDS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  market: {
    US: 'United States',
    EU: 'European Union',
    UK: 'United Kingdom',
    GB: 'Great Britain',
    NI: 'Northern Ireland',
    other: 'Elsewhere',
  },
  consumer: {
    general: 'Anyone',
    infants: 'Infants',
    'elderly-or-patients': 'Elderly people or patients',
    animals: 'Animals',
  },
  foodClass: {
    'meat-or-poultry': 'Meat or poultry',
    fish: 'Fish or seafood',
    juice: 'Fruit or vegetable juice',
    other: 'None of these',
  },
  structure: {
    solid: 'One solid piece',
    granular: 'Grains or pieces with air between',
    powder: 'Powder',
    liquid: 'Liquid or paste',
    'pieces-in-liquid': 'Pieces in liquid',
    inclusions: 'Solid with inclusions',
    plates: 'Plates or flakes, stacked',
  },
  stage: {
    loose: 'Loose on a belt',
    pumped: 'Pumped in a pipe',
    'free-fall': 'Falling freely',
    packed: 'In packs, or as single pieces',
  },
  kind: {
    glass: 'Glass',
    stone: 'Stone or ceramic',
    bone: 'Bone or cartilage',
    polymer: 'Plastic or rubber',
    organic: 'Wood, shell, insect',
  },
  outline: { box: 'Box', cylinder: 'Standing cylinder' },
  place: {
    base: 'Base',
    lid: 'Lid',
    closure: 'Closure',
    tray: 'Tray',
    wrap: 'Wrap (sealed bag or film)',
    sleeve: 'Sleeve (closed tube)',
    wall: 'Wall',
  },
  shape: { sphere: 'Sphere', wire: 'Wire', flake: 'Flake' },
  placement: { inside: 'Inside the food', outside: 'On the pack, as on a test card' },
  basis: {
    injury: 'It injures',
    law: 'The law asks',
    customer: 'The customer asks',
    'best-achievable': 'As small as can be',
  },
  severity: numbered(SEVERITY_WORDS),
  likelihood: numbered(LIKELIHOOD_WORDS),
  type: {
    pusher: 'Pusher or swing arm',
    'air-jet': 'Air jet',
    drop: 'Drop section of the belt',
    diverter: 'Diverter to another lane',
    flap: 'Flap in the fall or the pipe',
    'stop-belt': 'The belt stops and somebody takes it out',
  },
  by: { detector: 'A detector', operator: 'Somebody at the line', customer: 'A customer' },
  obtained: { 'in-product': 'In our product', empty: 'With the machine empty', unknown: 'Not known' },
}

export function choiceWords(field: string, value: string): string {
  const words = CHOICE_WORDS[field]
  return words && Object.hasOwn(words, value) ? words[value]! : value
}
