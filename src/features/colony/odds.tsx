/** The odds of a queen: a sentence, what speaks for it, today's shares, and how they go on from day to day. */

import { addDays, type Day, daysBetween, earlier, later } from '../../days.ts'
import { KINDS, type Kind, type QueenOdds, strengthOf } from '../../forecast/index.ts'
import { useWords } from '../../forms/index.ts'
import { ALL_SHARES, DaysPlot, Numbers, namesIn, stacked, stretchOf, Wide } from '../../parts/index.ts'
import { capital, chance, evidenceWords, oddsWords } from '../../words/index.ts'

/** Patterns beside colours, so that layers can be told apart in black and white; in the box that is stretched. */
export const OddsDefs = () => (
  <svg class="ribbon-defs" aria-hidden="true" width="0" height="0">
    <defs>
      <pattern id="od-present" width="26" height="40" patternUnits="userSpaceOnUse">
        <rect class="od-ground" width="26" height="40" />
        <path class="od-ink" d="M0 0H7V40H0Z" />
      </pattern>
      <pattern id="od-raising" width="34" height="52" patternUnits="userSpaceOnUse">
        <rect class="od-ground" width="34" height="52" />
        <path class="od-line" d="M-4 58L38 -6M-21 58L21 -6M13 58L55 -6" />
      </pattern>
      <pattern id="od-virgin" width="30" height="46" patternUnits="userSpaceOnUse">
        <rect class="od-ground" width="30" height="46" />
        <ellipse class="od-ink" cx="8" cy="12" rx="4.5" ry="7" />
        <ellipse class="od-ink" cx="23" cy="35" rx="4.5" ry="7" />
      </pattern>
      <pattern id="od-chance" width="40" height="36" patternUnits="userSpaceOnUse">
        <rect class="od-ground" width="40" height="36" />
        <path class="od-ink" d="M0 0H40V8H0Z" />
      </pattern>
      <pattern id="od-workers" width="34" height="52" patternUnits="userSpaceOnUse">
        <rect class="od-ground" width="34" height="52" />
        <path
          class="od-line"
          d="M-4 58L38 -6M-21 58L21 -6M13 58L55 -6M-4 -6L38 58M-21 -6L21 58M13 -6L55 58"
        />
      </pattern>
    </defs>
  </svg>
)

const AHEAD = 28
const SHORTEST = 42

export const Odds = ({ odds, today }: { odds: QueenOdds; today: Day }) => (
  <>
    <p class="reading">{oddsWords(odds.today, useWords())}</p>
    <Evidence odds={odds} today={today} />
    <OddsChart odds={odds} today={today} />
    <OddsTable odds={odds} today={today} />
  </>
)

/** Words enough for a glance; the rest folded away. */
const SHOWN = 4

const Evidence = ({ odds, today }: { odds: QueenOdds; today: Day }) => {
  const words = useWords()
  const said = words.likely.odds
  const weigh = odds.evidence.filter((e) => strengthOf(e) !== null)
  const by = (f: number): number => Math.abs(Math.log(f))
  const strongest = [...weigh].sort((a, b) => by(b.factor) - by(a.factor)).slice(0, SHOWN)
  if (odds.evidence.length === 0) return <p class="soft small">{said.nothingSeen}</p>
  return (
    <>
      <h3>{said.speaks}</h3>
      <ul class="evidence">
        {weigh
          .filter((e) => strongest.includes(e))
          .map((e) => (
            <li>{capital(evidenceWords(e, words))}.</li>
          ))}
      </ul>
      {odds.evidence.length > strongest.length ? (
        <details class="caution">
          <summary>{said.all}</summary>
          <ul class="evidence">
            {odds.evidence.map((e) => (
              <li>
                <time datetime={e.on} class="soft">
                  {words.dates.day(e.on, today)}
                </time>{' '}
                {evidenceWords(e, words)}
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </>
  )
}

const shown = (odds: QueenOdds, today: Day) => {
  const first = odds.days[0]?.day ?? today
  const last = odds.days.at(-1)?.day ?? today
  const to = earlier(last, later(addDays(today, AHEAD), addDays(first, SHORTEST)))
  return odds.days.slice(0, daysBetween(first, to) + 1)
}

const OddsChart = ({ odds, today }: { odds: QueenOdds; today: Day }) => {
  const words = useWords()
  const said = words.likely
  const days = shown(odds, today)
  const stretch = stretchOf(days[0]?.day ?? today, days.at(-1)?.day ?? today)
  const layers = stacked<Kind>(KINDS, days)
  const drawn = layers.map((l) => l.of)
  return (
    <figure class="odds">
      <DaysPlot
        stretch={stretch}
        scale={ALL_SHARES}
        today={today}
        text={said.odds.chart(oddsWords(odds.today, words))}
        words={namesIn(layers, said.short, daysBetween(stretch.from, today)).map(({ of, x, y }) => (
          <text class="layer-name" x={`${x}%`} y={`${y}%`} dy="0.35em" text-anchor="middle">
            {said.short[of]}
          </text>
        ))}
      >
        {layers.map(({ of, path }) => (
          <path class={`kind kind-${of}`} d={path} />
        ))}
      </DaysPlot>
      <figcaption>
        <ul class="kinds">
          {[...KINDS]
            .reverse()
            .filter((k) => drawn.includes(k))
            .map((k) => (
              <li>
                <svg class="kind-swatch" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
                  <rect class={`kind kind-${k}`} width="100" height="100" />
                </svg>
                <span>{said.kinds[k]}</span> <b>{chance(odds.today[k], words)}</b>
              </li>
            ))}
        </ul>
        <p class="fine">{said.odds.caption}</p>
      </figcaption>
    </figure>
  )
}

const OddsTable = ({ odds, today }: { odds: QueenOdds; today: Day }) => {
  const words = useWords()
  const { day, odds: said, short, today: now } = words.likely
  const days = shown(odds, today)
  const kinds = KINDS.filter((k) => days.some((d) => d[k] >= 0.005))
  return (
    <details class="caution">
      <summary>{said.numbers}</summary>
      <Wide label={said.byDay}>
        <Numbers heads={[day, ...kinds.map((k) => short[k])]}>
          {days
            .filter((d, i) => i % 2 === daysBetween(days[0]?.day ?? today, today) % 2 || d.day === today)
            .map((d) => (
              <tr class={d.day === today ? 'row-now' : undefined}>
                <th scope="row">{d.day === today ? now : words.dates.day(d.day, today)}</th>
                {kinds.map((k) => (
                  <td>{chance(d[k], words)}</td>
                ))}
              </tr>
            ))}
        </Numbers>
      </Wide>
      <p class="fine">
        {said.ratesBefore}
        <a href="/rates">{said.rates}</a>.
      </p>
    </details>
  )
}
