/** Pages that belong together, named on each of them. */
import type { Frame } from './layout.tsx'
import type { Tab } from './nav.ts'

export const Tabs = ({ of, frame }: { of: Tab[]; frame: Frame }) => (
  <nav class="tabs" aria-label="Pages that belong together">
    {of
      .filter((t) => frame.mayOpen(t.href))
      .map((t) => (
        <a href={t.href} aria-current={t.href === frame.path ? 'page' : undefined}>
          {t.label}
        </a>
      ))}
  </nav>
)
