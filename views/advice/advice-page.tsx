import type { Advice } from '../../src/contract/advice.ts'
import { Page } from '../page.tsx'
import type { Names } from '../words/contaminant.ts'
import { linksTo } from './links.ts'
import { Changes } from './reasons/changes.tsx'
import { FirstScreen } from './sheet/first-screen.tsx'
import { Contents, Folds } from './sheet/folds.tsx'
import { Machines } from './sheet/machines.tsx'
import { Upstream } from './sheet/upstream.tsx'
import { Ladders } from './sizes/ladders.tsx'
import { Versions } from './versions.tsx'

export interface AdvicePageProps {
  readonly advice: Advice
  readonly title: string
  readonly names: Names
  readonly packed: string
  /** Size, speed and false rejects of each point, in words. */
  readonly pointLines: readonly string[]
  /** Where each change of the advice leads, in their order. */
  readonly changeLinks: readonly string[]
  /** True where an x-ray machine was compared, so that tube and dose can be opened. */
  readonly hasDose: boolean
}

/** The answer on one screen; below it what differs, the rest a click away. */
export function AdvicePage(props: AdvicePageProps) {
  const { advice, title, names, packed, pointLines, changeLinks, hasDose } = props
  const links = linksTo(packed, advice)
  return (
    <Page title={`Advice: ${title}`} packed={packed} here="advice">
      <FirstScreen advice={advice} title={title} names={names} links={links} />
      <Contents advice={advice} />
      <Ladders advice={advice} names={names} links={links} />
      <Machines advice={advice} names={names} links={links} pointLines={pointLines} />
      <Upstream advice={advice} names={names} links={links} />
      <Changes advice={advice} names={names} hrefs={changeLinks} packed={links.packed} />
      <Folds advice={advice} links={links} hasDose={hasDose} />
      <Versions advice={advice} packed={packed} printedOn={null} />
    </Page>
  )
}
