import { curveOf } from '../../coil/decide/reading.ts'
import { COIL_PARAMETERS } from '../../coil/parameters.ts'
import { pieceOf } from '../../coil/piece/piece.ts'
import { hearing } from '../../coil/scene.ts'
import { situationOf } from '../../coil/situation.ts'
import type { CoilMachine } from '../../contract/index.ts'
import type { Exercise, Question } from '../exercise.ts'
import { mm } from '../numbers.ts'
import { once } from '../once.ts'
import { briefOf, machineOf, nameOf, withCoil } from '../practice.ts'
import type { Voice } from '../voice.ts'

const ANGLES = Array.from({ length: 19 }, (_, step) => step * 5)
const LENGTH_MM = 10

/** A wire in dry biscuits, turned from lying along the travel (0°) to across it (90°). */
function turned(material: string) {
  const practice = {
    product: { food: 'biscuit' },
    point: { heightMm: 40 },
    contaminants: [{ material, shape: 'wire' as const, lengthMm: LENGTH_MM }],
  }
  const seen = withCoil(practice)
  return once(() => {
    const { assessment, point } = seen()
    const [finding] = assessment.findings
    const brief = briefOf(practice)
    const situation = situationOf(machineOf('coil-single') as CoilMachine, point)
    const scene = situation.sceneAt(situation.conductivity.valueSPerM, 'central')
    const listening = {
      hearing: hearing(
        scene,
        assessment.frequenciesKHz.map((kHz) => kHz * 1000),
        COIL_PARAMETERS,
      ),
      thresholdZ: assessment.thresholdZ,
      spread: assessment.spread,
    }
    const piece = pieceOf(brief.contaminants[0]!)!
    // A wire just too thin to be found both ways: half-way between the two sizes, on a ratio scale.
    const sizes = finding!.orientations.map(({ expectedMm }) => expectedMm ?? finding!.limitMm)
    const diameterMm = Math.sqrt(sizes[0]! * sizes[1]!)
    const chance = ANGLES.map((degrees) => {
      const alongShare = Math.cos((degrees * Math.PI) / 180) ** 2
      return curveOf(listening, piece, alongShare).chanceOf(diameterMm)
    })
    return { finding: finding!, diameterMm, chance }
  })
}

const stainless = turned('ss304')
const iron = turned('steel')

function questionOn(material: string, wire: ReturnType<typeof stainless>, { say, share }: Voice): Question {
  const { finding, diameterMm, chance } = wire
  const [along, across] = [chance[0]!, chance.at(-1)!]
  const weak = along < across ? 'along' : 'across'
  const size = (way: 'along' | 'across') =>
    finding.orientations.find(({ orientation }) => orientation === way)?.expectedMm ?? null
  const magnetic = material === 'steel'
  return {
    situation: say(
      `A bit of ${nameOf(material)} wire, ${LENGTH_MM} mm long and ${mm(diameterMm)} thick, lies in a box of dry biscuits that passes a metal detector (balanced coil).`,
      `A bit of ${nameOf(material)} wire lies in a box of biscuits. The box goes through a metal detector.`,
    ),
    facts: [
      { words: 'Wire', value: `${nameOf(material)}, ${LENGTH_MM} mm long, ${mm(diameterMm)} thick` },
      { words: 'Opening', value: 'the smallest usual one for the box' },
    ],
    ask: say('In which lie is it found least?', 'How must it lie to slip through?'),
    scene: {
      kind: 'turned',
      title: 'The wire between the loops of the detector, seen from above',
      turns: [
        { angleDeg: 0, words: 'along the travel' },
        { angleDeg: 90, words: 'across the travel' },
      ],
    },
    answer: {
      kind: 'choice',
      choices: [
        { id: 'along', words: 'Along the travel' },
        { id: 'across', words: 'Across the travel' },
        { id: 'neither', words: 'It makes no difference' },
      ],
      right: Math.abs(along - across) < 0.05 ? 'neither' : weak,
    },
    outcome: say(
      `Found ${share(along)} of the time along the travel, ${share(across)} across it.`,
      `Found lying along the belt: ${share(along)}; lying across it: ${share(across)}.`,
    ),
    reason: [
      magnetic
        ? say(
            'The field of the coil runs along the travel. A magnetic wire gathers it when it lies along it, like a compass needle, and answers strongly; across it the field passes by and only the thin diameter counts.',
            'Iron acts like a compass needle. Lying along the belt it gathers the field of the detector and shouts. Lying across, it stays quiet.',
          )
        : say(
            'Stainless wire does not gather the field; it answers by the currents that run round in it. Across the field they find the longer way to run, along it they have only the round of the thin wire.',
            'This steel is not magnetic. It answers by small currents that run inside it. Lying along the belt, the currents have only the thin round of the wire.',
          ),
      say(
        `Expected diameters: ${mm(size('along'))} along the travel, ${mm(size('across'))} across it.`,
        'So a wire in a test must be run both ways. One way alone fools you.',
      ),
    ],
    pictures: [
      {
        kind: 'curves',
        title: `The same wire turned: ${nameOf(material)}`,
        x: { words: say('Angle to the travel', 'Turned by'), unit: '°' },
        y: { words: say('Chance of finding', 'Found of 100'), unit: say('%', '') },
        curves: [
          {
            words: `${nameOf(material)}, ${mm(diameterMm)} thick`,
            points: ANGLES.map((degrees, at) => [degrees, chance[at]! * 100] as const),
            nameAt: 45,
          },
        ],
        marks: [
          { x: 0, words: 'along', choice: 'along' },
          { x: 90, words: 'across', choice: 'across' },
        ],
      },
    ],
  }
}

/** Which way a wire slips through a metal detector. */
export const turningAWire: Exercise = {
  id: 'turning-a-wire',
  title: () => 'Turning a wire',
  about: () => 'The same bit of wire, lying along the belt or across it.',
  teaches: ({ say }) =>
    say(
      'Which lie hides a wire depends on its metal: iron hides across the travel, stainless steel along it.',
      'A wire can hide by how it lies, and iron hides the other way than stainless steel.',
    ),
  timed: false,
  count: 2,
  rests:
    'Metal detector model: long round wire along and across the field, spheroid for the short magnetic one.',
  questions: (voice) => [questionOn('ss304', stainless(), voice), questionOn('steel', iron(), voice)],
}
