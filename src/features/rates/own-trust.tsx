/** How the odds kept their word in this yard: before every look, how likely eggs were to be found; and whether they were. */

import type { KindTrust, OwnCalibration } from '../../forecast/index.ts'
import { Fold } from '../../parts/index.ts'
import { percent, SHORT_KIND } from '../../words/index.ts'
import { CalibrationPlot, CalibrationTable, count } from './plot.tsx'

/** With fewer looks a plot says more about chance than about the odds. */
const FEW_LOOKS = 30

export const OwnTrust = ({ own }: { own: OwnCalibration }) => (
  <Fold
    id="kept"
    title="How they kept their word here"
    says={own.looks === 0 ? 'No look in this yard’s book has noted eggs, or none, yet.' : wordsOf(own)}
  >
    {own.looks === 0 ? null : (
      <>
        <p>
          Before each look the odds said how likely eggs were to be found, knowing only what was in the book
          by then; the look said whether they were.
          {own.looks < FEW_LOOKS ? ' So few looks cannot tell good odds from lucky ones.' : ''}
        </p>
        <CalibrationPlot
          bins={own.bins}
          says={wordsOf(own)}
          so="found eggs"
          note="Upright lines: 95 % limits, as if looks at one colony were independent."
        />
        <ByKind kinds={own.byKind} />
        <p>
          Brier score {own.brier.toFixed(3)}: 0 is perfect, and giving every look the overall share would
          score {own.brierOfShare.toFixed(3)}.
        </p>
        <details class="caution">
          <summary>In numbers</summary>
          <CalibrationTable
            bins={own.bins}
            label="Calibration in this yard"
            so="Found eggs"
            counted="Looks"
          />
        </details>
      </>
    )}
  </Fold>
)

/** Standard errors within which a difference is chance. */
const CHANCE = 2

/** Which way the odds were off, in words: 'about as said', 'fewer than said', 'more than said'. */
export function offWords({ n, given, so }: KindTrust): string {
  const error = Math.sqrt((Math.max(0.01, given) * Math.max(0.01, 1 - given)) / n)
  if (Math.abs(so - given) <= CHANCE * error) return 'about as said'
  return so < given ? 'fewer than said' : 'more than said'
}

const ByKind = ({ kinds }: { kinds: readonly KindTrust[] }) => (
  <>
    <h3>By what was likeliest before the look</h3>
    <ul>
      {kinds.map((k) => (
        <li>
          <b>{SHORT_KIND[k.kind]}</b> ({count(k.n)} {k.n === 1 ? 'look' : 'looks'}): eggs said{' '}
          {percent(k.given)}, found {percent(k.so)}: {offWords(k)}
        </li>
      ))}
    </ul>
  </>
)

const wordsOf = (own: OwnCalibration): string => {
  const most = own.bins.reduce((a, b) => (b.n > a.n ? b : a))
  const colonies = `${count(own.colonies)} ${own.colonies === 1 ? 'colony' : 'colonies'}`
  return `Of ${count(own.looks)} looks at ${colonies}, ${percent(own.found / own.looks)} found eggs; where the odds said about ${percent(most.given)}, ${percent(most.so)} did (${count(most.n)} looks).`
}
