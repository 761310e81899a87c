/** Stands: how many of each yard's are taken and free by date, for taking on new jobs. */

import type { Day } from '../../days.ts'
import { freeFrom, type OccupancyDay } from '../../forecast/index.ts'
import { type FormState, ProblemSummary, Save, TextField } from '../../forms/index.ts'
import {
  below,
  betweenPath,
  DaysPlot,
  Fold,
  type Frame,
  Layout,
  linePath,
  SUPPLY_TABS,
  scaleFor,
  stretchOf,
  Tabs,
  Wide,
} from '../../parts/index.ts'
import { chance, dayWords } from '../../words/index.ts'

interface YardStands {
  yard: string
  /** Null: nobody said. */
  stands: number | null
  colonies: number
  days: OccupancyDay[]
}

interface StandsProps {
  frame: Frame
  yards: YardStands[]
  form: FormState
  saved: boolean
}

/** The field that asks for a yard's stands. */
export const standsField = (yard: string): string => `stands:${yard}`

export const StandsPage = (p: StandsProps) => (
  <Layout frame={p.frame} title="Stands">
    <Tabs of={SUPPLY_TABS} frame={p.frame} />
    <h1>Stands free by date</h1>
    <ProblemSummary form={p.form} labels={(f) => f.replace('stands:', 'Stands at ')} />
    {p.saved ? (
      <div class="notice notice-do" role="status">
        <p>Saved, for everyone in this book.</p>
      </div>
    ) : null}
    {p.yards.length === 0 ? (
      <div class="sheet">
        <h2>No colony in the yard</h2>
        <p>Once colonies are here, this page says when their stands become free again.</p>
      </div>
    ) : (
      <div class="supplies">
        <Unsaid {...p} />
        {p.yards.map((y) => (
          <OneYard {...y} today={p.frame.today} open={few(p.yards)} />
        ))}
        <p class="fine">
          A stand is free three days after its colony is ready, with the odds of its move-out day. Deaths and
          absconding are left out, and a colony that never gets ready stays; new jobs are not in it. Colonies
          count as independent.
        </p>
        <HowMany {...p} />
      </div>
    )}
  </Layout>
)

/** More yards than this are a line each, their days on a tap (judgement: two pictures are two screens of a phone). */
const FEW_YARDS = 2

const few = (yards: readonly YardStands[]): boolean => yards.length <= FEW_YARDS

/** Yards nothing can be said of yet. */
const Unsaid = ({ yards, frame }: StandsProps) => {
  const unsaid = yards.filter((y) => y.stands === null).length
  return unsaid === 0 ? null : (
    <p>
      Nobody has said yet how many stands{' '}
      {yards.length === 1
        ? 'the yard has'
        : unsaid === yards.length
          ? 'the yards have'
          : `${unsaid} yards have`}
      .{' '}
      {frame.may('change-settings') ? (
        <a class="tall" href="#how-many">
          Say how many
        </a>
      ) : null}
    </p>
  )
}

const EVERY = 7
const ROOM_FOR = [1, 2, 3, 5, 8]

/** 'One stand is free now; three from Thu 25 Jun, nine times in ten.' */
function freeWords({ days, stands, colonies }: YardStands, today: Day): string | null {
  if (stands === null) return null
  const now = stands - colonies
  const head =
    now < 0
      ? `${colonies} colonies stand on ${stands} stands`
      : now === 0
        ? 'Every stand is taken today'
        : `${now} ${now === 1 ? 'stand is' : 'stands are'} free today`
  const more = ROOM_FOR.filter((n) => n > Math.max(0, now)).flatMap((n) => {
    const day = freeFrom(days, n)
    return day === null || day === today ? [] : [`${n} from ${dayWords(day, today)}`]
  })
  if (more.length === 0) return `${head}; no more can be promised within six weeks.`
  return `${head}; nine times in ten there are ${more.slice(0, 3).join(', ')}.`
}

const OneYard = (p: YardStands & { today: Day; open: boolean }) => {
  const words = freeWords(p, p.today)
  return (
    <details class="fold" open={p.open}>
      <summary>
        <h2>
          {p.yard} <small class="soft">{p.colonies === 1 ? '1 colony' : `${p.colonies} colonies`}</small>
        </h2>
        {words === null ? null : <span class="reading">{words}</span>}
      </summary>
      <ByDate {...p} words={words} />
    </details>
  )
}

const ByDate = (p: YardStands & { today: Day; words: string | null }) => {
  const { days, stands, today, words } = p
  const last = days.at(-1)?.day ?? today
  const { top, steps } = scaleFor(Math.max(1, p.colonies, stands ?? 0) * 1.02)
  return (
    <>
      <figure>
        <DaysPlot
          low
          stretch={stretchOf(today, last)}
          scale={{ top, steps: steps.filter(Number.isInteger), label: String }}
          today={null}
          text={`Colonies of today that are still here, by day. ${words ?? ''}`}
          words={
            stands === null ? null : (
              <text x="100%" dx="-0.4em" y={`${below(stands, top)}%`} dy="1.2em" text-anchor="end">
                {stands} stands
              </text>
            )
          }
        >
          <path
            class="fan-band"
            d={betweenPath(
              days.map((d) => d.low),
              days.map((d) => d.high),
              top,
            )}
          />
          <path
            class="fan-median"
            d={linePath(
              days.map((d) => d.expected),
              top,
            )}
          />
          {stands === null ? null : <path class="fan-after" d={`M0 ${below(stands, top) * 10}H1000`} />}
        </DaysPlot>
        <figcaption class="fine">
          Colonies still here: expected, and the band that holds eight times in ten.
        </figcaption>
      </figure>
      <Wide label={`Stands at ${p.yard} by date`}>
        <table class="numbers">
          <thead>
            <tr>
              <th scope="col">On</th>
              <th scope="col">Still here</th>
              <th scope="col">Eight times in ten</th>
              {stands === null ? null : (
                <>
                  <th scope="col">Free, nine times in ten</th>
                  <th scope="col">At least one free</th>
                </>
              )}
            </tr>
          </thead>
          <tbody>
            {days
              .filter((_, i) => i % EVERY === 0)
              .map((d) => (
                <tr>
                  <th scope="row">{d.day === today ? 'today' : dayWords(d.day, today)}</th>
                  <td>{d.expected.toFixed(1)}</td>
                  <td>{d.low === d.high ? d.low : `${d.low} to ${d.high}`}</td>
                  {stands === null ? null : (
                    <>
                      <td>{d.freeSurely}</td>
                      <td>{chance(d.anyFree ?? 0)}</td>
                    </>
                  )}
                </tr>
              ))}
          </tbody>
        </table>
      </Wide>
    </>
  )
}

const HowMany = ({ yards, form, frame }: StandsProps) =>
  frame.may('change-settings') ? (
    <Fold id="how-many" title="How many stands there are" open={few(yards) || form.problems.length > 0}>
      <form method="post" action="/supplies/stands" novalidate>
        {yards.map((y) => (
          <TextField
            form={form}
            name={standsField(y.yard)}
            label={`Stands at ${y.yard}`}
            inputmode="numeric"
            maxlength={4}
          />
        ))}
        <Save>Save</Save>
      </form>
    </Fold>
  ) : null
