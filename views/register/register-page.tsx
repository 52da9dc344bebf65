import type { Advice } from '../../src/contract/advice.ts'
import { Page } from '../page.tsx'
import { Confirm } from './confirm.tsx'
import { HazardSection } from './hazard-section.tsx'
import { inkOf, Sentences } from './ink.tsx'
import { Limits } from './limits.tsx'
import { Overview } from './overview.tsx'
import { Overruled, Plant, Review } from './review.tsx'
import { OfSeveral, oneLevel, ownSentences } from './several.tsx'

export interface RegisterPageProps {
  readonly advice: Advice
  readonly title: string
  readonly packed: string
}

/** The hazard register of a brief: everything a person may dispute, with where to change it. */
export function RegisterPage({ advice, title, packed }: RegisterPageProps) {
  const { register } = advice
  const ink = inkOf(advice, packed, false)
  const unitOf = (line: string) => register.lines.find(({ name }) => name === line)?.unit ?? 'packs'
  return (
    <Page title={`Hazard register: ${title}`} packed={packed} here="register">
      <h1>Hazard register</h1>
      <p class="standfirst">
        {title}. What can enter, what stands against it, what is estimated to get through, and whether a
        control is a critical control point (CCP), an operational prerequisite (OPRP) or a prerequisite (PRP).
        A draft for the team that answers for it; not legal advice.
      </p>
      <ul class="acts">
        <li>
          <a href={`/checks?b=${packed}`}>Check plan</a>
        </li>
        <li>
          <a href={`/report?b=${packed}`}>Print the report</a>
        </li>
        <li>
          <a href={`/brief?b=${packed}#finds`}>Log what was found</a>
        </li>
      </ul>
      <Sentences ink={ink} sentences={register.notes} />
      <section aria-labelledby="overview">
        <h2 id="overview">Hazards and their classes</h2>
        <Overview register={register} ink={ink} />
      </section>
      <section aria-labelledby="hazards">
        <h2 id="hazards">Hazard by hazard</h2>
        <OfSeveral register={register} ink={ink} />
        {register.hazards.map((hazard) => (
          <HazardSection
            hazard={hazard}
            says={ownSentences(register, hazard.says)}
            unit={unitOf(hazard.line)}
            ink={ink}
            levelSaid={oneLevel(register)}
          />
        ))}
      </section>
      <Limits register={register} ink={ink} />
      <Confirm register={register} ink={ink} />
      <Overruled register={register} ink={ink} />
      <section aria-labelledby="plant">
        <h2 id="plant">Who answers for it</h2>
        <Plant register={register} ink={ink} />
      </section>
      <Review register={register} ink={ink} />
    </Page>
  )
}
