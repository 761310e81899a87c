/** A page for somebody without an account, by a secret address: nothing on it leads into the book. */
import type { Child } from 'hono/jsx'
import type { Frame } from './layout.tsx'

interface BareProps {
  title: string
  built: Frame['built']
  /** More browser code, by source name. */
  scripts?: string[]
  children?: Child
}

/** No masthead, no ways, not to be found by search; can be printed. */
export const BarePage = ({ title, built, scripts = [], children }: BareProps) => {
  const style = built('styles/index.css')
  const sources = ['islands/print.ts', ...scripts].map(built).filter((src) => src !== null)
  return (
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="robots" content="noindex, nofollow, noarchive" />
        <meta name="color-scheme" content="light dark" />
        <title>{title}</title>
        <link rel="icon" href="/icon.svg" type="image/svg+xml" />
        {style === null ? null : <link rel="stylesheet" href={style} />}
        {sources.map((src) => (
          <script type="module" src={src} />
        ))}
      </head>
      <body>
        <main id="main">{children}</main>
      </body>
    </html>
  )
}
