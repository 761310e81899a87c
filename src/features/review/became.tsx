/** What became of them, by kind: the answer of the review, its picture, and the numbers behind it. */
import { REMOVAL_TYPES } from '../../journal/index.ts'
import { Counted, Numbers, PlotArea, Reading, Wide } from '../../parts/index.ts'
import { FEW, FEW_MEANS, sameNameReading, sameNames } from '../../words/index.ts'
import { stackEnd } from './chart-data.ts'
import { fatesReading } from './fates.ts'
import { earnsMostReading } from './job-money.ts'
import { longUnseenReading, UNSEEN_DAYS } from './long-unseen.ts'
import { OUTCOME_DAYS, type OutcomesOnDay } from './outcomes.ts'
import {
  bestReading,
  outcomesReading,
  smallestDifferenceReading,
  typesTestsReading,
  withoutDayReading,
} from './outcomes-reading.ts'
import { nameIn, type ReviewProps } from './part-props.ts'
import { ShareCell } from './share-cell.tsx'
import { END_OF_STACK, STACK_WAYS, STACKED, stackOf } from './stack.ts'
import type { Group } from './view.ts'
import { GROUPS, typeName } from './words.ts'

/** Kinds drawn and told first; the rest stand behind one tap. With all of them together they fill rows of four and eight. */
const MOST_SHOWN = 7

/** The groups drawn, all of them together first. */
export const drawnStacks = ({ look }: Pick<ReviewProps, 'look'>): Group[] => [
  look.all,
  ...(look.groups.length < 2 ? [] : look.groups.slice(0, MOST_SHOWN)),
]

export const Became = (p: ReviewProps) => {
  const shown = drawnStacks(p)
  const rest = p.look.groups.slice(shown.length - 1)
  return (
    <section class="section-first" id="became" aria-label="What became of them">
      <ul class="sentences sentences-large">
        {answers(p).map((text) => (
          <li>{text}</li>
        ))}
      </ul>
      <StackKey />
      <div class="stacks">
        {shown.map((g, i) => (
          <Stack of={p} group={g} place={i} />
        ))}
      </div>
      <p class="readout-stacks" data-readout="stacks">
        {STACK_WORDS}
      </p>
      <details class="also">
        <summary>The numbers, by kind and day</summary>
        <Table of={p} groups={shown} />
        {shown.length < 2 || rest.length === 0 ? null : <Table of={p} groups={rest} />}
      </details>
      <p class="small soft">
        {fatesReading(p.look.fates, p.look.choice.unitedIsLoss)} Lost means{' '}
        {p.look.choice.unitedIsLoss ? 'died, absconded or united' : 'died or absconded'}.{' '}
        {withoutDayReading(p.look.all.withoutDay)}{' '}
        {p.look.groups.some((g) => g.curve.colonies < FEW) ? FEW_MEANS : ''}
      </p>
      <Reading>{differenceThatShows(p)}</Reading>
      <SameNames {...p} />
      <LongUnseen {...p} />
    </section>
  )
}

/** The book, not the yard, is behind. */
export const LongUnseen = ({ unseen, frame }: ReviewProps) =>
  unseen === 0 || !frame.mayOpen('/data/long-gone') ? null : (
    <p>
      {longUnseenReading(unseen)} <a href={`/data/long-gone?days=${UNSEEN_DAYS}`}>Close what is long gone</a>
    </p>
  )

/** The answer: which kind ends best, how sure that is, and, for those who may see it, which earns. */
export const answers = (p: ReviewProps): string[] =>
  [
    bestAndWorst(p),
    typesTestsReading(p.look.grayTests, GROUPS[p.look.choice.by]),
    earnsMostReading(p.look.earned, typeName, p.currency),
  ].filter(Boolean)

const STACK_WORDS = 'Share of all that were taken in, by days since intake. Touch a day to read it.'

/** Names that look like one count as two, until somebody says that they are one. */
const SameNames = ({ names, frame }: ReviewProps) => {
  const same = sameNames(names.removalType, REMOVAL_TYPES)
  return same.length === 0 || !frame.mayOpen('/data/names') ? null : (
    <p>
      {sameNameReading(same)} <a href="/data/names">Merge names</a>
    </p>
  )
}

/** The day on which kinds are ranked: by then most have moved out that will (the hold is 30 days). */
const RANKED_ON = 60

const on = (g: Group, day: number): OutcomesOnDay | undefined => g.outcomes.find((o) => o.day === day)

/** Which kind ends best and which worst, among those of which enough is known; else all of them together. */
function bestAndWorst(p: ReviewProps): string {
  const known = p.look.groups.flatMap((g) => {
    const o = on(g, RANKED_ON)
    return g.curve.colonies >= FEW && o?.shares ? [{ name: nameIn(p, g), on: o }] : []
  })
  const ranked = known.sort((a, b) => movedOut(b.on) - movedOut(a.on))
  const o = on(p.look.all, RANKED_ON) ?? p.look.all.outcomes[0]
  return ranked.length > 1 ? bestReading(ranked) : o === undefined ? '' : outcomesReading('', o)
}

const movedOut = (o: OutcomesOnDay): number => o.shares?.movedOut.share ?? 0

function differenceThatShows(p: ReviewProps): string {
  const sized = p.look.groups.flatMap((g) => {
    const o = on(g, RANKED_ON)
    return o?.shares == null ? [] : [{ name: nameIn(p, g), known: o.known, share: o.shares.movedOut.share }]
  })
  return smallestDifferenceReading(sized)
}

const StackKey = () => (
  <ul class="stack-key" aria-hidden="true">
    {STACKED.map((way) => (
      <li>
        <svg viewBox="0 0 24 16" aria-hidden="true" focusable="false">
          <path class={`stack-${way}`} d="M0 0H24V16H0Z" />
        </svg>
        {STACK_WAYS[way]}
      </li>
    ))}
  </ul>
)

/** One kind: a stack over the days since intake, the same scale for all. */
const Stack = ({ of: p, group, place }: { of: ReviewProps; group: Group; place: number }) => {
  const name = nameIn(p, group)
  const areas = stackOf(group.review.outcomes, stackEnd(group))
  const last = group.outcomes.findLast((o) => o.shares !== null)
  return (
    <figure class="stack" data-stack={place}>
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
        <span>{END_OF_STACK}</span>
      </p>
    </figure>
  )
}

const COLUMNS = ['movedOut', 'lost', 'united', 'stillHere'] as const

/** Shares by each day, with limits. */
const Table = ({ of: p, groups }: { of: ReviewProps; groups: readonly Group[] }) => (
  <Wide label="What became of them, by kind and day">
    <Numbers heads={['Kind', 'by day', ...COLUMNS.map((c) => STACK_WAYS[c])]}>
      {groups.flatMap((g) =>
        OUTCOME_DAYS.map((day, i) => <Row of={p} group={g} day={day} first={i === 0} />),
      )}
    </Numbers>
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
