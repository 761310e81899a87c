/** How things are done in the yard: an act in five steps, the words, the first round; and the list of all of them. */
import type { Child } from 'hono/jsx'
import { Drawing } from '../../drawings/index.ts'
import { Crumb, type Frame, howPath, Layout, Steps } from '../../parts/index.ts'
import { ACTS, type Act } from '../../words/index.ts'
import { DRAWN } from './drawn.ts'
import { GLOSSARY } from './glossary.ts'

interface HowProps {
  frame: Frame
}

const HowPage = ({ frame, title, children }: HowProps & { title: string; children: Child }) => (
  <Layout frame={frame} title={title}>
    <Crumb to="/how">{frame.words.how.title}</Crumb>
    <h1>{title}</h1>
    {children}
  </Layout>
)

export const HowIndexPage = ({ frame }: HowProps) => (
  <Layout frame={frame} title={frame.words.how.title}>
    <h1>{frame.words.how.title}</h1>
    <div class="buttons">
      <a class="button" href="/how/first-round">
        {frame.words.how.firstRoundTitle}
      </a>
      <a class="button" href="/how/words">
        {frame.words.how.words}
      </a>
    </div>
    <ul class="how-list">
      {ACTS.map((act) => (
        <li>
          <a class="tall" href={howPath(act)}>
            {frame.words.steps[act].title}
          </a>
        </li>
      ))}
    </ul>
    <p class="fine">{frame.words.how.alsoOnPhone}</p>
  </Layout>
)

export const ActPage = ({ frame, act }: HowProps & { act: Act }) => (
  <HowPage frame={frame} title={frame.words.steps[act].title}>
    <p class="soft">{frame.words.how.toHand(frame.words.steps[act].bring)}</p>
    <Steps act={act} />
    <div class="meant-in">
      {(DRAWN[act] ?? []).map((of) => (
        <Drawing of={of} caption={frame.words.drawings[of]} />
      ))}
    </div>
  </HowPage>
)

export const GlossaryPage = ({ frame }: HowProps) => (
  <HowPage frame={frame} title={frame.words.how.words}>
    {GLOSSARY.map((group) => (
      <section class="glossary">
        <h2>{frame.words.how.groups[group.group]}</h2>
        <dl>
          {group.terms.map((t) => (
            <div class="term" id={t.id}>
              <dt>{frame.words.how.terms[t.id].term}</dt>
              <dd>{frame.words.how.terms[t.id].means}</dd>
              {t.drawing === undefined ? null : (
                <dd class="term-drawn">
                  <Drawing of={t.drawing} />
                </dd>
              )}
            </div>
          ))}
        </dl>
      </section>
    ))}
  </HowPage>
)

export const FirstRoundPage = ({ frame }: HowProps) => (
  <HowPage frame={frame} title={frame.words.how.firstRoundTitle}>
    {frame.words.how.firstRound.map((part) => (
      <section>
        <h2>{part.title}</h2>
        <ul class="how-steps">
          {part.says.map((says) => (
            <li>{says}</li>
          ))}
        </ul>
      </section>
    ))}
    <div class="buttons">
      <a class="button button-do" href="/round">
        {frame.words.how.walk}
      </a>
      <a class="button" href="/how/words">
        {frame.words.how.words}
      </a>
    </div>
  </HowPage>
)
