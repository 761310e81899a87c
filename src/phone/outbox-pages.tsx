/** The outbox as pages: what waits, changing it, taking it out. Only a phone has these. */

import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  type Env,
  type PageDeps,
  page,
  signedIn,
  submit,
  typedIn,
  unknownPage,
  withIds,
  withPhotos,
} from '../app/index.ts'
import { CorrectPage, ownTypes } from '../features/entries/index.ts'
import {
  type OutboxItem,
  OutboxPage,
  type OwnItem,
  type SheetItem,
  TakeOutPage,
  TakeOutSheetPage,
} from '../features/offline/index.ts'
import { foundWords } from '../features/removal/index.ts'
import { correctionOf, type FieldProblem, one, type Typed, typedOf } from '../forms/index.ts'
import { EMPTY_SHEET, photosOfSheet, sheetName } from '../records/index.ts'
import type { Repository } from '../store/index.ts'
import {
  isRefused,
  isToldTo,
  type KeptSheet,
  type Waiting,
  type WaitingSheet,
  waitingOn,
} from './database.ts'
import { killsOn } from './memory.ts'
import { mayBeThere } from './outbox.ts'
import { isStuck, restsOn } from './sender.ts'
import { takenOut } from './sheet-outbox.ts'

/** What the pages of the outbox can do to it. */
export interface OutboxActions {
  waiting: readonly Waiting[]
  sheets: readonly KeptSheet[]
  overSheet: (id: string) => Promise<void>
  takeOutSheet: (id: string) => Promise<void>
  /** What was told of sheets has been read. */
  said: () => Promise<void>
  /** Id of who is signed in. */
  person: string
  signIn: boolean
  /** The book as it would be without this one, and what was then appended to it. */
  bookWithout: (w: Waiting) => {
    repository: Pick<Repository, 'append'>
    made: () => Waiting['entry'] | undefined
  }
  rewrite: (n: number, entry: Waiting['entry']) => Promise<void>
  sendAgain: (n: number) => Promise<void>
  takeOut: (n: number) => Promise<void>
  /** Its day is right, whatever the phone’s clock was. */
  dayRight: (n: number) => Promise<void>
  send: () => Promise<void>
}

export function outboxPages(deps: PageDeps, actions: OutboxActions): Hono<Env> {
  const app = new Hono<Env>()
  const items = itemsOf(actions)
  const itemIn = (c: AppContext): { item: OwnItem; w: Waiting } | null => {
    const n = Number(c.req.param('n'))
    const item = items.find((i) => i.n === n)
    const w = actions.waiting.find((x) => x.n === n)
    return item === undefined || item.state === 'theirs' || w === undefined ? null : { item, w }
  }

  app.get('/outbox', async (c) => {
    const told = actions.sheets.filter((s) => isToldTo(s, actions.person))
    const { frame } = c.var
    const made = page(
      c,
      <OutboxPage {...{ frame, items, told }} sheets={sheetItems(actions)} signIn={actions.signIn} />,
    )
    if (told.length > 0) await actions.said()
    return made
  })

  const ownSheet = (c: AppContext): SheetItem | undefined =>
    sheetItems(actions).find((s) => s.id === c.req.param('id') && s.own !== null)

  app.post('/outbox/sheet/:id/over', async (c) => {
    if (ownSheet(c)?.own?.problems.length) await actions.overSheet(c.req.param('id'))
    return c.redirect('/outbox', 303)
  })

  app.get('/outbox/sheet/:id/take-out', (c) => {
    const sheet = ownSheet(c)
    return sheet?.own
      ? page(c, <TakeOutSheetPage frame={c.var.frame} id={sheet.id} own={sheet.own} />)
      : c.redirect('/outbox', 303)
  })

  app.post('/outbox/sheet/:id/take-out', async (c) => {
    if (ownSheet(c) !== undefined) await actions.takeOutSheet(c.req.param('id'))
    return c.redirect('/outbox', 303)
  })

  app.post('/outbox/send', async (c) => {
    await actions.send()
    return c.redirect('/outbox', 303)
  })

  app.get('/outbox/entries.json', (c) => {
    c.header('Content-Disposition', 'attachment; filename="waiting-entries.json"')
    c.header('Cache-Control', 'no-store')
    // The copy can be handed on: only what whoever is signed in has written.
    const own = actions.waiting.filter((w) => w.owner.id === actions.person)
    const copy = own.map((w) => ({ ...w.entry, tag: w.tag, keptAt: w.keptAt }))
    return c.body(JSON.stringify(copy, null, 2), 200, { 'Content-Type': 'application/json' })
  })

  const form = (c: AppContext, { w }: { w: Waiting }, typed: Typed, problems: FieldProblem[]) =>
    w.entry.kind === 'withdrawal'
      ? unknownPage(c)
      : page(
          c,
          <CorrectPage
            frame={c.var.frame}
            form={{ typed, problems }}
            entry={w.entry}
            tag={w.tag}
            path="/outbox"
            yards={deps.store.yards().map((y) => y.yard)}
            types={ownTypes(deps.store)}
            tags={deps.store.colonies({ open: true }).map((s) => s.tag)}
            unsent={`/outbox/${w.n}`}
          />,
          problems.length === 0 ? 200 : 422,
        )

  app.get('/outbox/:n{[0-9]+}', (c) => {
    const found = itemIn(c)
    if (found === null) return c.redirect('/outbox', 303)
    if (found.item.change !== `/outbox/${found.w.n}`) return c.redirect(found.item.change ?? '/outbox', 303)
    const { entry } = found.w
    const tag = entry.kind === 'intake' ? { colony: [entry.colony] } : {}
    const wrong = found.item.problems.map((p) => ({ ...p, field: p.field === 'kind' ? '' : p.field }))
    return form(c, found, { ...typedOf(entry, c.var.frame.units), ...tag, id: [v7()] }, wrong)
  })

  app.post('/outbox/:n{[0-9]+}', async (c) => {
    const found = itemIn(c)
    if (found === null || found.item.change !== `/outbox/${found.w.n}`) return c.redirect('/outbox', 303)
    const { w } = found
    const came = await withPhotos(c, deps, await typedIn(c))
    const typed = withIds(came.typed, ['id'])
    const draft = correctionOf(w.entry, typed, c.var.frame.units)
    draft.problems.push(...came.problems)
    const colony = w.entry.kind === 'intake' ? one(typed, 'colony') : w.entry.colony
    const { repository, made } = actions.bookWithout(w)
    const replaces = w.entry.replaces === undefined ? {} : { replaces: w.entry.replaces }
    const sent = [{ draft, id: w.id, colony, ...replaces }]
    // Judged by the book without it, but the yard it names is not a new one: that was asked when it was written.
    const store = { ...deps.store, append: repository.append }
    const saved = await submit({ store, clock: deps.clock }, c.var.frame.today, signedIn(c), sent)
    const entry = made()
    if (!saved.ok || entry === undefined) return form(c, found, typed, saved.ok ? [] : saved.problems)
    await actions.rewrite(w.n, entry)
    return c.redirect('/outbox', 303)
  })

  app.post('/outbox/:n{[0-9]+}/again', async (c) => {
    const found = itemIn(c)
    if (found !== null) await actions.sendAgain(found.w.n)
    return c.redirect('/outbox', 303)
  })

  app.post('/outbox/:n{[0-9]+}/day-right', async (c) => {
    const found = itemIn(c)
    if (found !== null) await actions.dayRight(found.w.n)
    return c.redirect('/outbox', 303)
  })

  app.get('/outbox/:n{[0-9]+}/take-out', (c) => {
    const found = itemIn(c)
    return found?.item.removable
      ? page(c, <TakeOutPage frame={c.var.frame} item={found.item} />)
      : c.redirect('/outbox', 303)
  })

  app.post('/outbox/:n{[0-9]+}/take-out', async (c) => {
    const found = itemIn(c)
    if (found?.item.removable) await actions.takeOut(found.w.n)
    return c.redirect('/outbox', 303)
  })
  return app
}

