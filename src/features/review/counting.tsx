/** How all of it is counted, in plain words, for whoever asks. */
import { temperature } from '../../words/index.ts'
import type { ReviewProps } from './part-props.ts'

export const Counting = ({ look, naming }: ReviewProps) => (
  <section class="section" id="counting">
    <details class="caution">
      <summary>How this is counted</summary>
      <dl class="counting">
        <dt>Lost</dt>
        <dd>
          {look.choice.unitedIsLoss
            ? 'Died, absconded, or united with another colony.'
            : 'Died or absconded. United with another colony is a way of leaving of its own, neither kept nor lost; you can count it as a loss above.'}{' '}
          Moved out is not lost, and what became of the colony afterwards is not known here.
        </dd>
        <dt>Still in the yard</dt>
        <dd>
          A colony counts for as long as it was followed, and then says nothing more. A share “alive at day
          30” is not the count of those alive over all taken in: it is what that share would be had nobody
          left early (Kaplan and Meier), provided those who left early would have fared like those who stayed.
          Where only a few are still followed, one loss drops the line far: the limits show it.
        </dd>
        <dt>Entered late</dt>
        <dd>
          A colony entered more than three days after its intake was alive when it was entered, so its days
          before do not count; a whole old book that tells of the lost ones too counts from the intakes.
          {look.all.curve.colonies < look.taken
            ? ` ${look.taken - look.all.curve.colonies} of ${look.taken} colonies were never followed and count in nothing here.`
            : ''}
        </dd>
        <dt>95 % limits</dt>
        <dd>
          Were the season run again and again, limits made this way would hold the true figure 95 times of
          100. Curves: Greenwood’s variance, on the log-log scale; where none or all were lost: Jeffreys’
          interval. What became of them, and ways of loss: Aalen and Johansen’s estimate; shares by day with
          limits on the log-log scale, which holds with few colonies.
        </dd>
        <dt>Leaning on all groups</dt>
        <dd>
          A group of two that both lived is not the best there is: each share is drawn toward what all groups
          have in common, the more so the fewer its colonies (beta-binomial, empirical Bayes).
        </dd>
        <dt>Do they differ?</dt>
        <dd>
          The log-rank test asks how often chance alone would part groups this far. What goes with losing:
          Cox’s model, which takes one ratio for all days, with Efron’s way for ties; where one side had no
          losses, Firth’s penalty keeps the figure finite.
        </dd>
        <dt>Heat</dt>
        <dd>
          Bands are parted at the limit in your protocol: {temperature(naming.heatLimitC, naming.units)}.
          Ratios take heat as a number.
        </dd>
      </dl>
    </details>
  </section>
)
