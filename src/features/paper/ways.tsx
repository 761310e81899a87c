/** The three things done with paper, on top of each of their pages. */
import type { Frame } from '../../parts/index.ts'

const WAYS = [
  { href: '/paper', label: 'Print a round sheet' },
  { href: '/sheet-entry', label: 'Type in a sheet' },
  { href: '/labels', label: 'Stand labels' },
]

export const PaperWays = ({ frame }: { frame: Frame }) => (
  <nav class="picker no-print" aria-label="On paper">
    {WAYS.filter((w) => frame.mayOpen(w.href)).map((w) => (
      <a class="pick" href={w.href} aria-current={w.href === frame.path ? 'true' : undefined}>
        <b>{w.label}</b>
      </a>
    ))}
  </nav>
)
