/** Addresses of the pages about one brief; `packed` is the brief as it stands in the link. */
export interface Links {
  readonly packed: string
}

export const trailLink = ({ packed }: Links, calculation: string) =>
  `/advice/trail?b=${packed}&id=${encodeURIComponent(calculation)}`

export const rulesLink = ({ packed }: Links, point: number, equipment: string) =>
  `/advice/rules?b=${packed}&point=${point}&equipment=${encodeURIComponent(equipment)}`

export const rulesPartLink = (links: Links, point: number, equipment: string) =>
  rulesLink(links, point, equipment).replace('/advice/rules', '/advice/rules/part')

/** The anchor of one option's reasons on the advice page. */
export const reasonsAnchor = (point: number, equipment: string) => `why-${point}-${equipment}`
