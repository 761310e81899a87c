/** Whether a colony can move on, and what is still missing. */

import { On, SpanOf } from '../../parts/index.ts'
import type { Plan } from '../../recovery/index.ts'

export const Ready = ({ plan }: { plan: Plan }) => {
  const { ready, unmet, expected } = plan.readiness
  return (
    <section class="section">
      <h2>{ready ? 'Ready to move out' : 'Not ready to move out yet'}</h2>
      {unmet.length === 0 ? null : (
        <>
          <p>Still missing:</p>
          <ul>
            {unmet.map((u) => (
              <li>
                {u.what}
                <span class="soft">
                  {u.earliest === null ? (
                    ' (no date can be given yet)'
                  ) : u.earliest <= plan.asOf ? (
                    ' (can be met today)'
                  ) : (
                    <>
                      {' '}
                      (<On day={u.earliest} today={plan.asOf} /> at the earliest)
                    </>
                  )}
                </span>
              </li>
            ))}
          </ul>
        </>
      )}
      {expected === null || ready ? null : (
        <p>
          By the brood dates alone, move-out <SpanOf span={expected} today={plan.asOf} />.
        </p>
      )}
      <p class="fine">
        Day 30 alone proves nothing: a colony that raised its own queen usually has capped worker brood only
        about day 32 to 34. A clean look is not a clearance either: about one in five colonies that carry
        foulbrood show it within a month. Rules for moving bees are local.
      </p>
    </section>
  )
}
