/** How far the odds can be trusted: the calibration plot, drawn on the server. */

import { CALIBRATION } from '../../forecast/index.ts'
import { Fold, Numbers, Wide } from '../../parts/index.ts'
import { percent } from '../../words/index.ts'
import { CalibrationPlot, CalibrationTable, count } from './plot.tsx'

export const Trust = () => {
  const { believed: c, elsewhere } = CALIBRATION
  const { atSeventy: s } = c
  const words = `Of ${count(s.n)} odds of about 70 %, ${percent(s.so)} were so.`
  return (
    <Fold id="trust" title="How far they can be trusted" says={words}>
      <p>
        Odds were given for {count(c.colonies)} simulated colonies every fourth day, knowing only what had
        been seen by then, and held against what was so.
      </p>
      <CalibrationPlot
        bins={c.bins}
        says={words}
        so="was so"
        note="Upright lines: 95 % limits, as if odds of one colony were independent."
      />
      <p>
        The likeliest of the seven was so in {percent(c.right)} of {count(c.forecasts)} forecasts. Brier score{' '}
        {c.brier.toFixed(3)}: 0 is perfect, and giving everybody the overall shares would score{' '}
        {c.brierOfBaseRates.toFixed(3)}.
      </p>
      <details class="caution">
        <summary>Calibration in numbers, and where rates are others</summary>
        <CalibrationTable bins={c.bins} label="Calibration" so="Was so" counted="Odds" />
        <Wide label="Yards with other rates">
          <Numbers
            caption="Yards whose true rates are others than the odds believe"
            heads={['Where', 'Of those given 70 %', 'Brier score', 'Knowing the true rates']}
          >
            {elsewhere.map((e) => (
              <tr>
                <th scope="row">{e.name}</th>
                <td>{percent(e.atSeventy.so)}</td>
                <td>{e.brier.toFixed(3)}</td>
                <td>{e.brierOfKnowing.toFixed(3)}</td>
              </tr>
            ))}
          </Numbers>
        </Wide>
        <p class="fine">
          Made by <code>{CALIBRATION.command}</code>, seed {CALIBRATION.seed}. The simulator plays colonies
          with these rates, written apart from the odds. It shows that the odds are reckoned rightly and how
          wrong rates hurt; it cannot show that the rates are yours. In a real yard nobody knows what was so
          on each day; but what a look will find can be foretold and held against what it found, below.
        </p>
      </details>
    </Fold>
  )
}
