import { containerOf } from '../../../src/charts/container-shapes.ts'
import { ContainerZones } from '../../../src/charts/container-zones.tsx'
import type { Zone } from '../../../src/contract/advice.ts'

const STATE_WORDS: Readonly<Record<Zone['state'], string>> = {
  findable: 'as good as the middle',
  degraded: 'worse',
  blind: 'hidden',
}

/** Beside the name there is room for a word or two. */
const shortWords = ({ name, state }: { name: string; state: Zone['state'] }): string =>
  state !== 'findable' ? STATE_WORDS[state] : name === 'body' ? 'the middle' : 'as good'

interface Props {
  readonly id: string
  readonly label: string
  readonly fromAbove: boolean
  /** Each zone with its worst state over the contaminants. */
  readonly zones: readonly { readonly name: string; readonly state: Zone['state'] }[]
}

/** The container with its zones; nothing where there is no drawing for it. The numbers stand in the table beneath. */
export function ZonePicture({ id, label, fromAbove, zones }: Props) {
  const names = zones.map(({ name }) => name)
  const container = containerOf(names)
  if (!container) return null
  const title = `Zones of the ${container} for ${label}`
  return (
    <figure class="zone-figure">
      <ContainerZones
        id={id}
        title={title}
        description={`${zones.map(({ name, state }) => `${name}: ${STATE_WORDS[state]}`).join('; ')}. The worst over all contaminants; sizes in mm stand in the table beneath.`}
        container={container}
        fromAbove={fromAbove}
        zones={zones.map((zone) => ({ ...zone, words: shortWords(zone) }))}
      />
      <figcaption class="small">
        {title}, {fromAbove ? 'cut open, the beam from above' : 'as the beam from the side sees it'}; not to
        scale. Blank: found as in the middle. Slanted: only larger pieces. Solid: hidden. Each zone shows its
        worst contaminant.
      </figcaption>
    </figure>
  )
}
