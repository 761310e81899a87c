/** Which colonies can go, what is said before each leaves, and which soon can. */
import { colonyPath } from '../../app/index.ts'
import { BeforeItLeaves, Fold, type Frame, Layout, SpanOf } from '../../parts/index.ts'
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

/** More than this under one heading is folded behind it (judgement: half a screen of a phone). */
const MOST_LINES = 12
const MOST_TAGS = 24

export const ReadyPage = ({ frame, ready, soon, letters, ask }: ReadyProps) => (
  <Layout frame={frame} title="Handing on">
    <h1>Handing on</h1>
    <section class="section">
      <h2>{ready.length === 0 ? 'None is ready to go' : `Ready to go: ${ready.length}`}</h2>
      <p class="soft">
        Everything the yard asks for is met. One more look for disease before they go; a clean one is no
        clearance.
      </p>
      <ul class="todos">
        {ready.map((line) => (
          <Ready line={line} open={ready.length === 1} />
        ))}
      </ul>
    </section>
    {soon.length === 0 ? null : (
      <Fold
        id="soon"
        title="Within two weeks, by the brood dates"
        says={String(soon.length)}
        open={soon.length <= MOST_LINES}
      >
        <ul class="soon">
          {soon.map(({ summary, expected, missing }) => (
            <li>
              <a class="tag tall" href={colonyPath(summary)}>
                {summary.tag}
              </a>
              <span>
                <SpanOf span={expected} today={frame.today} />{' '}
                <span class="soft">
                  {missing} {missing === 1 ? 'thing' : 'things'} still missing
                </span>
              </span>
            </li>
          ))}
        </ul>
      </Fold>
    )}
    <Tags
      id="letters"
      title="Day 30: the customer’s letter"
      says="Nobody has told the customer yet how they are. Write the letter about"
      of={letters}
    />
    <Tags
      id="ask"
      title="A season later: how are they?"
      says="Ask the new keeper once; the review then knows what became of"
      of={ask}
    />
  </Layout>
)

const Tags = (p: { id: string; title: string; says: string; of: { tag: string; path: string }[] }) =>
  p.of.length === 0 ? null : (
    <Fold id={p.id} title={p.title} says={String(p.of.length)} open={p.of.length <= MOST_TAGS}>
      <p>{p.says}</p>
      <p class="tags">
        {p.of.map((l) => (
          <a class="tag tall" href={l.path}>
            {l.tag}
          </a>
        ))}
      </p>
    </Fold>
  )

/** What is missing before it leaves is seen to there, so it goes first then. */
const Papers = ({ path, tag, first }: { path: string; tag: string; first?: boolean }) => (
  <a class={first === true ? 'button button-do' : 'button'} href={`${path}/move-record`}>
    Papers<span class="unseen"> of {tag}</span>
  </a>
)

/** A line; what is said before it leaves stands with its buttons, on a tap. */
const Ready = ({ line: { summary, before, papers }, open }: { line: ReadyLine; open: boolean }) => {
  const path = colonyPath(summary)
  return (
    <li class="todo">
      <details name="ready" open={open}>
        <summary class="todo-line">
          <span class="todo-where">
            <b class="tag">{summary.tag}</b>
            {summary.stand === null ? null : <small>stand {summary.stand}</small>}
          </span>
          <span class="todo-act">
            <span class="todo-title">{summary.yard}</span>
            <small>
              {summary.day} days here
              {papers === 0 ? '' : `, ${papers} ${papers === 1 ? 'paper' : 'papers'}`}
            </small>
            {before.length === 0 ? null : (
              <small class="todo-danger">
                {before.length} {before.length === 1 ? 'thing' : 'things'} before it leaves
              </small>
            )}
          </span>
        </summary>
        <BeforeItLeaves said={before} />
        <div class="buttons">
          {before.length === 0 ? null : <Papers path={path} tag={summary.tag} first />}
          <a class={before.length === 0 ? 'button button-do' : 'button'} href={`${path}/keeper-sheet`}>
            Sheet for the new keeper<span class="unseen">, {summary.tag}</span>
          </a>
          {before.length === 0 ? <Papers path={path} tag={summary.tag} /> : null}
          <a class="button" href={`${path}/outcome?what=moved-out`}>
            It moved out<span class="unseen">: {summary.tag}</span>
          </a>
          <a class="button button-plain" href={path}>
            All about {summary.tag}
          </a>
        </div>
      </details>
    </li>
  )
}
