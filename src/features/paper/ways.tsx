/** The three things done with paper, on top of each of their pages. */
import type { Frame } from '../../parts/index.ts'

const WAYS = ['/paper', '/sheet-entry', '/labels'] as const

export const PaperWays = ({ frame }: { frame: Frame }) => {
  const { onPaper, ways } = frame.words.paper
  return (
    <nav class="picker no-print" aria-label={onPaper}>
      {WAYS.filter((href) => frame.mayOpen(href)).map((href) => (
        <a class="pick" href={href} aria-current={href === frame.path ? 'true' : undefined}>
          <b>{ways[href]}</b>
        </a>
      ))}
    </nav>
  )
}
