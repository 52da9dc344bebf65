import { BarDefs } from '../../../src/charts/size-bar.tsx'
import { Page } from '../../page.tsx'
import { axisOf } from '../sizes/size-axis.ts'
import { Part, type PartProps } from './part.tsx'

/** A part of the advice as a page of its own, for whoever reads without script or keeps the link. */
export function PartPage({ title, ...part }: PartProps & { title: string }) {
  return (
    <Page title={`Advice: ${title}`} packed={part.packed} here="advice">
      <h1 class="over">{title}</h1>
      <p>
        <a href={`/advice?b=${part.packed}`}>Back to the whole advice</a>
      </p>
      {part.part === 'ladder' ? <BarDefs axis={axisOf(part.advice)} /> : null}
      <Part {...part} />
    </Page>
  )
}
