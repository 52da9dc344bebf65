import { Page } from '../page.tsx'

/** Where no inspection point of a brief has an x-ray machine: why there is no picture, and where to look instead. */
export function NoCardPage({ title, packed }: { title: string; packed: string }) {
  return (
    <Page title={`Simulated x-ray pictures: ${title}`} packed={packed} here="card">
      <p class="over-title">Simulated x-ray pictures</p>
      <h1>{title}</h1>
      <p>
        No x-ray machine over a belt stands at any inspection point of this brief, so there is no radiograph
        to draw: food in a pipe or in free fall is not drawn here. The{' '}
        <a href={`/advice?b=${packed}`}>advice</a> says what the other machines find, and{' '}
        <a href={`/trade-offs/metal-detector?b=${packed}`}>Trade-offs</a> shows how a metal detector hears the
        food and the metals. To see a card, add a point for loose or packed food to the{' '}
        <a href={`/brief?b=${packed}`}>brief</a>.
      </p>
    </Page>
  )
}
