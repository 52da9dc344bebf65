import { type DemoLink, DemoList } from './brief/demo-list.tsx'
import { Page } from './page.tsx'

export function ExamplesPage({ demos }: { demos: readonly DemoLink[] }) {
  return (
    <Page title="Examples" packed={null} here="examples">
      <h1>Examples</h1>
      <p class="standfirst">Invented briefs with plausible numbers; no plant or brand stands behind them.</p>
      <DemoList demos={demos} />
    </Page>
  )
}
