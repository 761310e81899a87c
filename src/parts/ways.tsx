/** The ways through the book: the bar, and under "More" all other pages in groups, with who is signed in and the way out. */
import type { Frame } from './layout.tsx'
import { GROUPS, WAYS, type Way } from './nav.ts'

export const Ways = ({ frame }: { frame: Frame }) => {
  const { words } = frame
  const ways = WAYS.filter((w) => frame.mayOpen(w.href))
  return (
    <nav class="ways" aria-label={words.pages}>
      {ways
        .filter((w) => w.place === 'bar')
        .map((w) => (
          <WayLink way={w} frame={frame} />
        ))}
      <details class="ways-more">
        <summary class="way">{words.more}</summary>
        <div class="ways-menu">
          {GROUPS.map((name) => (
            <WayGroup name={words.groups[name]} ways={ways.filter((w) => w.place === name)} frame={frame} />
          ))}
          <Who frame={frame} />
        </div>
      </details>
    </nav>
  )
}

const WayGroup = ({ name, ways, frame }: { name: string; ways: Way[]; frame: Frame }) =>
  ways.length === 0 ? null : (
    <section class="ways-group" aria-label={name}>
      <p aria-hidden="true">{name}</p>
      {ways.map((w) => (
        <WayLink way={w} frame={frame} />
      ))}
    </section>
  )

/** Who signs what is written down here, and the way out. */
const Who = ({ frame }: { frame: Frame }) => (
  <section class="ways-who" aria-label={frame.words.yourAccount}>
    <a
      class="way way-in-menu"
      href="/account"
      aria-current={frame.path.startsWith('/account') ? 'page' : undefined}
    >
      <span>
        {frame.viewer?.name} <small class="soft">{frame.words.yourAccount}</small>
      </span>
    </a>
    <form method="post" action="/sign-out">
      <button class="button" type="submit">
        {frame.words.signOut}
      </button>
    </form>
  </section>
)

const WayLink = ({ way, frame: { path, words } }: { way: Way; frame: Frame }) => (
  <a
    class={way.place === 'bar' ? 'way' : 'way way-in-menu'}
    href={way.href}
    aria-current={way.href === path ? 'page' : undefined}
  >
    {words.ways[way.href]}
  </a>
)
