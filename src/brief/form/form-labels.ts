import { fieldAt } from './form-fields.ts'

/** What a field is called on the page, and one short sentence beside it. */
interface Label {
  readonly label: string
  readonly hint?: string
}

const PRODUCT: Readonly<Record<string, Label>> = {
  food: { label: 'Food', hint: 'The nearest in the list, or your own composition.' },
  'composition.waterPct': { label: 'Water' },
  'composition.proteinPct': { label: 'Protein' },
  'composition.fatPct': { label: 'Fat' },
  'composition.carbohydratePct': { label: 'Carbohydrate' },
  'composition.ashPct': { label: 'Ash (minerals)' },
  densityGPerCm3: { label: 'Density of the food itself', hint: 'Without the air between pieces.' },
  structure: { label: 'Structure' },
  grainMm: { label: 'Grain size', hint: 'Of a kernel or piece; of plates, their thickness.' },
  packing: { label: 'Fill fraction', hint: 'Share of the filled space that is food, not air.' },
  unevennessMm: { label: 'Unevenness', hint: 'How much the thickness wavers (rms) over 2 to 20 mm.' },
  stiff: { label: 'Stiff food', hint: 'Yes where a piece stays where it fell, as in honey or set yoghurt.' },
  voidFree: { label: 'Free of bubbles and voids', hint: 'Yes only where no air pocket ever occurs.' },
  temperatureC: { label: 'Temperature', hint: 'The highest it passes the machine at.' },
  saltPct: { label: 'Salt' },
  ironMgPerKg: { label: 'Added iron' },
  conductivitySPerM: { label: 'Electrical conductivity', hint: 'Measured in the food, where you have it.' },
  boneIn: {
    label: 'Bone left in',
    hint: 'Yes where bone belongs in the food: wings, chops, whole birds or fish.',
  },
  foodClass: { label: 'Class of the food', hint: 'Decides which law speaks; needed for a food of your own.' },
}

const POINT: Readonly<Record<string, Label>> = {
  name: { label: 'Name of the point', hint: 'As people on the line call it.' },
  stage: { label: 'How the food passes' },
  heightMm: { label: 'Height of the food', hint: 'Inside of the pack, without its packaging.' },
  filledMm: { label: 'Filled height', hint: 'Where the food fills less; else its mass tells.' },
  widthMm: { label: 'Width of the food', hint: 'Across the direction of travel.' },
  lengthMm: {
    label: 'Length of the food',
    hint: 'Along the travel; with no packs, the length taken as one.',
  },
  massG: { label: 'Mass of a pack' },
  outline: { label: 'Outline' },
  inserts: { label: 'Inserts', hint: 'Separated by commas: clip, oxygen-absorber, metal-ring.' },
  speedMPerMin: { label: 'Speed' },
  packsPerMin: { label: 'Packs' },
  kgPerHour: { label: 'Throughput' },
  lanes: { label: 'Lanes side by side' },
  hoursPerDay: { label: 'Running time per day' },
  falseRejectsPerPack: { label: 'False rejects you accept', hint: 'As a share, or like 1 in 1000.' },
  checkIntervalMin: { label: 'Time between checks' },
  reactMin: { label: 'Time to react' },
  apertureHeightMm: { label: 'Opening height', hint: 'Of the metal detector, where it is fixed.' },
  apertureWidthMm: { label: 'Opening width', hint: 'Of the metal detector, where it is fixed.' },
  largestHeightMm: {
    label: 'Height of the largest pack',
    hint: 'Where other products run through the same machine: of the tallest of them.',
  },
  largestWidthMm: {
    label: 'Width of the largest pack',
    hint: 'Of the widest of them, all lanes together.',
  },
  fallHeightMm: { label: 'Fall height', hint: 'Free fall above the opening.' },
  line: { label: 'Line', hint: 'Where packs run on lines beside each other: the name of this one.' },
  afterStep: { label: 'Stands behind the step', hint: 'As the step is called in the flow below.' },
  'reject.type': { label: 'How a bad pack is taken out' },
  'reject.distanceToRejectMm': {
    label: 'Distance to the reject',
    hint: 'From the beam or the coil, along the belt or down the fall.',
  },
  'reject.cycleMs': {
    label: 'Time of a reject',
    hint: 'To act and to be ready again; in free fall to decide and to open.',
  },
  'reject.positionErrorMm': { label: 'Error of position at the reject' },
  'reject.shortestGapMm': {
    label: 'Shortest gap seen',
    hint: 'Between packs, on a full line; not the mean.',
  },
  'productSignal.amplitudePct': {
    label: 'Left of the food’s signal',
    hint: 'Largest of twenty clean packs once learned, as a share of the signal before.',
  },
  'productSignal.phaseDeg': {
    label: 'Phase wanders by',
    hint: 'Standard deviation over the same packs.',
  },
  'productSignal.readOn': { label: 'Read on', hint: 'Machine and day.' },
  pipeDiameterMm: { label: 'Pipe diameter', hint: 'Inside, for pumped or falling food.' },
}

