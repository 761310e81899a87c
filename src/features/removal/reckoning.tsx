/** What is unmet before the cut, and who decides. It never says that a job is harmless. */
import type { Reckoning } from './before-cut.ts'
import type { Item } from './item.ts'
import { ITEM_STATE, RECKONING_NOTE, reckoningTitle } from './words.ts'

export const ReckoningBox = ({ reckoning: r, level = 2 }: { reckoning: Reckoning; level?: 2 | 3 }) => {
  const Title = level === 2 ? 'h2' : 'h3'
  return (
    <div class={r.says === 'nothing-unmet' ? 'notice reckoning' : 'notice notice-late reckoning'}>
      <Title>{reckoningTitle(r)}</Title>
      {r.unmet.length === 0 ? null : (
        <ul class="unmet">
          {r.unmet.map((i) => (
            <Unmet item={i} />
          ))}
        </ul>
      )}
      <p class="small">{RECKONING_NOTE}</p>
    </div>
  )
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const Unmet = ({ item: i }: { item: Item }) => (
  <li>
    <strong>{i.what}</strong>
    {i.state === 'unsaid' ? ` (${ITEM_STATE.unsaid})` : ''}. {i.why}{' '}
    <span class="decides">Who decides: {lower(i.decides)}.</span>
  </li>
)

/** The whole list, with what is met and what is not needed. */
export const ReckoningList = ({ reckoning: r }: { reckoning: Reckoning }) => (
  <ul class="items">
    {r.items.map((i) => (
      <li class={`item item-${i.state}`}>
        <span class="item-mark" aria-hidden="true">
          {i.state === 'met' ? '✓' : i.state === 'not-needed' ? '–' : '▲'}
        </span>
        <span>
          <b>{i.what}</b>: {ITEM_STATE[i.state]}. <span class="soft">{i.why}</span>
        </span>
      </li>
    ))}
  </ul>
)
