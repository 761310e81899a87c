/** What became of them, by kind: the answer of the review, its picture, and the numbers behind it. */
import { Counted, Part, PlotArea, Reading, Wide } from '../../parts/index.ts'
import { FEW, FEW_MEANS } from '../../words/index.ts'
import { fatesReading } from './fates.ts'
import { earnedReading, FEWEST_JOBS } from './job-money.ts'
import { OUTCOME_DAYS, type OutcomesOnDay } from './outcomes.ts'
import {
  outcomesReading,
  smallestDifferenceReading,
  typesTestsReading,
  withoutDayReading,
} from './outcomes-reading.ts'
import { nameIn, type ReviewProps } from './part-props.ts'
import { ShareCell } from './share-cell.tsx'
import { END_OF_STACK, STACKED, type Stacked, stackOf } from './stack.ts'
import type { Group } from './view.ts'
import { typeName } from './words.ts'

/** Kinds drawn and told first; the rest stand behind one tap. */
const MOST_SHOWN = 6

export const Became = (p: ReviewProps) => {
  const groups = p.look.groups.length < 2 ? [] : p.look.groups
  const [first, rest] = [groups.slice(0, MOST_SHOWN), groups.slice(MOST_SHOWN)]
  return (
    <Part id="became" title="What became of them">
      <ul class="sentences sentences-large">
        <li>{bestAndWorst(p)}</li>
        <li>{typesTestsReading(p.look.grayTests)}</li>
        <Earns {...p} />
      </ul>
      <StackKey />
      <div class="stacks">
        {[p.look.all, ...first].map((g) => (
          <Stack of={p} group={g} />
        ))}
      </div>
      <Table of={p} groups={[p.look.all, ...first]} />
      {rest.length === 0 ? null : (
        <details class="also">
          <summary>{rest.length} kinds with fewer colonies</summary>
          <Table of={p} groups={rest} />
        </details>
      )}
      <p class="small soft">
        {fatesReading(p.look.fates, p.look.choice.unitedIsLoss)} {withoutDayReading(p.look.all.withoutDay)}{' '}
        {groups.some((g) => g.curve.colonies < FEW) ? FEW_MEANS : ''}
      </p>
      <Reading>{differenceThatShows(p)}</Reading>
    </Part>
  )
}

/** Which kind earns most, for those who may see it. */
const Earns = (p: ReviewProps) => {
  const known = p.look.earned.filter((e) => e.jobs >= FEWEST_JOBS)
  const [best] = [...known].sort((a, b) => b.earned - a.earned)
  return best === undefined ? null : (
    <li>Earns most: {earnedReading(best, typeName(best.type), p.currency)}</li>
  )
}

/** The day on which kinds are ranked: by then most have moved out that will (the hold is 30 days). */
const RANKED_ON = 60

const on = (g: Group, day: number): OutcomesOnDay | undefined => g.outcomes.find((o) => o.day === day)

/** Which kind ends best and which worst, among those of which enough is known; else all of them together. */
function bestAndWorst(p: ReviewProps): string {
  const known = p.look.groups.filter((g) => g.curve.colonies >= FEW && on(g, RANKED_ON)?.shares != null)
  const ranked = [...known].sort((a, b) => movedOut(b) - movedOut(a))
  const [best, worst] = [ranked[0], ranked.at(-1)]
  const said = (g: Group, name: string): string => {
    const o = on(g, RANKED_ON) ?? g.outcomes[0]
    return o === undefined ? '' : outcomesReading(name, o)
  }
  if (best === undefined || worst === undefined || best === worst) return said(p.look.all, '')
  return `Best: ${nameIn(p, best)}. ${said(best, nameIn(p, best))} Worst: ${nameIn(p, worst)}. ${said(worst, nameIn(p, worst))}`
}

const movedOut = (g: Group): number => on(g, RANKED_ON)?.shares?.movedOut.share ?? 0

function differenceThatShows(p: ReviewProps): string {
  const sized = p.look.groups.flatMap((g) => {
    const o = on(g, RANKED_ON)
    return o?.shares == null ? [] : [{ name: nameIn(p, g), known: o.known, share: o.shares.movedOut.share }]
  })
  return smallestDifferenceReading(sized)
}

const WORDS: Record<Stacked, string> = {
  movedOut: 'moved out',
  stillHere: 'still here',
  united: 'united',
  other: 'left otherwise, or not known',
  lost: 'died or absconded',
}

const StackKey = () => (
  <ul class="stack-key" aria-hidden="true">
    {STACKED.map((way) => (
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true" focusable="false">
          <path class={`stack-${way}`} d="M0 0H24V16H0Z" />
        </svg>
        {WORDS[way]}
      </li>
    ))}
  </ul>
)

/** One kind: a stack over the days since intake, the same scale for all. */
const Stack = ({ of: p, group }: { of: ReviewProps; group: Group }) => {
  const name = nameIn(p, group)
  const areas = stackOf(group.review.outcomes, group.counts.lastDay)
  const last = group.outcomes.findLast((o) => o.shares !== null)
  return (
    <figure class="stack">
      <figcaption>
        <b>{name}</b> <Counted n={group.curve.colonies} />
      </figcaption>
      <div
        class="stack-box"
        role="img"
        aria-label={last === undefined ? `${name}: nothing to draw yet` : outcomesReading(name, last)}
      >
        <PlotArea grid="M0 250H1000M0 500H1000M0 750H1000M333 0V1000M667 0V1000">
          {areas.map((a) => (
            <path class={`stack-${a.way}`} d={a.path} />
          ))}
        </PlotArea>
      </div>
      <p class="stack-days" aria-hidden="true">
        <span>0</span>
        <span>30</span>
        <span>60</span>
        <span>{END_OF_STACK} days</span>
      </p>
    </figure>
  )
}

const COLUMNS = ['movedOut', 'lost', 'united', 'stillHere'] as const

/** Shares by each day, with limits. */
const Table = ({ of: p, groups }: { of: ReviewProps; groups: readonly Group[] }) => (
  <Wide label="What became of them, by kind and day">
    <table class="numbers">
      <thead>
        <tr>
          <th scope="col">Kind</th>
          <th scope="col">by day</th>
          {COLUMNS.map((c) => (
            <th scope="col">{WORDS[c]}</th>
          ))}
        </tr>
      </thead>
      <tbody>
        {groups.flatMap((g) =>
          OUTCOME_DAYS.map((day, i) => <Row of={p} group={g} day={day} first={i === 0} />),
        )}
      </tbody>
    </table>
  </Wide>
)

const Row = ({
  of: p,
  group,
  day,
  first,
}: {
  of: ReviewProps
  group: Group
  day: number
  first: boolean
}) => {
  const o = on(group, day)
  const shares = o?.shares ?? null
  return (
    <tr class={first ? 'row-first' : undefined}>
      {first ? (
        <th scope="rowgroup" rowspan={OUTCOME_DAYS.length}>
          {nameIn(p, group)} <Counted n={group.curve.colonies} />
        </th>
      ) : null}
      <td>{day}</td>
      {shares === null ? (
        <td colspan={COLUMNS.length} class="soft">
          {o?.thin == null ? 'nobody followed that long yet' : 'too few left to say'}
        </td>
      ) : (
        COLUMNS.map((c) => <ShareCell share={shares[c]} />)
      )}
    </tr>
  )
}
