/** What jobs earn, by kind; and how many called the yard back. Shown only to those who may see costs. */

import { Numbers, Part, Reading, Wide } from '../../parts/index.ts'
import { earnedReading, ratesReading } from './job-money.ts'
import type { ReviewProps } from './part-props.ts'
import { typeName } from './words.ts'

const whole = (n: number, currency: string): string =>
  `${n < 0 ? '-' : ''}${currency}${Math.abs(Math.round(n))}`

export const EarnedPart = (p: ReviewProps) => {
  const { earned } = p.look
  const priced = earned.filter((e) => e.jobs > 0)
  const [best] = [...priced].sort((a, b) => b.earned - a.earned)
  const without = earned.reduce((sum, e) => sum + e.withoutPrice, 0)
  return (
    <Part id="earned" title="Earned by kind of job">
      {best === undefined ? (
        <Reading>
          No job that is over has a price yet. The price stands in the removal sheet’s agreement, what the
          colony brought in its move-out record.
        </Reading>
      ) : (
        <>
          <Reading>{earnedReading(best, typeName(best.type), p.currency)}</Reading>
          <Wide label="Earned by kind of job">
            <Numbers heads={['Kind', 'earned a job', 'customer', 'colony', 'costs']}>
              {priced.map((e) => (
                <tr>
                  <th scope="row">
                    {typeName(e.type)}{' '}
                    <span class="soft">
                      {e.jobs} {e.jobs === 1 ? 'job' : 'jobs'}
                    </span>
                  </th>
                  <td>
                    <b>{whole(e.earned, p.currency)}</b>{' '}
                    {e.lower === null || e.upper === null ? null : (
                      <span class="limits-words">
                        {whole(e.lower, p.currency)} to {whole(e.upper, p.currency)}
                      </span>
                    )}
                  </td>
                  <td>{whole(e.price, p.currency)}</td>
                  <td>{whole(e.colonyPrice, p.currency)}</td>
                  <td>{whole(e.cost, p.currency)}</td>
                </tr>
              ))}
            </Numbers>
          </Wide>
        </>
      )}
      {best === undefined ? null : (
        <p class="small soft">
          {ratesReading(p.rates, p.currency)} <a href="/protocol#costs">The yard’s costs</a>
        </p>
      )}
      {without === 0 ? null : (
        <p class="small soft">
          {without} {without === 1 ? 'job that is over has' : 'jobs that are over have'} no price and{' '}
          {without === 1 ? 'is' : 'are'} not in it.
        </p>
      )}
      <CallBacks {...p} />
    </Part>
  )
}

/** Example: 'Called back: 2 of 12 wall jobs, 1 of 4 tree jobs.' */
const CallBacks = ({ callBacks }: ReviewProps) => {
  const jobs = callBacks.filter((c) => c.type !== 'unsaid')
  return jobs.length === 0 ? null : (
    <p>
      Called back:{' '}
      {jobs
        .map((c) => `${c.withCallBack} of ${c.jobs} ${typeName(c.type)} ${c.jobs === 1 ? 'job' : 'jobs'}`)
        .join(', ')}
      .{' '}
      {jobs.some((c) => c.withoutGo > 0)
        ? `Begun without a “go”: ${jobs
            .filter((c) => c.withoutGo > 0)
            .map((c) => `${c.withoutGo} of ${c.jobs} ${typeName(c.type)}`)
            .join(', ')}.`
        : ''}
    </p>
  )
}
