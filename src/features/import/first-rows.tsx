/** The first lines of a sheet as they were understood, beside each other. */

import { type Frame, Numbers, Wide } from '../../parts/index.ts'
import { dayWords, temperature } from '../../words/index.ts'
import type { ConvertedRow } from './convert.ts'
import { valueWords } from './page-words.ts'

const SHOWN_ROWS = 8

export const FirstRows = (p: { frame: Frame; good: readonly ConvertedRow[] }) => {
  const { today, units } = p.frame
  const facts = (r: ConvertedRow): string =>
    [
      r.removed_on === undefined || r.removed_on === r.intake_on
        ? ''
        : `removed ${dayWords(r.removed_on, today)}`,
      r.outdoor_c === undefined ? '' : temperature(r.outdoor_c, units),
      r.hours_open_to_boxed === undefined ? '' : `${r.hours_open_to_boxed} h`,
      r.method === undefined ? '' : valueWords.method(r.method),
      frames(r),
      r.removedBy === undefined ? '' : `by ${r.removedBy}`,
      r.stand === undefined ? '' : `stand ${r.stand}`,
      r.site === undefined ? '' : 'customer kept private',
      r.note ?? '',
    ]
      .filter(Boolean)
      .join(', ')
  return (
    <section class="section">
      <h2>The first lines, as they were understood</h2>
      <Wide label="The first lines">
        <Numbers
          class="first-rows"
          heads={['Line', 'Tag', 'From', 'Intake', 'Queen', 'Yard', 'Became', 'Besides']}
        >
          {p.good.slice(0, SHOWN_ROWS).map((r) => (
            <tr>
              <td>{r.line}</td>
              <th scope="row" class="nowrap">
                {r.tag}
              </th>
              <td>{valueWords.removal_type(r.removal_type)}</td>
              <td>{dayWords(r.intake_on, today)}</td>
              <td>{valueWords.queen_at_intake(r.queen_at_intake)}</td>
              <td>{r.yard}</td>
              <td>{becameOf(r, today)}</td>
              <td class="besides">{facts(r)}</td>
            </tr>
          ))}
        </Numbers>
      </Wide>
    </section>
  )
}

function frames(r: ConvertedRow): string {
  const said = [
    [r.egg_frames, 'eggs'],
    [r.open_frames, 'open brood'],
    [r.capped_frames, 'capped brood'],
  ].flatMap(([n, what]) => (n === undefined ? [] : [`${n} ${what}`]))
  return said.length === 0 ? '' : `frames: ${said.join(', ')}`
}

function becameOf(r: ConvertedRow, today: string): string {
  if (r.outcome === undefined) return 'still here'
  const into = r.into === undefined ? '' : ` ${r.into}`
  const when = r.outcome_on === undefined ? 'day not known' : dayWords(r.outcome_on, today)
  return `${valueWords.outcome(r.outcome)}${into}, ${when}`
}
