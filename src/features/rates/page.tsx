/** What the odds rest on: rates with their sources, the yard's own beside the defaults, and the calibration. */
import {
  type Basis,
  FIRST_EGG,
  type Learned,
  type LearnedRate,
  type OwnCalibration,
  RATE_NAMES,
  RATE_TABLE,
  type Rate,
} from '../../forecast/index.ts'
import { Fold, type Frame, Layout, Range, RangeHead, SHARES, Wide } from '../../parts/index.ts'
import type { OwnRates } from '../../store/index.ts'
import { dayWords, plain } from '../../words/index.ts'
import { ClosedLoop } from './closed-loop.tsx'
import { OwnTrust } from './own-trust.tsx'
import { Trust } from './trust.tsx'

interface RatesProps {
  frame: Frame
  learned: Learned
  /** How the odds in use kept their word here. */
  calibration: OwnCalibration
  /** The yard's own rates in use; null: the defaults are. */
  own: OwnRates | null
  saved: boolean
}

/** '75 %', '1.2 %', '0.04 %'. */
const ratePercent = (n: number): string => `${plain(n * 100, n < 0.001 ? 2 : n < 0.02 ? 1 : 0)} %`

export const RatesPage = (p: RatesProps) => (
  <Layout frame={p.frame} title="What the odds rest on">
    <h1>What the odds rest on</h1>
    {p.saved ? (
      <div class="notice notice-do" role="status">
        <p>Saved. Every forecast goes by it from now on.</p>
      </div>
    ) : null}
    <p class="reading">
      {p.own === null
        ? 'The odds go by the default rates: published where somebody measured, judgement where nobody did.'
        : `The odds go by this yard’s own rates, learned on ${dayWords(p.own.on, p.frame.today)} from ${colonies(p.own.colonies)}.`}
    </p>
    <OwnTrust own={p.calibration} />
    <Trust />
    <ClosedLoop />
    <Own {...p} />
    <Table own={p.own} />
  </Layout>
)

const colonies = (n: number): string => `${n} closed ${n === 1 ? 'colony' : 'colonies'}`

const Own = (p: RatesProps) => {
  const { learned, own, frame } = p
  return (
    <Fold
      id="own"
      title="This yard’s own rates"
      says={learned.colonies === 0 ? 'none yet' : `from ${colonies(learned.colonies)}`}
    >
      {learned.colonies === 0 ? (
        <p>
          No colony has closed here yet. Once some have moved out, died or were united, this yard’s own rates
          stand here beside the defaults.
        </p>
      ) : (
        <>
          <p>
            Learned from {colonies(learned.colonies)}: each counts with the odds that it went so in it. A
            default counts like the number of colonies given, so that a few of your own do not overturn it.
          </p>
          <Wide label="Default and own rates">
            <table class="ranges own-rates">
              <thead>
                <tr>
                  <td />
                  <RangeHead scale={SHARES}>Rate, from 0 to 100 %</RangeHead>
                  <th scope="col">Own, and default</th>
                </tr>
              </thead>
              <tbody>
                {learned.table.map((l) => (
                  <OwnRate l={l} />
                ))}
              </tbody>
            </table>
          </Wide>
          <p class="small soft">Dot: this yard’s own, with 80 % limits. Diamond: the default.</p>
        </>
      )}
      {frame.may('change-settings') && (learned.colonies > 0 || own !== null) ? (
        <form class="buttons" method="post" action="/rates/use">
          {learned.colonies === 0 ? null : (
            <button class="button" type="submit" name="use" value="own">
              {own === null ? 'Use this yard’s own rates' : 'Learn again and use'}
            </button>
          )}
          {own === null ? null : (
            <button class="button" type="submit" name="use" value="default">
              Back to the defaults
            </button>
          )}
        </form>
      ) : null}
      <p class="fine">
        Own rates stay as they were learned until somebody learns them again: odds do not change behind your
        back.
      </p>
    </Fold>
  )
}

const OwnRate = ({ l }: { l: LearnedRate }) => (
  <tr>
    <th scope="row">
      {l.says}{' '}
      <span class="soft">
        {l.so.toFixed(1)} of {(l.so + l.not).toFixed(1)}
      </span>
    </th>
    <td class="range-col">
      <Range
        scale={SHARES}
        marks={[
          { value: l.own, lower: l.low, upper: l.high, shape: 'dot' },
          { value: l.default, lower: null, upper: null, shape: 'ring' },
        ]}
      />
    </td>
    <td>
      <b>{ratePercent(l.own)}</b>{' '}
      <span class="limits-words">
        {ratePercent(l.low)} to {ratePercent(l.high)}
      </span>
      <span class="leaning">
        {ratePercent(l.default)} <span class="limits-words">like {l.weight} colonies</span>
      </span>
    </td>
  </tr>
)

const BASIS: Record<Basis, string> = {
  published: 'published',
  practice: 'common practice',
  judgement: 'judgement',
}

const Table = ({ own }: { own: OwnRates | null }) => (
  <Fold id="table" title="Every rate" says={`${RATE_NAMES.length}, each with its source`}>
    <p>
      Published: a paper or textbook measured it, though seldom on colonies cut out of buildings. Judgement:
      no figure was found; own colonies should replace it.
    </p>
    <Wide label="Every rate">
      <table class="rates-table">
        <thead>
          <tr>
            <th scope="col">What it says</th>
            <th scope="col">Default</th>
            {own === null ? null : <th scope="col">In use</th>}
            <th scope="col">Basis</th>
          </tr>
        </thead>
        <tbody>
          {RATE_NAMES.map((name) => {
            const rate: Rate = RATE_TABLE[name]
            return (
              <tr>
                <td>
                  {rate.says}
                  <span class="rate-source">{rate.source}</span>
                </td>
                <td class="nowrap">{ratePercent(rate.value)}</td>
                {own === null ? null : <td class="nowrap">{ratePercent(own.values[name] ?? rate.value)}</td>}
                <td class="rate-basis">{BASIS[rate.basis]}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </Wide>
    <p class="fine">
      Durations: first egg {FIRST_EGG.mean} days after emergence on average, right-skewed, {FIRST_EGG.from} to{' '}
      {FIRST_EGG.to} (Szabo et al. 1987; log-normal: Woyke et al. 2008). Emergency queens emerge 14 to 18 days
      from the egg, 15.7 on average, sealed 7.2 days (Tofilski &amp; Czekonska 2004); from larvae mostly two
      to four days old (Fell &amp; Morse 1984). A freed mated queen lays again within two or three days
      mostly; bees eat through candy in two to five; laying workers begin from about two weeks without open
      brood (judgement on common practice).
    </p>
  </Fold>
)
