import type { FactDefinition, FactScope } from './fact-definition.ts'

type Row = readonly [
  id: string,
  label: string,
  unit: FactDefinition['unit'],
  type: FactDefinition['type'],
  values?: readonly string[],
]

const RECORD: readonly Row[] = [
  ['record.controls', 'controls in place', '', 'number'],
  ['record.pairs', 'pairs of hazard and control', '', 'number'],
  ['record.demonstrated', 'pairs shown by trials on the product', '', 'number'],
  ['record.ccps', 'pairs classed critical control point', '', 'number'],
  ['record.openHazards', 'hazards that nothing here controls', '', 'number'],
  ['record.openNames', 'names of those hazards', '', 'string'],
  ['record.xray', 'an x-ray machine among the controls', '', 'boolean'],
  ['record.finds', 'lines of the finds log', '', 'number'],
  ['record.toConfirm', 'assumptions nobody confirmed', '', 'number'],
  ['record.overruled', 'answers of a person that overrule', '', 'number'],
  ['record.author', 'who answers for the register', '', 'string'],
  ['record.flowConfirmed', 'the flow was confirmed on site', '', 'boolean'],
  ['record.animalFood', 'food for animals', '', 'boolean'],
]

const HAZARD: readonly Row[] = [
  ['hazard.severity', 'severity', '', 'number'],
  ['hazard.likelihood', 'likelihood', '', 'number'],
  ['hazard.controls', 'controls in place on the line', '', 'number'],
  ['hazard.seenBy', 'controls that see it', '', 'number'],
  ['hazard.programmes', 'programmes named where it enters', '', 'string'],
  ['hazard.programmeCount', 'number of those programmes', '', 'number'],
  ['hazard.incidenceKnown', 'how much arrives is known from finds', '', 'boolean'],
  ['hazard.entersBehind', 'enters behind the last control', '', 'boolean'],
  ['hazard.acceptableGiven', 'an acceptable level was set', '', 'boolean'],
  ['hazard.afterAYear', 'pieces of concern estimated to pass a year', '', 'number'],
  ['hazard.workingShareRules', 'the working share makes up most of the estimate', '', 'boolean'],
  ['hazard.workingShare', 'working share of the last control', '%', 'number'],
  ['hazard.complaints', 'pieces reported by customers', '', 'number'],
  ['hazard.devices', 'devices ahead of the detectors that act on it', '', 'number'],
  ['hazard.deviceNames', 'names of those devices with the share each takes out', '', 'string'],
  ['hazard.reworkFrom', 'step that sends rework back', '', 'string'],
  ['hazard.reworkTo', 'step where rework comes back in', '', 'string'],
  ['hazard.reworkBehind', 'rework comes back in behind the last control that sees it', '', 'boolean'],
  ['hazard.allAYear', 'pieces of all sizes estimated to pass a year', '', 'number'],
]

const SEEN = ['yes', 'partly', 'no'] as const

const CONTROL: readonly Row[] = [
  ['control.label', 'machine', '', 'string'],
  ['control.family', 'family of the machine', '', 'string'],
  ['control.severity', 'severity of the hazard', '', 'number'],
  ['control.severityWords', 'severity in words', '', 'string'],
  ['control.likelihood', 'likelihood of the hazard', '', 'number'],
  ['control.likelihoodWords', 'likelihood in words', '', 'string'],
  ['control.significance', 'significance by the look-up', '', 'string', ['low', 'moderate', 'significant']],
  ['control.programmes', 'programmes named where it enters', '', 'string'],
  ['control.programmeCount', 'number of those programmes', '', 'number'],
  ['control.sees', 'whether it sees the piece', '', 'string', SEEN],
  ['control.worstShapeFoundPct', 'long pieces found of the shape it sees worst', '%', 'number'],
  ['control.bestShapeFoundPct', 'long pieces found of the shape it sees best', '%', 'number'],
  ['control.worstShape', 'shape it sees worst', '', 'string'],
  ['control.laterPoint', 'later control that sees it', '', 'string'],
  ['control.laterCarries', 'a later control sees it and nothing enters in between', '', 'boolean'],
  ['control.lastSeeing', 'no later control of the line sees it', '', 'boolean'],
  ['control.earlierWords', 'controls ahead of it that see the piece too, in brackets', '', 'string'],
  ['control.shown', 'shown by a trial on the product', '', 'boolean'],
  ['control.predicted', 'a size is predicted', '', 'boolean'],
  ['control.predictedMm', 'size predicted, safe to promise', 'mm', 'number'],
  ['control.demonstratedMm', 'size demonstrated', 'mm', 'number'],
  ['control.intervalGiven', 'time between checks is set', '', 'boolean'],
  ['control.seenWithinMin', 'a failure is seen within', 'min', 'number'],
  ['control.holder', 'who holds and releases', '', 'string'],
  ['control.holderNamed', 'somebody is named who holds and releases', '', 'boolean'],
]

