import type { PropsWithChildren } from 'hono/jsx'

/** Above a page's title: back to what it belongs to. */
export const Crumb = ({ to, children }: PropsWithChildren<{ to: string }>) => (
  <p class="crumb">
    <a href={to}>‹ {children}</a>
  </p>
)
