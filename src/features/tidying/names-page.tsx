/** Removal types, yards and people by name: what looks like one and can be merged, and any name renamed. */

import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import type { Tidied } from '../../store/index.ts'
import { labelIn, removalTypes, type SameName } from '../../words/index.ts'
import { NAMED, type NameCount, type Named, type Names } from './names.ts'
import { Past } from './past.tsx'

interface NamesProps {
  frame: Frame
  /** Of the next change: sent twice, it is one. */
  id: string
  names: Names
  offers: Record<Named, SameName[]>
  /** People who can sign in: their names stay. */
  accounts: readonly string[]
  past: readonly Tidied[]
  done: Tidied | null
  problems: string[]
}

const TITLES: Record<Named, string> = { removalType: 'Removal types', yard: 'Yards', person: 'People' }

const shown = (what: Named, name: string): string =>
  what === 'removalType' ? labelIn(removalTypes([name]), name) : name

export const NamesPage = (p: NamesProps) => {
  const offered = NAMED.flatMap((what) => p.offers[what].map((same) => ({ what, same })))
  return (
    <Layout frame={p.frame} title="Names" ways={false}>
      <Crumb to="/data">Data and backups</Crumb>
      <h1>Names merged and renamed</h1>
      <Past {...p} of="names" />
      <p>
        Each entry with the old name gets a correction with the new one; the old ones stay in the history of
        changes, and the whole change can be taken back.
      </p>
      <section class="section">
        <h2>Names that look like one</h2>
        {offered.length === 0 ? <p>None: no two names differ only in capitals, spaces or dashes.</p> : null}
        {offered.map(({ what, same }) => (
          <Offer of={p} what={what} same={same} />
        ))}
      </section>
      <section class="section">
        <h2>Rename</h2>
        <p>Given a name that is there already, both are one from then on.</p>
        {NAMED.map((what) => (
          <Rename of={p} what={what} />
        ))}
      </section>
    </Layout>
  )
}

const entriesOf = (n: number): string => (n === 1 ? '1 entry' : `${n} entries`)

const countOf = (names: readonly NameCount[], name: string): number =>
  names.find((n) => n.name === name)?.entries ?? 0

const Offer = ({ of: p, what, same }: { of: NamesProps; what: Named; same: SameName }) => {
  // A name that signs in is kept, whatever else it looks like.
  const others = what === 'person' ? same.others.filter((name) => !p.accounts.includes(name)) : same.others
  const changed = others.reduce((sum, name) => sum + countOf(p.names[what], name), 0)
  return others.length === 0 ? null : (
    <form method="post" action="/data/names" class="tidy-offer">
      <input type="hidden" name="id" value={p.id} />
      <input type="hidden" name="what" value={what} />
      <input type="hidden" name="to" value={same.keep} />
      {others.map((name) => (
        <input type="hidden" name="from" value={name} />
      ))}
      <p>
        {TITLES[what]}: {[same.keep, ...others].map((name) => `“${name}”`).join(', ')}
      </p>
      <button class="button" type="submit">
        All are “{same.keep}”: correct {entriesOf(changed)}
      </button>
    </form>
  )
}

const Rename = ({ of: p, what }: { of: NamesProps; what: Named }) => {
  const names = p.names[what].filter(({ name }) => what !== 'person' || !p.accounts.includes(name))
  return names.length === 0 ? null : (
    <form method="post" action="/data/names" class="tidy-rename">
      <h3>{TITLES[what]}</h3>
      <input type="hidden" name="id" value={p.id} />
      <input type="hidden" name="what" value={what} />
      <div class="field">
        <label for={`f-from-${what}`}>This name</label>
        <select id={`f-from-${what}`} name="from" class="wide">
          {names.map(({ name, entries }) => (
            <option value={name}>
              {shown(what, name)} ({entries})
            </option>
          ))}
        </select>
      </div>
      <div class="field">
        <label for={`f-to-${what}`}>is from now on</label>
        <input
          id={`f-to-${what}`}
          type="text"
          name="to"
          required
          class="wide"
          maxlength={what === 'removalType' ? 40 : 80}
          autocomplete="off"
          list={`f-to-${what}-list`}
        />
        <datalist id={`f-to-${what}-list`}>
          {p.names[what].map(({ name }) => (
            <option value={name} />
          ))}
        </datalist>
      </div>
      <button class="button" type="submit">
        Rename
      </button>
    </form>
  )
}
