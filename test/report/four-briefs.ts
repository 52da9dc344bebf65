import { demos } from '../../src/brief/demos.ts'
import type { BriefInput } from '../../src/contract/index.ts'

const demo = (id: string): BriefInput => demos.find((one) => one.id === id)!.brief
const sauce = demo('sauce-jar')
const { flow: _noFlow, ...sauceAnywhere } = sauce
const { labelClaims: _noClaims, ...chicken } = demo('chicken')
const nuts = demo('hazelnuts')
const powder = demo('milk-powder')

/** Briefs whose reports are read closely: a bag of grains, a jar and a pouch on two lines, meat with its bone, infants' powder. */
export const FOUR_BRIEFS: Readonly<Record<string, BriefInput>> = {
  bag: {
    ...nuts,
    finds: [
      { contaminant: 0, point: 'after packing', packs: 14_400_000, found: 21, events: 19, by: 'detector' },
    ],
    points: nuts.points.map((point) =>
      point.stage === 'packed'
        ? {
            ...point,
            reject: {
              type: 'pusher',
              distanceToRejectMm: 900,
              cycleMs: 1500,
              positionErrorMm: 25,
              shortestGapMm: 60,
            },
          }
        : point,
    ),
    answers: [
      { question: 'c0.p1.class', answer: 'PRP', because: 'the sorter ahead carries it, says the team' },
    ],
  },
  'jar and pouch': {
    ...sauceAnywhere,
    title: 'Tomato and herb sauce, glass jar and pouch',
    points: [
      { ...sauce.points[0]!, line: 'glass jar' },
      {
        name: 'after the pouch sealer',
        line: 'pouch',
        stage: 'packed',
        heightMm: 25,
        widthMm: 130,
        lengthMm: 180,
        massG: 300,
        parts: [{ material: 'pe', mm: 0.1, place: 'wrap' }],
        speedMPerMin: 20,
        packsPerMin: 60,
        hoursPerDay: 16,
        falseRejectsPerPack: 0.001,
        checkIntervalMin: 60,
        reactMin: 10,
      },
    ],
  },
  'meat with its bone': {
    ...chicken,
    title: 'Chicken thighs, bone in, tray',
    market: 'US',
    product: { ...chicken.product, boneIn: true },
  },
  "infants' powder": {
    ...powder,
    market: 'EU',
    finds: [{ contaminant: 1, packs: 9_000_000, found: 0, by: 'detector' }],
  },
}
