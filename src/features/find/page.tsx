/** Finding anything: one field, and what fits, the newest first. */
import type { Child } from 'hono/jsx'
import { type Frame, Layout } from '../../parts/index.ts'
import type { Words } from '../../words/index.ts'

export interface BoxLine {
  tag: string
  path: string
  /** 'North field, stand 3' */
  place: string
  /** How it stands, or how it left. */
  standing: string
  left: boolean
}

export interface EntryLine {
  tag: string
  path: string
  on: string
  /** 'the visit', 'the intake' */
  kind: string
  by: string
  text: { text: string; hit: boolean }[]
}

export interface SheetLine {
  path: string
  name: string
  address: string | null
  calledOn: string | null
  boxes: { tag: string; path: string }[]
}

export interface FindProps {
  frame: Frame
  typed: string
  boxes: BoxLine[]
  entries: EntryLine[]
  sheets: SheetLine[]
  /** Boxes written down last, while nothing is typed. */
  recent: BoxLine[]
  /** How many more there are than are shown. */
  more: number
  /** Tags that look like what was typed, where nothing was found. */
  near: BoxLine[]
}

export const FindPage = (p: FindProps) => {
  const said = p.frame.words.finding
  const nothing = p.boxes.length + p.entries.length + p.sheets.length === 0
  return (
    <Layout frame={p.frame} title={said.title}>
      <h1>{said.title}</h1>
      <search>
        <form class="finder" method="get" action="/find">
          <div class="finder-first">
            <label>
              {said.field(p.frame.may('see-private'))}
              <input
                type="search"
                name="q"
                value={p.typed}
                maxlength={80}
                autocomplete="off"
                autocapitalize="off"
                enterkeyhint="search"
                autofocus={p.typed === ''}
              />
            </label>
            <button class="button button-do" type="submit">
              {said.title}
            </button>
          </div>
        </form>
      </search>
      <div id="scan-here" />
      {p.typed === '' ? (
        <Boxes title={said.recent} boxes={p.recent} />
      ) : (
        <>
          <p class="soft" role="status">
            {nothing ? said.nothing(p.typed) : foundWords(p, said)}
          </p>
          {nothing ? <Boxes title={said.near} boxes={p.near} /> : null}
          <Boxes title={said.boxes} boxes={p.boxes} />
          <Sheets sheets={p.sheets} frame={p.frame} />
          <Entries entries={p.entries} frame={p.frame} />
          {p.more === 0 ? null : <p class="soft">{said.more(p.more)}</p>}
          {p.frame.phone === undefined ? null : (
            <p class="fine">{said.onPhone(p.frame.may('removal-sheets'))}</p>
          )}
        </>
      )}
    </Layout>
  )
}

const foundWords = ({ boxes, entries, sheets }: FindProps, said: Words['finding']): string =>
  [
    boxes.length === 0 ? '' : said.countBoxes(boxes.length),
    sheets.length === 0 ? '' : said.countRemovals(sheets.length),
    entries.length === 0 ? '' : said.countEntries(entries.length),
  ]
    .filter((words) => words !== '')
    .join(', ')

const Section = ({ title, children }: { title: string; children?: Child }) => (
  <section class="section">
    <h2>{title}</h2>
    {children}
  </section>
)

const Boxes = ({ title, boxes }: { title: string; boxes: BoxLine[] }) =>
  boxes.length === 0 ? null : (
    <Section title={title}>
      <ol class="lines">
        {boxes.map((b) => (
          <li class="line">
            <div class="line-margin">
              <a class="tag" href={b.path}>
                {b.tag}
              </a>
            </div>
            <div class="line-body">
              <p class={b.left ? 'line-what soft' : 'line-what'}>{b.standing}</p>
              <p class="small">{b.place}</p>
            </div>
          </li>
        ))}
      </ol>
    </Section>
  )

const Sheets = ({ sheets, frame }: { sheets: SheetLine[]; frame: Frame }) =>
  sheets.length === 0 ? null : (
    <Section title={frame.words.finding.removals}>
      <ul class="found">
        {sheets.map((s) => (
          <li>
            <a class="tall" href={s.path}>
              {s.name}
            </a>
            <p class="small">
              {[
                s.address,
                s.calledOn === null
                  ? null
                  : frame.words.finding.called(frame.words.dates.day(s.calledOn, frame.today)),
              ]
                .filter((x) => x !== null)
                .join(' · ')}
              {s.boxes.map((b) => (
                <>
                  {' '}
                  <a class="tag" href={b.path}>
                    {b.tag}
                  </a>
                </>
              ))}
            </p>
          </li>
        ))}
      </ul>
    </Section>
  )

const Entries = ({ entries, frame }: { entries: EntryLine[]; frame: Frame }) =>
  entries.length === 0 ? null : (
    <Section title={frame.words.finding.entries}>
      <ol class="lines">
        {entries.map((e) => (
          <li class="line">
            <div class="line-margin">
              <a class="tag" href={e.path}>
                {e.tag}
              </a>
              <span class="stand">{frame.words.dates.day(e.on, frame.today)}</span>
            </div>
            <div class="line-body">
              <p class="entry-note">
                {e.text.map((part) => (part.hit ? <mark>{part.text}</mark> : part.text))}
              </p>
              <p class="fine">{frame.words.finding.signed(e.kind, e.by)}</p>
            </div>
          </li>
        ))}
      </ol>
    </Section>
  )
