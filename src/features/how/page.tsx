/** How things are done in the yard: an act in five steps, the words, the first round; and the list of all of them. */
import type { Child } from 'hono/jsx'
import { Drawing } from '../../drawings/index.ts'
import { type Frame, howPath, Layout, Steps } from '../../parts/index.ts'
import { ACTS, type Act, STEPS } from '../../words/index.ts'
import { DRAWN } from './drawn.ts'
import { FIRST_ROUND, GLOSSARY } from './words.ts'

interface HowProps {
  frame: Frame
}

const HowPage = ({ frame, title, children }: HowProps & { title: string; children: Child }) => (
  <Layout frame={frame} title={title}>
    <p class="crumb">
      <a href="/how">‹ How it is done</a>
    </p>
    <h1>{title}</h1>
    {children}
  </Layout>
)

export const HowIndexPage = ({ frame }: HowProps) => (
  <Layout frame={frame} title="How it is done">
    <h1>How it is done</h1>
    <div class="buttons">
      <a class="button" href="/how/first-round">
        Your first round
      </a>
      <a class="button" href="/how/words">
        Words and drawings
      </a>
    </div>
    <ul class="how-list">
      {ACTS.map((act) => (
        <li>
          <a class="tall" href={howPath(act)}>
            {STEPS[act].title}
          </a>
        </li>
      ))}
    </ul>
    <p class="fine">These pages are on this phone too, without signal.</p>
  </Layout>
)

export const ActPage = ({ frame, act }: HowProps & { act: Act }) => (
  <HowPage frame={frame} title={STEPS[act].title}>
    <p class="soft">To hand: {STEPS[act].bring}.</p>
    <Steps act={act} />
    <div class="meant-in">
      {(DRAWN[act] ?? []).map((of) => (
        <Drawing of={of} />
      ))}
    </div>
  </HowPage>
)

export const GlossaryPage = ({ frame }: HowProps) => (
  <HowPage frame={frame} title="Words and drawings">
    {GLOSSARY.map((group) => (
      <section class="glossary">
        <h2>{group.title}</h2>
        <dl>
          {group.terms.map((t) => (
            <div class="term" id={t.id}>
              <dt>{t.term}</dt>
              <dd>{t.means}</dd>
              {t.drawing === undefined ? null : <Drawing of={t.drawing} words={false} />}
            </div>
          ))}
        </dl>
      </section>
    ))}
  </HowPage>
)

export const FirstRoundPage = ({ frame }: HowProps) => (
  <HowPage frame={frame} title="Your first round">
    {FIRST_ROUND.map((part) => (
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
        Walk the round
      </a>
      <a class="button" href="/how/words">
        Words and drawings
      </a>
    </div>
  </HowPage>
)
