/** How far one has got: in words, and as a bar of boxes ticked off. */
import type { Words } from '../../words/index.ts'
import type { Round } from './round.ts'
import { progressMore, progressWords } from './words.ts'

const MARK = {
  'to-do': 'pace-open',
  seen: 'pace-seen',
  'not-reached': 'pace-missed',
  'put-off': 'pace-open',
} as const

/** One short stroke a box, in stand order: full when seen, crossed when not reached. The words say the same. */
interface ProgressProps {
  round: Round
  words: Words
  here?: string
}

export const RoundProgress = ({ round, words, here }: ProgressProps) => {
  const n = Math.max(1, round.stops.length)
  return (
    <p class="pace">
      <span class="pace-words">{progressWords(round.progress, words)}</span>{' '}
      <span class="pace-more">{progressMore(round.progress, words)}</span>
      <svg class="pace-bar" viewBox={`0 0 ${n * 10} 12`} preserveAspectRatio="none" aria-hidden="true">
        {round.stops.map((s, i) => (
          <rect
            class={`${MARK[s.state]}${s.box.id === here ? ' pace-here' : ''}`}
            x={i * 10 + 1}
            y={s.box.id === here ? 0 : 3}
            width={8}
            height={s.box.id === here ? 12 : 6}
          />
        ))}
      </svg>
    </p>
  )
}