const LABELS: Readonly<Record<string, Label>> = {
  title: { label: 'Title', hint: 'Printed at the head of the advice.' },
  market: { label: 'Market' },
  consumer: { label: 'Who eats it' },
  readyToEat: {
    label: 'Eaten as it is, or only heated',
    hint: 'Yes unless a later step would take a hard piece out, such as sifting.',
  },
  labelClaims: {
    label: 'Claims on the label',
    hint: 'Those that make a natural part a defect: boneless, pitted.',
  },
  points: { label: 'Inspection points' },
  'points.parts': { label: 'Packaging' },
  'points.parts.material': { label: 'Packaging material' },
  'points.parts.mm': { label: 'Thickness of one layer' },
  'points.parts.place': { label: 'Place' },
  'points.parts.unevennessMm': { label: 'Unevenness of the part' },
  'points.parts.sheetOhmPerSquare': { label: 'Sheet resistance' },
  contaminants: { label: 'Contaminants' },
  'contaminants.material': { label: 'Contaminant material' },
  'contaminants.ownName': { label: 'Name of your material' },
  'contaminants.kind': { label: 'Kind', hint: 'Metals are in the list: they need electrical constants too.' },
  'contaminants.densityGPerCm3': { label: 'Density of your material' },
  'contaminants.elements': {
    label: 'Elements, per cent by mass',
    hint: 'Symbol and share, together 100: O 49, Si 33, Al 18.',
  },
  'contaminants.shape': { label: 'Shape' },
  'contaminants.lengthMm': { label: 'Wire length' },
  'contaminants.faceMm2': { label: 'Flake face' },
  'contaminants.placement': { label: 'Where it lies' },
  'contaminants.mustFindMm': {
    label: 'Size you must find',
    hint: 'Diameter of a sphere or wire, thickness of a flake.',
  },
  'contaminants.basis': { label: 'Why that size' },
  'contaminants.severity': { label: 'Severity' },
  'contaminants.likelihood': { label: 'Likelihood' },
  'contaminants.foundPerMillionPacks': { label: 'Found per million packs' },
  'contaminants.entersAt': { label: 'Where it enters' },
  'contaminants.entries': { label: 'Steps where it enters, with shares' },
  'contaminants.entries.step': { label: 'Enters at the step' },
  'contaminants.entries.share': { label: 'Share that enters there', hint: 'Of all its pieces: 0.6.' },
  finds: { label: 'Pieces found' },
  'finds.contaminant': { label: 'Of contaminant', hint: 'Its number, counted from 0.' },
  'finds.point': { label: 'Found at' },
  'finds.packs': { label: 'In so many packs', hint: 'Inspected in the time of this log.' },
  'finds.found': { label: 'Pieces found' },
  'finds.events': { label: 'Events', hint: 'One broken screen is one event, whatever it shed.' },
  'finds.by': { label: 'Found by' },
  'finds.date': { label: 'Date' },
  'finds.lengthMm': { label: 'Longest length' },
  'finds.widthMm': { label: 'Width of the piece' },
  'finds.thicknessMm': { label: 'Thickness of the piece' },
  'finds.confirmedBy': { label: 'Confirmed by' },
  answers: { label: 'Answers of the register' },
  'answers.question': { label: 'Question' },
  'answers.answer': { label: 'Answer' },
  'answers.because': { label: 'Reason' },
  confirmed: { label: 'Assumptions confirmed' },
  'confirmed.what': { label: 'Assumption' },
  'confirmed.by': { label: 'Confirmed by' },
  'confirmed.date': { label: 'Date' },
  measured: { label: 'Machines measured in trials' },
  'measured.point': { label: 'Inspection point' },
  'measured.equipment': { label: 'Machine' },
  'measured.contaminant': { label: 'Of contaminant', hint: 'Its number, counted from 0.' },
  'measured.setting': { label: 'Setting' },
  'measured.serial': { label: 'Plate number' },
  'measured.date': { label: 'Day of the trial' },
  'measured.ranOn': { label: 'What it ran on' },
  'measured.cleanRun': { label: 'Clean run' },
  'measured.cleanRun.packs': { label: 'Clean packs' },
  'measured.cleanRun.rejects': { label: 'Of these rejected' },
  'measured.productSignal': { label: 'Largest signal of a clean pack' },
  'measured.productSignalMm': { label: 'Size of the piece with that signal' },
  'measured.constants': { label: 'What the trial made of the prediction' },
  'measured.constants.sizeFactor': { label: 'Predicted sizes times' },
  'measured.constants.sizeSpread': { label: 'Spread of the 90 % size' },
  'measured.constants.steepness': { label: 'Steepness times' },
  demonstrated: { label: 'Sizes shown in trials' },
  'demonstrated.point': { label: 'Inspection point' },
  'demonstrated.equipment': { label: 'Machine' },
  'demonstrated.contaminant': { label: 'Of contaminant', hint: 'Its number, counted from 0.' },
  'demonstrated.setting': { label: 'Setting' },
  'demonstrated.serial': { label: 'Plate number' },
  'demonstrated.date': { label: 'Day of the trial' },
  'demonstrated.ranOn': { label: 'What it ran on' },
  'demonstrated.sizeMm': { label: 'Size shown' },
  'demonstrated.basis': { label: 'Shown by' },
  'demonstrated.packs': { label: 'Packs of the trial' },
  'demonstrated.position': { label: 'Place of the pieces' },
  flow: { label: 'Steps of the line' },
  'flow.step': { label: 'Step' },
  'flow.entersHere': { label: 'What can enter here', hint: 'Separated by commas.' },
  'flow.upstreamControl': { label: 'Control in place' },
  'flow.rework': { label: 'Rework goes back from here' },
  quotes: { label: 'Sizes a supplier quoted' },
  'quotes.equipment': { label: 'Equipment quoted' },
  'quotes.material': { label: 'Test piece material' },
  'quotes.shape': { label: 'Test piece shape' },
  'quotes.lengthMm': { label: 'Test wire length' },
  'quotes.faceMm2': { label: 'Test flake face' },
  'quotes.sizeMm': { label: 'Quoted size' },
  'quotes.obtained': { label: 'How it was obtained' },
  'quotes.position': { label: 'Position of the test piece' },
  'quotes.runs': { label: 'Runs' },
  'quotes.falseRejectsPerPack': { label: 'False rejects per pack' },
  equipment: { label: 'Machines to compare' },
  machines: { label: 'Machines described as JSON' },
  quoted: { label: 'Machines as quoted' },
  'quoted.kind': { label: 'Nearest kind', hint: 'What the quote leaves open is taken from it.' },
  'quoted.label': { label: 'Your name for it' },
  'quoted.lowestKV': { label: 'Lowest tube voltage', hint: 'The same as the highest where it is fixed.' },
  'quoted.highestKV': { label: 'Highest tube voltage' },
  'quoted.maxMA': { label: 'Highest tube current' },
  'quoted.maxPowerW': { label: 'Tube power' },
  'quoted.pixelMm': { label: 'Pixel size', hint: 'Of the detector itself.' },
  'quoted.sourceToDetectorMm': { label: 'Source to detector' },
  'quoted.magnification': { label: 'Magnification', hint: 'Source to detector over source to food.' },
  'quoted.filterAlMm': { label: 'Aluminium filter' },
  'quoted.beltMm': { label: 'Belt thickness in the beam' },
  'quoted.maxLinesPerSecond': { label: 'Line rate of the detector' },
  'quoted.frequenciesKHz': { label: 'Frequencies', hint: 'In kHz, separated by semicolons: 50; 300.' },
  'quoted.mostAtOnce': { label: 'Frequencies at once' },
  'quoted.apertureHeightMm': { label: 'Height of its opening' },
  'quoted.apertureWidthMm': { label: 'Width of its opening' },
  'quoted.maxWidthMm': { label: 'Widest pack it takes' },
  'quoted.maxHeightMm': { label: 'Highest pack it takes' },
  'quoted.burden': { label: 'Cost and effort, 1 to 5', hint: 'Purchase, upkeep, space and skill together.' },
}

