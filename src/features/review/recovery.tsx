/** How colonies came by a laying queen, and after how many days that was proven. */

import { Part, Reading, Wide } from '../../parts/index.ts'
import { percent } from '../../words/index.ts'
import { CsvLinks } from './csv-links.tsx'
import { pathReading } from './findings-reading.ts'
import type { ReviewProps } from './part-props.ts'
import { StepChart } from './plot.tsx'
import type { PathCount } from './recovery-path.ts'
import { PATH_NAMES } from './words.ts'

/** The share proven queenright by the last day anybody was followed, in a sentence. */
export function queenrightReading({ look }: Pick<ReviewProps, 'look'>): string {
  const { queenright: q, paths } = look
  const proven = paths.reduce((sum, p) => sum + (p.days === null ? 0 : p.colonies), 0)
  if (q.colonies === 0) return 'No colonies yet.'
  if (proven === 0) return 'No colony has been proven queenright yet.'
  const half = q.days[q.ways[0]?.share.findIndex((s) => s >= 0.5) ?? -1]
  const share = q.ways[0]?.share.at(-1) ?? 0
  const open = paths.find((p) => p.path === 'not-yet')?.colonies ?? 0
  if (half !== undefined && open > 0)
    return `Counting those still open for as long as they were followed, half of the colonies are proven queenright by day ${half}, and ${percent(share)} by the last day anyone was followed; the others leave or are lost first.`
  return half === undefined
    ? `Worker brood has proven a mated queen in ${percent(share)} of colonies so far, the wait of those still open counted.`
    : `Half of the colonies were proven queenright by day ${half}; by the last day anyone was followed it was ${percent(share)}, and the others had left or were lost first.`
}

export const Recovery = (p: ReviewProps) => {
  const reading = queenrightReading(p)
  return (
    <Part id="recovery" title="How they came by a queen">
      <Reading>{reading}</Reading>
      <div class="two-days">
        <div>
          <StepChart
            id="queenright"
            axis={p.charts.queenright.axis}
            lines={[p.charts.queenright.line]}
            named={false}
            counted="Colonies still open on that day"
            text={`Share of colonies proven queenright, by days since intake. ${reading}`}
          />
          <p class="readout" data-readout="queenright">
            Proven: flat worker caps that only a mated queen here can have laid. Shaded: 95 % limits.
          </p>
        </div>
        <PathTable paths={p.look.paths} />
      </div>
      <ul class="sentences">
        {p.look.paths
          .filter((path) => path.colonies > 0)
          .map((path) => (
            <li>{pathReading(path)}</li>
          ))}
      </ul>
      <CsvLinks of={p} files={{ paths: 'Paths as CSV', queenright: 'Queenright by day as CSV' }} />
    </Part>
  )
}

/** Each path with its colonies as a bar, and the days to the proof. */
export const PathTable = ({ paths }: { paths: readonly PathCount[] }) => {
  const most = Math.max(1, ...paths.map((x) => x.colonies))
  return (
    <Wide label="Paths">
      <table class="paths">
        <caption>Paths</caption>
        <thead>
          <tr>
            <th scope="col">Path</th>
            <th scope="col">Colonies</th>
            <th scope="col">Days to proof</th>
          </tr>
        </thead>
        <tbody>
          {paths.map((path) => (
            <tr>
              <th scope="row">{PATH_NAMES[path.path]}</th>
              <td>
                <div class="bar-cell">
                  <svg class="bar" aria-hidden="true" focusable="false">
                    <rect width={`${Math.round((100 * path.colonies) / most)}%`} height="100%" />
                  </svg>
                  {path.colonies}
                </div>
              </td>
              <td>{path.days === null ? '' : daysWords(path.days)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  )
}

/** '37 (34 to 40)', or one number where all are alike. */
const daysWords = ({ median, least, most }: NonNullable<PathCount['days']>): string =>
  least === most ? String(median) : `${median} (${least} to ${most})`