/** Of another person's sheet no more than that there is one, and what on it can kill. */
const sheetItems = ({ sheets }: OutboxActions): SheetItem[] =>
  sheets.flatMap((kept) =>
    waitingOn(kept).map((w) => ({
      id: kept.id,
      owner: w.owner.name,
      keptAt: w.keptAt,
      kills: killsOn({ ...kept, mine: w, aside: [] })[0]?.what ?? '',
      stuck: isRefused(w),
      own: w === kept.mine ? ownOf({ ...kept, mine: w }) : null,
    })),
  )

function ownOf({ mine, ...kept }: KeptSheet & { mine: WaitingSheet }): SheetItem['own'] {
  const { left, out } = takenOut({ ...kept, mine })
  // The server said the line of a field as “Label: theirs …”.
  const labels = (path: string) =>
    (mine.refused ?? []).flatMap((p) => (p.field === path ? p.message.toLowerCase().split(':', 1) : []))
  return {
    name: sheetName(mine.sheet),
    problems: mine.refused ?? [],
    again: mine.unaccepted === true,
    over: mine.clash !== undefined && out?.length !== 0,
    out: out === null ? null : out.flatMap(labels).join(', ') || (out.length === 0 ? '' : null),
    stays: left !== null,
    photos: photosOfSheet(mine.sheet).filter((id) => !photosOfSheet(mine.from ?? EMPTY_SHEET).includes(id)),
    found: foundWords(left?.sheet ?? mine.sheet, kept.theirs?.sheet ?? EMPTY_SHEET),
  }
}

function itemsOf({ waiting, person }: OutboxActions): OutboxItem[] {
  const stuck = waiting.filter(isStuck)
  return waiting.map((w) => {
    const kept = { n: w.n, id: w.id, tag: w.tag, on: w.entry.on, owner: w.owner.name }
    if (w.owner.id !== person) return { ...kept, kind: w.entry.kind, state: 'theirs', stuck: isRefused(w) }
    const maybe = mayBeThere(w)
    return {
      ...kept,
      entry: w.entry,
      keptAt: w.keptAt,
      state:
        w.refused !== null
          ? 'refused'
          : w.clock !== undefined
            ? 'day'
            : restsOn(w, stuck)
              ? 'resting'
              : 'waiting',
      clock: w.clock ?? null,
      problems: w.refused ?? [],
      change: w.entry.kind === 'withdrawal' ? null : maybe ? `/entry/${w.id}/correct` : `/outbox/${w.n}`,
      // Others in the outbox may rest on it: a visit on the intake of its box.
      back: maybe && w.entry.kind !== 'withdrawal' ? `/entry/${w.id}/withdraw` : null,
      removable: !maybe && !waiting.some((other) => other.n !== w.n && restsOn(other, [w])),
    }
  })
}
