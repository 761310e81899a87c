/** The ways through the book: the bar, and under "More" all other pages in groups, with who is signed in and the way out. */
import type { Frame } from './layout.tsx'
import { GROUPS, WAYS, type Way } from './nav.ts'

export const Ways = ({ frame }: { frame: Frame }) => {
  const { path } = frame
  const ways = WAYS.filter((w) => frame.mayOpen(w.href))
  return (
    <nav class="ways" aria-label="Pages">
      {ways
        .filter((w) => w.place === 'bar')
        .map((w) => (
          <WayLink way={w} path={path} />
        ))}
      <details class="ways-more">
        <summary class="way">More</summary>
        <div class="ways-menu">
          {GROUPS.map((name) => (
            <WayGroup name={name} ways={ways.filter((w) => w.place === name)} path={path} />
          ))}
          <Who frame={frame} />
        </div>
      </details>
    </nav>
  )
}

const WayGroup = ({ name, ways, path }: { name: string; ways: Way[]; path: string }) =>
  ways.length === 0 ? null : (
    <section class="ways-group" aria-label={name}>
      <p aria-hidden="true">{name}</p>
      {ways.map((w) => (
        <WayLink way={w} path={path} />
      ))}
    </section>
  )

/** Who signs what is written down here, and the way out. */
const Who = ({ frame }: { frame: Frame }) => (
  <section class="ways-who" aria-label="Your account">
    <a
      class="way way-in-menu"
      href="/account"
      aria-current={frame.path.startsWith('/account') ? 'page' : undefined}
    >
      <span>
        {frame.viewer?.name} <small class="soft">your account</small>
      </span>
    </a>
    <form method="post" action="/sign-out">
      <button class="button" type="submit">
        Sign out
      </button>
    </form>
  </section>
)

const WayLink = ({ way, path }: { way: Way; path: string }) => (
  <a
    class={way.place === 'bar' ? 'way' : 'way way-in-menu'}
    href={way.href}
    aria-current={way.href === path ? 'page' : undefined}
  >
    {way.label}
  </a>
)
