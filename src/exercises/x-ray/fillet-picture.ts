import { drawnSheets, pngPictures } from '../../card/drawn-sheet.ts'
import { taughtOn } from '../../card/taught-on.ts'
import type { XrayMachine } from '../../contract/index.ts'
import { buildOf } from '../../xray/beam/exposure.ts'
import { cardPacks, runCard } from '../../xray/image/card/test-card.ts'
import { exposePack } from '../../xray/image/pack/exposed-pack.ts'
import { PRACTICE } from '../../xray/observer/practice.ts'
import type { Taken } from '../exercise.ts'
import { once } from '../once.ts'
import { machineOf, type Seen } from '../practice.ts'

type Assessed = Parameters<typeof exposePack>[3]

/** One pack of all that could have been drawn. */
const SEED = 1

/** The pieces of a practice pack, each kind on a line of its own in these sizes, as an x-ray machine takes and reads them. */
export const radiographOf = (
  seen: () => Seen<{ readonly setting: Assessed }>,
  sizesMm: readonly number[],
  machineId = 'xray-single',
): (() => Taken) =>
  once(() => {
    const { point, brief, assessment } = seen()
    const machine = machineOf(machineId) as XrayMachine
    const build = buildOf(machine)
    const exposed = exposePack(machine, build, point, assessment.setting)
    const rows = brief.contaminants.map((what, contaminant) => ({
      contaminant,
      what,
      placement: what.placement,
      sizesMm,
    }))
    const packs = cardPacks(point, build.beam, SEED, rows)
    const done = runCard(exposed, packs, {
      reading: {
        gatheredWireMm: PRACTICE.gatheredWireMm,
        compositionResidual: PRACTICE.compositionResidual,
        falseRejectsPerPack: point.falseRejectsPerPack,
        taughtThreshold: taughtOn(exposed),
        largestMm: Math.max(...sizesMm),
      },
      runs: 1,
      cleanPacks: 0,
      taughtPacks: 0,
    })
    const [picture] = pngPictures(done.sheets, 'radiograph', SEED, machine.label ?? machine.id)
    return {
      sheet: drawnSheets(done.sheets, packs, done.threshold)[0]!,
      png: picture!.png,
      alt: picture!.alt,
    }
  })
