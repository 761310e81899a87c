/** What is likely: the odds of a queen, when a look tells most, the strength to come, moving out. */

import type { Day } from '../../days.ts'
import type { Foreseen, FrameSeen } from '../../forecast/index.ts'
import { useWords } from '../../forms/index.ts'
import type { Plan } from '../../recovery/index.ts'
import { MoveOut } from './move-out.tsx'
import { Odds, OddsDefs } from './odds.tsx'
import { Strength } from './strength.tsx'
import { Telling } from './telling.tsx'

export interface ForecastsProps {
  seen: Foreseen
  frame: FrameSeen
  plan: Plan
  today: Day
  path: string
}

export const Forecasts = ({ seen, frame, plan, today, path }: ForecastsProps) => {
  const { likely } = useWords()
  return (
    <section class="foresight" id="foresight" aria-label={likely.title}>
      <OddsDefs />
      <div class="foresight-two">
        <div>
          <Odds odds={seen.odds} today={today} />
        </div>
        <div>
          <Telling plan={plan} telling={seen.telling} today={today} />
          <Strength
            strength={seen.strength}
            frame={frame}
            minFrames={seen.strengthOptions.minFrames}
            today={today}
            path={path}
          />
          <MoveOut moveOut={seen.moveOut} plan={plan} today={today} />
        </div>
      </div>
      <p class="fine">
        {likely.goWithPlan} <a href="/rates">{likely.restOn}</a>
        {likely.andTrust}
      </p>
    </section>
  )
}
