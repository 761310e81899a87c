/** Years, yards, people, methods, heat side by side: what became of their colonies, and the same had the jobs been alike. */

import { Part, Reading, Wide } from '../../parts/index.ts'
import { capital } from '../../words/index.ts'
import type { Comparison } from './compare.ts'
import { comparable, comparisonReadings } from './compared-reading.ts'
import type { ReviewProps } from './part-props.ts'
import { ShareCell } from './share-cell.tsx'
import { COHORT_WORDS, groupName } from './words.ts'

/** Groups in a table: with more, the smallest are added up in no line and only counted. */
const MOST_ROWS = 8

export const Compared = (p: ReviewProps) => {
  const all = comparable(p.look.compared)
  const readings = comparisonReadings(all)
  return (
    <>
      <p class="small soft">
        By day {all[0]?.day ?? 60} since intake. Whoever takes the hard jobs loses more colonies; that alone
        says nothing of them. Many looks at once find something by chance: every p here is raised for them
        (Holm).
      </p>
      {all.length === 0 ? <p>There are not two years, yards, people or methods to compare yet.</p> : null}
      {all.map((c, i) => (
        <Part id={`by-${c.by}`} title={capital(COHORT_WORDS[c.by])}>
          <Rows of={p} comparison={c} />
          <Reading>{readings[i]}</Reading>
        </Part>
      ))}
    </>
  )
}

const Rows = ({ of: p, comparison: c }: { of: ReviewProps; comparison: Comparison }) => {
  // Time reads forward: of years the last ones are shown. Of everything else the largest.
  const shown =
    c.by === 'year'
      ? c.groups.slice(-MOST_ROWS)
      : [...c.groups].sort((a, b) => b.colonies - a.colonies).slice(0, MOST_ROWS)
  const rest = c.groups.length - shown.length
  return (
    <Wide label={`By ${COHORT_WORDS[c.by]}`}>
      <table class="numbers">
        <thead>
          <tr>
            <th scope="col">{capital(COHORT_WORDS[c.by])}</th>
            <th scope="col">moved out</th>
            <th scope="col">lost</th>
            {c.held === null ? null : <th scope="col">lost, same jobs</th>}
          </tr>
        </thead>
        <tbody>
          {shown.map((g) => (
            <tr>
              <th scope="row">
                {groupName(c.by, g.name, p.naming)} <span class="soft">{g.colonies}</span>
              </th>
              {g.was.shares === null ? (
                <td colspan={2} class="soft">
                  {g.was.thin === null ? 'nobody followed that long yet' : 'too few left to say'}
                </td>
              ) : (
                <>
                  <ShareCell share={g.was.shares.movedOut} />
                  <ShareCell share={g.was.shares.lost} />
                </>
              )}
              {c.held === null ? null : g.held === null ? <td /> : <ShareCell share={g.held.lost} />}
            </tr>
          ))}
        </tbody>
      </table>
      {rest === 0 ? null : <p class="small soft">And {rest} more: narrow the choice above to see them.</p>}
    </Wide>
  )
}
