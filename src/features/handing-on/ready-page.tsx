/** Which colonies can go, what is said before each leaves, and which soon can. */
import { colonyPath } from '../../app/index.ts'
import { BeforeItLeaves, type Frame, Layout, SpanOf } from '../../parts/index.ts'
import type { ReadyLine, SoonLine } from './ready.ts'

interface ReadyProps {
  frame: Frame
  ready: ReadyLine[]
  soon: SoonLine[]
  /** Customers' letters that it is time for. */
  letters: { tag: string; path: string }[]
  /** Gone about a season ago, and nobody has told how they fare. */
  ask: { tag: string; path: string }[]
}

export const ReadyPage = ({ frame, ready, soon, letters, ask }: ReadyProps) => (
  <Layout frame={frame} title="Handing on">
    <h1>Handing on</h1>
    <section class="section">
      <h2>{ready.length === 0 ? 'None is ready to go' : `Ready to go: ${ready.length}`}</h2>
      <p class="soft">
        Everything the yard asks for is met. One more look for disease before they go; a clean one is no
        clearance.
      </p>
      <ul class="jobs">
        {ready.map((line) => (
          <Ready line={line} />
        ))}
      </ul>
    </section>
    {soon.length === 0 ? null : (
      <section class="section">
        <h2>Within two weeks, by the brood dates</h2>
        <ul class="plain">
          {soon.map(({ summary, expected, missing }) => (
            <li>
              <a class="tag tall" href={colonyPath(summary)}>
                {summary.tag}
              </a>{' '}
              <SpanOf span={expected} today={frame.today} />{' '}
              <span class="soft">
                {missing} {missing === 1 ? 'thing' : 'things'} still missing
              </span>
            </li>
          ))}
        </ul>
      </section>
    )}
    {letters.length === 0 ? null : (
      <section class="section">
        <h2>Day 30: the customer’s letter</h2>
        <p>Nobody has told the customer yet how they are. Write the letter about</p>
        <p class="tags">
          {letters.map((l) => (
            <a class="tag tall" href={l.path}>
              {l.tag}
            </a>
          ))}
        </p>
      </section>
    )}
    {ask.length === 0 ? null : (
      <section class="section">
        <h2>A season later: how are they?</h2>
        <p>Ask the new keeper once; the review then knows what became of</p>
        <p class="tags">
          {ask.map((l) => (
            <a class="tag tall" href={l.path}>
              {l.tag}
            </a>
          ))}
        </p>
      </section>
    )}
  </Layout>
)

const Ready = ({ line: { summary, before, papers } }: { line: ReadyLine }) => {
  const path = colonyPath(summary)
  return (
    <li class="job">
      <div class="job-what">
        <a class="tag tall" href={path}>
          {summary.tag}
        </a>{' '}
        {summary.yard}
        {summary.stand === null ? '' : `, stand ${summary.stand}`}, {summary.day} days here
        {papers === 0 ? '' : `, ${papers} ${papers === 1 ? 'paper' : 'papers'}`}
        <BeforeItLeaves said={before} />
      </div>
      <div class="buttons">
        <a class="button button-do" href={`${path}/keeper-sheet`}>
          Sheet for the new keeper<span class="unseen">, {summary.tag}</span>
        </a>
        <a class="button" href={`${path}/move-record`}>
          Papers<span class="unseen"> of {summary.tag}</span>
        </a>
        <a class="button" href={`${path}/outcome?what=moved-out`}>
          It moved out<span class="unseen">: {summary.tag}</span>
        </a>
      </div>
    </li>
  )
}
