import type { RunGroup } from '../../contract/index.ts'
import type { NoBound } from './curve-reading.ts'

const ENOUGH_PIECES = 60

const NO_BOUND: Record<NoBound, string> = {
  'too-few-mixed':
    'Not demonstrated by a curve: fewer than two sizes were found in some packs and missed in others, so the steepness is not known.',
  'no-slope': 'Not demonstrated by a curve: the runs do not show that larger pieces are found more often.',
  'beyond-largest':
    'Not demonstrated by a curve: the size it would show lies above the largest that was tried.',
}

const mm = (value: number) => `${Number(value.toFixed(2))} mm`

/** What was and was not shown, in sentences that may stand alone. */
export function groupWords(group: Omit<RunGroup, 'words'>, because: NoBound | null): string {
  return [
    shownWords(group),
    group.simulated || group.demonstrated?.basis === 'curve' || !because ? '' : NO_BOUND[because],
    fewWords(group),
    assumedWords(group),
  ]
    .filter(Boolean)
    .join(' ')
}

/** "on these 60 packs, on 2026-11-27, at setting 12". */
function where({ pieces, demonstrated, setting }: Omit<RunGroup, 'words'>): string {
  const packs = demonstrated?.packs ?? pieces
  const day = demonstrated?.date ? `on ${demonstrated.date}` : 'on a day the rows do not name'
  const locked = setting ? `at setting ${setting}` : 'at a setting the rows do not name'
  return `on these ${packs} packs, ${day}, ${locked}`
}

function shownWords(group: Omit<RunGroup, 'words'>): string {
  const { demonstrated, simulated, clean, exact } = group
  if (simulated) return 'Simulated runs: they show what the model does and demonstrate nothing of a machine.'
  if (demonstrated?.basis === 'curve')
    return `Found 9 times in 10 from ${mm(demonstrated.sizeMm)}, 95 % sure, ${where(group)}.`
  if (demonstrated) {
    const row = exact.find(({ sizeMm }) => sizeMm === demonstrated.sizeMm)!
    return `Found 9 times in 10 at ${mm(demonstrated.sizeMm)}, 95 % sure, by ${row.found} of ${row.runs} at that size, ${where(group)}.`
  }
  if (!clean)
    return 'Not demonstrated: no clean packs were run at this setting, so it is not known how much of this the machine rejects anyway. Run clean packs first.'
  return 'Not demonstrated: no size here is shown to be found 9 times in 10 with 95 % confidence.'
}

function fewWords(group: Omit<RunGroup, 'words'>): string {
  const { pieces, simulated } = group
  if (simulated) return ''
  const clustered = clusterWords(group)
  const few = pieces < ENOUGH_PIECES ? `${pieces} pieces are few for a curve; 60 is the usual least.` : ''
  return `${clustered} ${few}`.trim()
}

function clusterWords({ pieces, runs, clusters }: Omit<RunGroup, 'words'>): string {
  if (!clusters) return ''
  const counted = `${runs} runs of ${pieces} pieces:`
  const { likeness, designEffect } = clusters
  return likeness === null
    ? `${counted} several runs of one piece in one pack count once; too few pieces were missed and found to say how alike such runs are.`
    : `${counted} runs of one piece in one pack are alike (correlation ${likeness.toFixed(2)}), so that the curve counts ${clusters.counted.toFixed(1)} runs (design effect ${designEffect.toFixed(2)}); size by size a piece counts once, as found when every run found it.`
}

function assumedWords({ packsNamed, position, simulated }: Omit<RunGroup, 'words'>): string {
  if (simulated) return ''
  const packs = packsNamed ? '' : 'No pack is named: each run is taken for a pack of its own (assumed).'
  const place = position === '' ? 'The place in the pack is not named.' : ''
  return [packs, place].filter(Boolean).join(' ')
}
