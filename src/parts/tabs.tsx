/** Pages that belong together, named on each of them. */
import type { Frame } from './layout.tsx'
import type { Tab } from './nav.ts'

export const Tabs = ({ of, frame }: { of: Tab[]; frame: Frame }) => (
  <nav class="tabs" aria-label={frame.words.together}>
    {of
      .filter((href) => frame.mayOpen(href))
      .map((href) => (
        <a href={href} aria-current={href === frame.path ? 'page' : undefined}>
          {frame.words.tabs[href]}
        </a>
      ))}
  </nav>
)