const CLASSED: readonly Row[] = [
  ...([1, 2, 3, 4, 5, 6, 7, 8] as const).map(
    (n): Row => [`classed.asksQ${n}`, `question ${n} is reached`, '', 'boolean'],
  ),
  ['classed.class', 'class', '', 'string', ['CCP', 'OPRP', 'PRP', 'not-controlled-here', 'undecided']],
  ['classed.pieces', 'test pieces of the check', '', 'string'],
  ['classed.intervalMin', 'time between checks', 'min', 'number'],
  ['classed.intervalKnown', 'time between checks is set', '', 'boolean'],
  ['classed.validationOwed', 'rests on prediction', '', 'boolean'],
  ['classed.validationBy', 'day by which it is to be validated', '', 'string'],
  ['classed.pieceCheckIsMonitoring', 'the piece check is called monitoring', '', 'boolean'],
]

const CHECK: readonly Row[] = [
  ['check.label', 'machine', '', 'string'],
  ['check.family', 'family of the machine', '', 'string'],
  [
    'check.arrangement',
    'arrangement of a metal detector',
    '',
    'string',
    ['tunnel', 'free-fall', 'pipe', 'none'],
  ],
  ['check.intervalKnown', 'time between checks is set', '', 'boolean'],
  ['check.intervalMin', 'time between checks', 'min', 'number'],
  ['check.heldPacks', 'held when a check fails', '', 'number'],
  ['check.unit', 'what is counted', '', 'string', ['packs', 'kg']],
  ['check.laterControl', 'a later control sees the same pieces', '', 'boolean'],
  ['check.metals', 'contaminants of metal', '', 'number'],
  ['check.standIns', 'contaminants of glass, stone or bone', '', 'number'],
  ['check.pieceNames', 'test pieces of the check', '', 'string'],
  ['check.pieceCount', 'number of test pieces', '', 'number'],
  ['check.piecesVerify', 'pieces no larger than the size to find', '', 'string'],
  ['check.piecesLarger', 'pieces larger than the size to find', '', 'string'],
  ['check.piecesNone', 'sizes that no piece of the series verifies', '', 'string'],
  ['check.piecesByLogit', 'pieces that a logit would choose otherwise', '', 'string'],
  ['check.pieceCurve', 'curve by which pieces were chosen', '', 'string'],
  ['check.rejectType', 'how a bad pack is taken out', '', 'string'],
  ['check.rejectGiven', 'how a bad pack is taken out was said', '', 'boolean'],
  ['check.rejectPossible', 'the timing of the reject works', '', 'boolean'],
  ['check.rejectTiming', 'what is known of the timing', '', 'string', ['belt', 'fall', 'missing', 'none']],
  ['check.neededGapMm', 'gap the reject needs', 'mm', 'number'],
  ['check.shortestGapMm', 'shortest gap seen', 'mm', 'number'],
  ['check.keyHolder', 'who holds the key of the reject bin', '', 'string'],
  ['check.keyHolderNamed', 'somebody is named for the key of the reject bin', '', 'boolean'],
  ['check.falseRejectsPerDay', 'good packs rejected a day', 'per day', 'number'],
]

const define = (scope: FactScope, rows: readonly Row[]): FactDefinition[] =>
  rows.map(([id, label, unit, type, values]) => ({
    id,
    label,
    unit,
    type,
    scope,
    ...(values ? { values } : {}),
  }))

/** Facts of the hazard register and the check plan, worked out once the machines are assessed. */
export const RECORD_FACTS: readonly FactDefinition[] = [
  ...define('record', RECORD),
  ...define('hazard', HAZARD),
  ...define('control', CONTROL),
  ...define('classed', CLASSED),
  ...define('check', CHECK),
]