function labelAt(path: string): Label | undefined {
  const bare = path.replace(/\.\d+(?=\.|$)/g, '')
  const product = /^(?:points\.)?product\.(.+)$/.exec(bare)?.[1]
  if (product) return PRODUCT[product]
  return LABELS[bare] ?? POINT[bare.replace(/^points\./, '')]
}

/** The words for a field, e.g. "Height of the food"; the path itself where the form has no such field. */
export function labelOf(path: string): string {
  return labelAt(path)?.label ?? path
}

/** One sentence that helps to answer; empty where the label says it all. */
export function hintOf(path: string): string {
  return labelAt(path)?.hint ?? ''
}

const plain = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 9 })

/** The range the brief accepts, e.g. "1 to 2000 mm"; empty for words and choices. */
export function rangeOf(path: string): string {
  const field = fieldAt(path)
  if (field?.kind !== 'measure') return ''
  return `${plain.format(field.min)} to ${plain.format(field.max)} ${field.unit}`.trim().replace('-', '−')
}

/** What to do about an answer that is needed and empty. */
export function askFor(path: string): string {
  const label = labelOf(path).toLowerCase()
  const field = fieldAt(path)
  const verb = field?.kind === 'measure' ? 'Enter' : 'Choose'
  const row = /\.(\d+)\.[^.]+$/.exec(path)?.[1]
  return `${verb} the ${label}${row ? ` in row ${Number(row) + 1}` : ''}`
}
