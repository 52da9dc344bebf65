export interface Term {
  /** Stands in the address. */
  readonly id: string
  readonly term: string
  /** Other forms of the word by which it is met on pages. */
  readonly also?: readonly string[]
  /** Met in other senses too, so it is not linked where it stands alone. */
  readonly everyday?: true
  /** Two sentences. */
  readonly means: string
}

/** The words of these pages; where the trade uses a word differently, the second sentence says so. */
export const TERMS: readonly Term[] = [
  {
    id: 'assumed',
    term: 'assumed',
    means:
      'A value nobody entered, filled in with a range. The range widens what can be promised until somebody measures it.',
  },
  {
    id: 'attenuation',
    term: 'attenuation',
    means:
      'How strongly a material weakens x-rays. It grows with density and steeply with heavy atoms such as calcium, chlorine or iron.',
  },
  {
    id: 'best-possible',
    term: 'best possible',
    means:
      'The size that food and pack allow even to an ideal machine of that kind. A promise below it cannot hold, whoever makes it.',
  },
  {
    id: 'blind',
    term: 'blind',
    means:
      'A place in which a piece is found at no size computed. Nothing of a check elsewhere in the pack speaks for it.',
  },
  {
    id: 'brief',
    term: 'brief',
    everyday: true,
    means:
      'What you enter: product, inspection points, contaminants and what must be found. Everything on these pages is worked out from it.',
  },
  {
    id: 'chance-of-finding',
    term: 'chance of finding',
    means:
      'Of many such pieces, the share that is found. It is a smooth curve over size, so there is no size below which nothing and above which everything is found.',
  },
  {
    id: 'check-interval',
    term: 'time between checks',
    also: ['check interval'],
    means:
      'How long a line runs between two checks with test pieces. Together with the time to react it decides how many packs a failed check holds.',
  },
  {
    id: 'check',
    term: 'routine check',
    means:
      'Test pieces run through at fixed times to see that the machine finds and rejects. It shows that the machine works as it did, not how small a piece it finds.',
  },
  {
    id: 'clean-run',
    term: 'clean run',
    means:
      'Good packs run to count false rejects. Without one a size says nothing, because any machine finds more when it may reject more.',
  },
  {
    id: 'critical-control-point',
    term: 'critical control point',
    means:
      'A critical control point (CCP) is a step at which control is essential to keep a hazard at an acceptable level. Whether a detector is one follows from the hazard and the other controls, and is decided by your own team.',
  },
  {
    id: 'critical-limit',
    term: 'critical limit',
    means:
      'The measurable value that parts acceptable from unacceptable at a critical control point. For a detector it is that all test pieces are found and rejected, not a size in the food.',
  },
  {
    id: 'density-separator',
    term: 'density separator',
    means:
      'Air or water that carries off what settles more slowly or faster than the food. It takes out a share of the pieces and looks at none.',
  },
  {
    id: 'dual-energy',
    term: 'dual energy',
    means:
      'An x-ray machine that reads softer and harder rays apart and weighs the two against each other. It takes the grain pattern out of the picture where food and piece weaken the two in different proportion.',
  },
  {
    id: 'evidence',
    term: 'evidence',
    means:
      'What a rule or a number rests on: measured, published, computed, or common practice without a source. It is written beside each so that you can ask for better.',
  },
  {
    id: 'expected',
    term: 'expected',
    everyday: true,
    means:
      'The size found nine times in ten with usual values for everything not measured. Half of all real lines do worse, so it is not a promise.',
  },
  {
    id: 'false-reject',
    term: 'false reject',
    also: ['false rejects', 'false-reject rate', 'false alarm'],
    means:
      'A good pack taken out, because noise or the product looked like a piece. Given as one in so many packs, and as packs a day.',
  },
  {
    id: 'ferrous',
    term: 'mild steel',
    also: ['ferrous'],
    means:
      'Magnetic iron, the easiest metal for a metal detector. A check with it alone says nothing of stainless steel.',
  },
  {
    id: 'fill-fraction',
    term: 'fill fraction',
    means:
      'How much of the volume the food takes up, the rest being air between its pieces. Trade papers call it packing, which on a line means something else.',
  },
  {
    id: 'findable-size',
    term: 'findable size',
    means:
      'The smallest test ball above which every size is found nine times in ten at the false-reject rate asked. It belongs to one product, one pack and one place in it.',
  },
  {
    id: 'flake',
    term: 'flake',
    also: ['splinter'],
    means:
      'A flat piece, given by its thickness at a stated face. Lying flat to the beam it hides better than a ball of the same mass.',
  },
  {
    id: 'frequency',
    term: 'frequency',
    means:
      'How often a second the field of a metal detector changes, in kHz. Low ones are quieter in wet food, high ones hear stainless steel better.',
  },
  {
    id: 'grain-pattern',
    term: 'grain pattern',
    means:
      'Light and dark in an x-ray picture made by the pieces of food themselves. It does not go away with more x-rays or a slower belt.',
  },
  {
    id: 'hazard',
    term: 'hazard',
    means:
      'Something in food that can hurt: here a hard or sharp piece. Its weight in the register comes from how badly it hurts and how often it comes.',
  },
  {
    id: 'heel',
    term: 'heel',
    means:
      'The thick round where the wall of a jar turns into its base. The beam crosses much glass there, so glass in glass hides.',
  },
  {
    id: 'hold',
    term: 'on hold',
    also: ['packs on hold'],
    means:
      'Packs kept back because nobody knows whether they were looked at. After a failed check that is everything since the last good one until the line stood.',
  },
  {
    id: 'inspection-point',
    term: 'inspection point',
    means:
      'A place on the line where a machine can stand: loose on a belt, in free fall, in a pipe, or packed. The same machine finds different sizes at each.',
  },
  {
    id: 'likelihood',
    term: 'likelihood',
    means:
      'How often a hazard comes, from 1 to 5 with words beside each. Taken from finds and complaints where there are any.',
  },
  {
    id: 'metal-detector',
    term: 'metal detector',
    also: ['metal detector (balanced coil)', 'balanced coil'],
    means:
      'Coils around an opening: one sends a field, two listen and balance each other until metal passes. It hears what conducts or is magnetic, wet food among it.',
  },
  {
    id: 'metallised-film',
    term: 'metallised film',
    means:
      'Plastic film with a breath of aluminium on it. Closed around a pack it raises the sizes of a metal detector and is nothing to x-rays.',
  },
  {
    id: 'must-find',
    term: 'size you must find',
    also: ['must find'],
    means:
      'The size a law, a customer or the harm of a piece asks for. It is your input and not the machine’s.',
  },
  {
    id: 'noise',
    term: 'noise',
    means:
      'Everything in a reading that is not the piece: few x-rays, the pattern of the food, electronics, vibration. A piece is found when it stands out of it.',
  },
  {
    id: 'opening',
    term: 'opening',
    everyday: true,
    means:
      'The window of a metal detector the pack goes through. The larger it is, the larger a piece must be, and most so in its middle.',
  },
  {
    id: 'operational-prerequisite',
    term: 'operational prerequisite',
    means:
      'An operational prerequisite (OPRP) is a control measure for a significant hazard, with an action criterion instead of a critical limit. Missing it is put right without every pack since being condemned.',
  },
  {
    id: 'optical-sorter',
    term: 'optical sorter',
    means:
      'Cameras that look at a single layer and blow out what looks different. It sees surfaces only, and what lies under the food it does not see.',
  },
  {
    id: 'phase',
    term: 'phase',
    means:
      'The direction of an answer to a coil: in step with the field, behind it, or between. A machine learns the phase of the product and listens across it.',
  },
  {
    id: 'pixel-size',
    term: 'pixel size',
    also: ['pixels'],
    means:
      'The width of one reading of an x-ray detector. Finer ones help for wires and dense specks, hardly for stones.',
  },
  {
    id: 'product-effect',
    term: 'product signal',
    also: ['product effect', 'signal of the product'],
    means:
      'What a wet or salted food itself answers to a metal detector. Most of it can be learned; what varies from pack to pack hides metal.',
  },
  {
    id: 'reject',
    term: 'reject',
    everyday: true,
    means:
      'What takes a found pack off the line, and the pack itself. Finding and rejecting are two links, and each is proved for itself.',
  },
  {
    id: 'response-plane',
    term: 'response plane',
    means:
      'A drawing of answers to a coil: loss to the right, in step with the field upwards. What points in the same direction cannot be told apart at that frequency.',
  },
  {
    id: 'rule',
    term: 'rule',
    everyday: true,
    means:
      'A sentence of advice with the condition under which it is said, its exception and its source. All of them stand in the rule book.',
  },
  {
    id: 'safe-to-promise',
    term: 'safe to promise',
    also: ['promise no better'],
    means:
      'The size that nine of ten lines like yours would reach with everything unknown in its range. It speaks of sizes and is no word about the food being safe.',
  },
  {
    id: 'severity',
    term: 'severity',
    means:
      'How badly a piece can hurt the people who eat the food, from 1 to 5 with words beside each. Infants and patients raise it.',
  },
  {
    id: 'sieve',
    term: 'sieve',
    means:
      'A mesh that holds back what is larger than the food. Whatever is as small as the food goes through with it.',
  },
  {
    id: 'single-energy',
    term: 'single energy',
    means:
      'An x-ray machine that reads all rays together. In an even food it finds as much as one with two energies.',
  },
  {
    id: 'spread',
    term: 'unevenness',
    means:
      'How much the thickness of a food varies over distances of a few mm to a few cm. To x-rays a bump looks like a piece.',
  },
  {
    id: 'stainless',
    term: 'stainless steel',
    means:
      'Steel that hardly rusts; the usual kinds are not magnetic. A poor conductor and not magnetic, it is the hardest metal for a metal detector.',
  },
  {
    id: 'test-card',
    term: 'test card',
    means:
      'A card with pieces laid on the pack. It adds to the food, while a piece inside takes its place, so light pieces show better on the card than in the food.',
  },
  {
    id: 'test-piece',
    term: 'test piece',
    means:
      'A ball, wire or flake of known material and size, in a wand, ball or card. What a check shows is shown for that piece in that place.',
  },
  {
    id: 'threshold',
    term: 'threshold',
    means:
      'The reading above which a pack is rejected. It chooses between misses and false rejects and makes no machine better.',
  },
  {
    id: 'time-to-react',
    term: 'time to react',
    means: 'From the failed check until the line stands. Packs that go by in it are on hold as well.',
  },
  {
    id: 'transmission',
    term: 'let through',
    also: ['transmission'],
    means:
      'The share of x-rays that come through food and pack. Where hardly any do, the picture is all noise.',
  },
  {
    id: 'tube-voltage',
    term: 'tube voltage',
    means:
      'How hard the x-rays are, in kV. High enough to come through the pack, and no higher, for hard rays tell food and piece apart less.',
  },
  {
    id: 'upstream',
    term: 'upstream',
    means:
      'On the line before the point in question. What is kept out or taken out there need not be found later.',
  },
  {
    id: 'verification',
    term: 'verification',
    means:
      'Looking, now and then and by somebody else, whether what was planned is done and works. Monitoring is the check itself; verification asks whether the checks can be believed.',
  },
  {
    id: 'wall-edge',
    term: 'wall edge',
    means:
      'Where a beam grazes the wall of a standing container. It runs through far more glass or steel there than straight across.',
  },
  {
    id: 'wire',
    term: 'wire',
    means:
      'A long thin piece, given by its thickness at a stated length, in its weaker lie. Iron hides across the travel of a metal detector, stainless steel along it.',
  },
]
