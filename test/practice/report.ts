/** Prints the common-practice readings with the predicted ones beside them (npm run practice). */
import { textTable } from '../../src/commands/text/text-table.ts'
import { PRACTICE } from '../../src/xray/observer/practice.ts'
import { CARD, cardReading, type Predicted, pieceNames, predict, stepsOff } from './card-model.ts'

const rows = predict(PRACTICE)
const group = (one: Predicted) => `${one.pack}, ${one.machine} (${one.kV} kV)`

function cell(one: Predicted): string {
  if (one.halfMm === null) return `${one.readMm} | –`
  const mark = ['=', '±'][Math.abs(stepsOff(one))] ?? '!'
  return `${one.readMm} | ${cardReading(one.piece, one.halfMm)} ${mark} (${one.halfMm.toFixed(2)})`
}

console.log(
  'Readings (common practice, no published source) | predicted card reading (size found every second time), mm',
)
console.log('= the same piece, ± one card step, ! more\n')
console.log(
  textTable(
    ['pack and machine', ...pieceNames],
    [...new Set(rows.map(group))].map((name) => [
      name,
      ...pieceNames.map((piece) => cell(rows.find((r) => group(r) === name && r.piece === piece)!)),
    ]),
  ),
)
const exact = rows.filter((r) => stepsOff(r) === 0).length
const near = rows.filter((r) => Math.abs(stepsOff(r)) <= 1).length
console.log(`\n${exact} of ${rows.length} exact, ${near} within one card step`)
const quartz = rows.find((r) => r.use === 'check' && r.machine === 'xray-single' && r.piece === 'quartz')!
const both = quartz.chance(2) * (1 - quartz.chance(3))
console.log(
  `thin pack, single energy, quartz: chance of 2 mm found ${quartz.chance(2).toFixed(2)}, of 3 mm found ${quartz.chance(3).toFixed(2)}; of 2 found while 3 is missed ${both.toFixed(3)}`,
)
console.log(
  `metal cards step ${CARD.wire.stepMm} mm, glass and quartz ${CARD.glass.stepMm} mm; constants:`,
  PRACTICE,
)
