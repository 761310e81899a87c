import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  colonyIn,
  colonyPath,
  type Deps,
  type Env,
  frameFor,
  page,
  signedIn,
  typedIn,
  unknownColony,
} from '../../app/index.ts'
import { nothingThere, originOf } from '../../app/node.ts'
import type { Day } from '../../days.ts'
import type { FormState } from '../../forms/index.ts'
import type { ColonyId } from '../../ids.ts'
import type { History, Outcome } from '../../journal/index.ts'
import { qrCode } from '../../parts/index.ts'
import { digestOf, newToken } from '../../people/node.ts'
import { planOf } from '../../recovery/index.ts'
import { beforeItLeaves, instantWords } from '../../words/index.ts'
import { AddressMade, historyUntil, NothingAtAddress } from '../letters/index.ts'
import { changeRecord } from './change-record.ts'
import { followUpFrom, withFollowUp } from './follow-up-form.ts'
import { KeeperOpenPage, KeeperSheetPage } from './keeper-page.tsx'
import { type KeeperSheet, keeperSheetOf } from './keeper-sheet.ts'

/** Days an address can be opened: a season. */
const GOOD_DAYS = 365
const DAY_MS = 86_400_000

type Store = Pick<Deps, 'store'>

/** The sheet as of a day; of a colony that has left, as of the day it left. Null before the intake. */
function sheetOn({ store }: Store, id: string, history: History, day: Day): KeeperSheet | null {
  const until = historyUntil(history, day)
  if (until === null) return null
  const { outcome, ...rest } = until
  // As it stood when it went: an outcome closes every question, and would leave nothing to tell.
  const open = { ...rest, outcome: null, entries: until.entries.filter((e) => e.kind !== 'outcome') }
  const plan = planOf(open, outcome?.on ?? day, store.protocol())
  return keeperSheetOf(open, plan, store.protocol(), store.after.records.of(id)[0]?.record ?? null)
}

/** Without signing in: a sheet by its secret address. A wrong one gets the same answer whatever is wrong with it. */
export function openKeeperSheet(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { built } = deps.assets
  app.get('/keeper/:token', async (c) => {
    c.header('X-Robots-Tag', 'noindex, nofollow, noarchive')
    const opened = open(c)
    if (opened !== null) return show(c, opened, { typed: {}, problems: [] }, c.req.query('told') === '1')
    return none(c)
  })

  // The new keeper's own answer, into the private record of the move. Nothing that was there can be read or changed here.
  app.post('/keeper/:token', async (c) => {
    const opened = open(c)
    if (opened === null) return none(c)
    const { id, outcome } = opened
    if (outcome === null || outcome.what !== 'moved-out') return none(c)
    const { today, units } = frameFor(c, deps)
    const typed = await typedIn(c)
    const read = followUpFrom(typed, { by: 'the new keeper', left: outcome.on, today, units })
    if (!read.ok) return show(c, opened, { typed, problems: read.problems }, false)
    const stamp = { savedAt: deps.clock().toISOString(), savedBy: 'the new keeper' }
    const problems = changeRecord(deps.store, id, (record) => withFollowUp(record, read.told), stamp)
    if (problems.length > 0) return show(c, opened, { typed, problems }, false)
    return c.redirect(`${c.req.path}?told=1#answer`, 303)
  })
  return app

  /** The colony behind a secret address; null whatever is wrong with it. */
  function open(c: AppContext): Opened | null {
    const now = deps.clock().toISOString()
    const found = deps.store.after.letters.open(digestOf(c.req.param('token') ?? ''), now, 'keeper')
    const colony = found === null ? null : deps.store.colony(found.colony)
    const sheet =
      found === null || colony === null ? null : sheetOn(deps, found.colony, colony.history, found.asOf)
    return colony === null || sheet === null
      ? null
      : { id: colony.summary.id, sheet, outcome: colony.history.outcome }
  }

  function show(c: AppContext, { sheet, outcome }: Opened, form: FormState, thanks: boolean) {
    const answer = outcome?.what === 'moved-out' ? { form, frame: frameFor(c, deps), thanks } : null
    const yard = deps.store.settings.get('yardName')
    return page(
      c,
      <KeeperOpenPage sheet={sheet} yard={yard} built={built} answer={answer} />,
      form.problems.length > 0 ? 422 : 200,
    )
  }

  function none(c: AppContext) {
    return nothingThere(c, deps, (wait) => <NothingAtAddress what="sheet" built={built} wait={wait} />)
  }
}

interface Opened {
  id: ColonyId
  sheet: KeeperSheet
  outcome: Outcome | null
}

/** Signed in: the sheet of a colony, and an address for it. */
export function keeperSheets(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { letters, records } = deps.store.after

  const show = (c: AppContext) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
    const { summary, history } = colony
    const { today, zone } = c.var.frame
    const sheet = sheetOn(deps, summary.id, history, today)
    if (sheet === null) return unknownColony(c, deps, summary.tag)
    const now = deps.clock().toISOString()
    const good = letters
      .list(summary.id)
      .filter((l) => l.what === 'keeper' && l.revokedAt === null && l.expiresAt > now)
    return page(
      c,
      <KeeperSheetPage
        frame={c.var.frame}
        tag={summary.tag}
        path={colonyPath(summary)}
        sheet={sheet}
        yard={deps.store.settings.get('yardName')}
        before={
          summary.outcome === null
            ? beforeItLeaves(summary.plan, records.of(summary.id)[0]?.record.permits ?? [], today)
            : []
        }
        addresses={good.map((l) => ({ id: l.id, until: instantWords(l.expiresAt, zone, today) }))}
      />,
    )
  }

  app.get('/colony/:tag/keeper-sheet', show)

  app.post('/colony/:tag/keeper-sheet', async (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const { today, zone } = c.var.frame
    const token = newToken()
    const expiresAt = new Date(deps.clock().getTime() + GOOD_DAYS * DAY_MS).toISOString()
    letters.add({
      id: v7(),
      colony: colony.summary.id,
      what: 'keeper',
      digest: digestOf(token),
      asOf: today,
      words: null,
      createdAt: deps.clock().toISOString(),
      createdBy: signedIn(c),
      expiresAt,
    })
    const link = `${originOf(c, deps.outside)}/keeper/${token}`
    return page(
      c,
      <AddressMade
        frame={c.var.frame}
        title="The sheet’s address"
        headline="The sheet has an address"
        says={`The new keeper scans it, or you send it. Whoever has it can read the sheet, without an account, until ${instantWords(expiresAt, zone, today)}, or until you take it back.`}
        link={link}
        subject={`Colony ${colony.summary.tag}`}
        to={records.of(colony.summary.id)[0]?.record.buyer?.email}
        qr={qrCode(link)}
        open="Open it"
        back={{ href: `${colonyPath(colony.summary)}/keeper-sheet`, words: 'Back to the sheet' }}
      />,
    )
  })
  return app
}
