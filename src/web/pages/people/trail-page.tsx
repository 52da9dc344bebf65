import { TrailPage } from '../../../../views/people/trail-page.tsx'
import type { Handler } from '../../people/within.ts'
import { showPage } from '../../show-page.ts'
import { signedInAs } from './signed-in-as.ts'

export const trailPage: Handler = async (c, store, visitor) =>
  showPage(c, <TrailPage who={signedInAs(visitor)} done={await store.trail.latest(visitor.workspace)} />)
