/** Which removals end with a living colony in a new home: the answer first, everything else a tap away. */

import { raw } from 'hono/html'
import type { Child } from 'hono/jsx'
import { inWordsWithYear } from '../../days.ts'
import { type Frame, Layout, Reading } from '../../parts/index.ts'
import { FEW } from '../../words/index.ts'
import { Became } from './became.tsx'
import { narrows } from './choice.ts'
import { Choose } from './choose.tsx'
import { Compared } from './compared.tsx'
import { Counting } from './counting.tsx'
import { Days } from './days-part.tsx'
import { EarnedPart } from './earned-part.tsx'
import { aliveAfterReading } from './follow-up.ts'
import { Losing } from './losing.tsx'
import { lossPhasesReading } from './loss-phases.ts'
import { Money } from './money-part.tsx'
import { pathIn, type ReviewProps } from './part-props.ts'
import { aliveReading, coloniesOf, meanReading, medianReading } from './readings.ts'
import { Recovery } from './recovery.tsx'
import { Stays } from './stays.tsx'
import { Survival } from './survival.tsx'
import { WaysOfLoss } from './ways-of-loss.tsx'
import { choiceWords } from './words.ts'

export const ReviewPage = (p: ReviewProps) => (
  <Layout frame={p.frame} title="Review" scripts={['islands/review-charts.ts']}>
    <h1>Which removals end well</h1>
    {p.problems.length === 0 ? null : (
      <div class="notice notice-late" role="alert">
        {p.problems.map((text) => (
          <p>{text}</p>
        ))}
      </div>
    )}
    {p.total === 0 ? <NoColonies frame={p.frame} /> : <Reviewed {...p} />}
  </Layout>
)

const NoColonies = ({ frame }: { frame: Frame }) => (
  <div class="sheet">
    <h2>No colony yet</h2>
    <p>
      Once colonies are logged, this page tells how many live, how they are lost, and what goes with losing
      them. An old spreadsheet can be taken in, too: it counts like colonies you followed here.
    </p>
    <p class="buttons">
      {frame.mayOpen('/intake') ? (
        <a class="button button-do" href="/intake">
          Log the first intake
        </a>
      ) : null}
      {frame.mayOpen('/data/colonies') ? (
        <a class="button" href="/data/colonies">
          Take in an old spreadsheet
        </a>
      ) : null}
    </p>
  </div>
)

const Reviewed = (p: ReviewProps) => {
  const n = p.look.all.curve.colonies
  return (
    <>
      <p class="review-what" role="status">
        {whatIsLookedAt(p)}
      </p>
      {n === 0 ? (
        <div class="sheet">
          <h2>No colony fits</h2>
          <p>Widen the choice below.</p>
          <Choose {...p} />
        </div>
      ) : (
        <>
          {n < FEW ? <TooFew n={n} /> : null}
          <Became {...p} />
          <Choose {...p} />
          <p class="buttons">
            <a class="button" href={pathIn(p, '/report')}>
              Season report, two pages to print
            </a>
          </p>
          <Chapter title="Alive in the yard, had none moved out">
            <Headlines {...p} />
            <Survival {...p} />
            <Days {...p} />
          </Chapter>
          <Chapter title="Ways of loss">
            <WaysOfLoss {...p} />
            <Reading>{lossPhasesReading(p.look.lossPhases)}</Reading>
          </Chapter>
          <Chapter title="What goes with losing a colony">
            <Losing {...p} />
          </Chapter>
          <Chapter title="Years, yards, people and methods">
            <Compared {...p} />
          </Chapter>
          {p.look.after.length === 0 ? null : (
            <Chapter title="After they left">
              {p.look.after.map((a) => (
                <Reading>{aliveAfterReading(a)}</Reading>
              ))}
              <p class="small soft">
                As new keepers told, at their sheet’s address or when asked. Those nobody heard of count for
                nothing.
              </p>
            </Chapter>
          )}
          <Chapter title="Queens, and days in the yard">
            <Recovery {...p} />
            <Stays {...p} />
          </Chapter>
          {p.frame.may('see-private') ? (
            <Chapter title="Money">
              <EarnedPart {...p} />
              <Money {...p} />
            </Chapter>
          ) : null}
          <Chapter title="How it is counted">
            <Counting {...p} />
          </Chapter>
          <script type="application/json" id="review-data">
            {raw(JSON.stringify(p.charts).replaceAll('<', '\\u003c'))}
          </script>
        </>
      )}
    </>
  )
}

/** A chapter behind its title. A link into it opens it; so does printing. */
const Chapter = ({ title, children }: { title: string; children?: Child }) => (
  <details class="also chapter">
    <summary>{title}</summary>
    {children}
  </details>
)

/** '41 colonies, removal type: wall, as of Wed 10 Jun 2026.' */
function whatIsLookedAt({ look, naming, total }: Pick<ReviewProps, 'look' | 'naming' | 'total'>): string {
  const { choice, taken } = look
  const of = narrows(choice) ? `${taken} of ${coloniesOf(total, '')}` : coloniesOf(taken, '')
  return `${[of, ...choiceWords(choice, naming)].join(', ')}, as of ${inWordsWithYear(choice.asOf)}.`
}

const TooFew = ({ n }: { n: number }) => (
  <div class="notice">
    <h2>{coloniesOf(n, '')}: what cannot be concluded</h2>
    <p>
      With fewer than {FEW} colonies these numbers cannot say which removals are worth doing, at what heat to
      refuse, or what goes with losing. They tell what happened to these colonies, not how the next ones will
      fare: the limits show how wide open that is. Come back when there are more, or take in your old records.
    </p>
  </div>
)

const Headlines = (p: ReviewProps) => {
  const { look } = p
  return (
    <div class="review-heads">
      <ul class="sentences sentences-large">
        <li>{aliveReading('', 30, look.alive[30])}</li>
        <li>{aliveReading('', 60, look.alive[60])}</li>
        <li>{medianReading('', look.all.review)}</li>
        <li>{meanReading('', 60, look.all.review)}</li>
      </ul>
    </div>
  )
}
