/** What a change of the protocol would move, before it is saved; and plans being recomputed. */

import type { Day } from '../../days.ts'
import type { Typed } from '../../forms/index.ts'
import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import type { ColonyChange, Leaving, PreviewTotals } from '../../recovery/index.ts'
import { ACTION_WORDS, dayWords, fromTo, RULE_WORDS } from '../../words/index.ts'
import { totalsWords } from './words.ts'

export interface ProtocolPreviewProps {
  frame: Frame
  /** The form as it was typed, to be saved or gone back to. */
  typed: Typed
  differences: string[]
  totals: PreviewTotals
  changes: (ColonyChange & { path: string })[]
}

const SHOWN = 200

export const ProtocolPreviewPage = (p: ProtocolPreviewProps) => (
  <Layout frame={p.frame} title="What it would move">
    <Crumb to="/protocol">Protocol</Crumb>
    <h1>What it would move</h1>
    {p.differences.length === 0 ? (
      <div class="notice">
        <p>These are the rules as they stand: there is nothing to save.</p>
      </div>
    ) : (
      <>
        <p class="preview-sum">
          <strong>{totalsWords(p.totals)}</strong>
        </p>
        <ul>
          {p.differences.map((line) => (
            <li>{line}</li>
          ))}
        </ul>
      </>
    )}
    <div class="buttons">
      {p.differences.length === 0 ? null : (
        <form method="post" action="/protocol/save">
          <Hidden typed={p.typed} />
          <button class="button button-do" type="submit">
            Save these rules
          </button>
        </form>
      )}
      <form method="post" action="/protocol/back">
        <Hidden typed={p.typed} />
        <button class="button" type="submit">
          Back to the rules
        </button>
      </form>
    </div>
    {p.changes.length === 0 ? null : (
      <section class="section">
        <h2>Colony by colony</h2>
        <ul class="moves">
          {p.changes.slice(0, SHOWN).map((change) => (
            <Change change={change} frame={p.frame} />
          ))}
        </ul>
        {p.changes.length > SHOWN ? <p>And {p.changes.length - SHOWN} more.</p> : null}
      </section>
    )}
  </Layout>
)

const Hidden = ({ typed }: { typed: Typed }) => (
  <>
    {Object.entries(typed).flatMap(([name, values]) =>
      values.filter((v) => v !== '').map((value) => <input type="hidden" name={name} value={value} />),
    )}
  </>
)

/** 'Can go now; by the new rules it leaves about Fri 27 Nov' */
export function leavingWords({ before, after }: { before: Leaving; after: Leaving }, today: Day): string {
  const words = (l: Leaving, none: string): string =>
    l === 'now' ? 'can go now' : l === null ? none : `leaves about ${dayWords(l, today)}`
  const was = words(before, 'no day of leaving is known')
  return `${was.charAt(0).toUpperCase()}${was.slice(1)}; by the new rules it ${words(after, 'has no known day of leaving')}`
}

const Change = ({ change: c, frame }: { change: ColonyChange & { path: string }; frame: Frame }) => {
  const { today } = frame
  const names = (rules: ColonyChange['becomesLate']): string =>
    rules.map((r) => RULE_WORDS[r].name).join(', ')
  return (
    <li class="move-row">
      <a class="tag tall" href={c.path}>
        {c.tag}
      </a>
      <ul>
        {c.moved.map((m) => (
          <li>
            {RULE_WORDS[m.rule].name}: {fromTo(m.before.opens, m.before.closes, today)}, then{' '}
            {fromTo(m.after.opens, m.after.closes, today)}
          </li>
        ))}
        {c.added.map((a) => (
          <li>
            Asked now: {RULE_WORDS[a.rule].name}, {fromTo(a.opens, a.closes, today)}
          </li>
        ))}
        {c.dropped.map((d) => (
          <li>No longer asked: {RULE_WORDS[d.rule].name}</li>
        ))}
        {c.becomesLate.length === 0 ? null : (
          <li>
            <b>Becomes late</b>: {names(c.becomesLate)}
          </li>
        )}
        {c.noLongerLate.length === 0 ? null : <li>No longer late: {names(c.noLongerLate)}</li>}
        {c.action === null ? null : (
          <li>
            Advice: {ACTION_WORDS[c.action.before]}, then <b>{ACTION_WORDS[c.action.after]}</b>
          </li>
        )}
        {c.ready === null ? null : (
          <li>{c.ready.after ? 'Becomes ready to move out' : 'No longer ready to move out'}</li>
        )}
        {c.expected === null ? null : <li>{leavingWords(c.expected, today)}</li>}
      </ul>
    </li>
  )
}

export interface ProgressProps {
  frame: Frame
  recomputing: { total: number; done: number } | null
  /** How many were made in the last round, when it is over. */
  made: number | null
  stopped: string | null
}

/** Asks again by itself every second, without scripts. */
export const ProtocolProgressPage = ({ frame, recomputing, made, stopped }: ProgressProps) => (
  <Layout
    frame={frame}
    title="Making plans again"
    {...(recomputing === null || stopped !== null ? {} : { refreshSeconds: 1 })}
  >
    <Crumb to="/protocol">Protocol</Crumb>
    <h1>{recomputing === null ? 'All plans are made again' : 'Making plans again'}</h1>
    {recomputing === null ? (
      <>
        <p>
          {made === null
            ? 'No plan waits to be made.'
            : `${made} ${made === 1 ? 'colony' : 'colonies'}, under the rules as they stand now.`}
        </p>
        <div class="buttons">
          <a class="button button-do" href="/">
            Today
          </a>
          <a class="button" href="/protocol">
            Protocol
          </a>
        </div>
      </>
    ) : (
      <>
        <p role="status">
          {recomputing.done} of {recomputing.total} colonies. Those in the yard come first; until theirs is
          made, a page shows the plan by the rules before.
        </p>
        <progress class="progress" max={recomputing.total} value={recomputing.done}>
          {recomputing.done} of {recomputing.total}
        </progress>
        {stopped === null ? (
          <p class="soft">
            This page looks again every second. You may leave it; the work goes on.{' '}
            <a href="/protocol/progress">Look now</a>
          </p>
        ) : (
          <div class="notice notice-late">
            <p>
              It stopped: {stopped}. Nothing is lost: the rules are saved, and the next start makes the rest.
            </p>
            <form method="post" action="/protocol/go-on">
              <button class="button button-do" type="submit">
                Go on
              </button>
            </form>
          </div>
        )}
      </>
    )}
  </Layout>
)
