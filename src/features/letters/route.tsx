import { Hono } from 'hono'
import { v7 } from 'uuid'
import {
  type AppContext,
  colonyIn,
  colonyPath,
  type Deps,
  type Env,
  page,
  typedIn,
  unknownColony,
  viewerOf,
} from '../../app/index.ts'
import { nothingThere, originOf } from '../../app/node.ts'
import { addDays, type Day, earlier, isDay } from '../../days.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import type { History } from '../../journal/index.ts'
import { qrCode } from '../../parts/index.ts'
import { digestOf, newToken } from '../../people/node.ts'
import type { SentLetter } from '../../store/index.ts'
import { instantWords } from '../../words/index.ts'
import { lettersDue } from './due.ts'
import { historyUntil, type Letter, letterOf } from './letter.ts'
import { LetterPage, NothingAtAddress } from './letter-page.tsx'
import { AddressMade, type LetterLine, LetterPreviewPage, LettersPage, WORDS_LIMIT } from './page.tsx'

/** The day of the hold that the letter is usually written on. */
const USUAL_DAY = 30
/** Days an address can be opened. */
const GOOD_DAYS = 365
const DAY_MS = 86_400_000

/** The letter of a history as of a day; null before the intake. */
function letterOn(deps: Pick<Deps, 'store'>, history: History, asOf: Day): Letter | null {
  const until = historyUntil(history, asOf)
  if (until === null) return null
  const plan = deps.store.plan(until, until.outcome?.on ?? asOf)
  return letterOf(until, plan, asOf)
}

/**
 * Without signing in: a letter by its secret address. Whatever is wrong with an address gets the same answer, and trying
 * many is slowed down.
 */
export function openLetter(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const { built } = deps.assets
  const find = (c: AppContext): { letter: Letter; words: string | null } | null => {
    const now = deps.clock().toISOString()
    const sent = deps.store.after.letters.open(digestOf(c.req.param('token') ?? ''), now)
    const colony = sent === null ? null : deps.store.colony(sent.colony)
    if (sent === null || colony === null) return null
    const letter = letterOn(deps, colony.history, sent.asOf)
    return letter === null ? null : { letter, words: sent.words }
  }
  app.get('/letter/:token', async (c) => {
    c.header('X-Robots-Tag', 'noindex, nofollow, noarchive')
    const found = find(c)
    if (found !== null) return page(c, <LetterPage {...found} built={built} />)
    return nothingThere(c, deps, (wait) => <NothingAtAddress what="letter" built={built} wait={wait} />)
  })
  return app
}

/** Signed in: a colony's letter looked at and given an address; all letters, and taking addresses back. */
export function letters(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const kept = deps.store.after.letters

  const line = (c: AppContext, l: SentLetter): LetterLine => {
    const { zone, today } = c.var.frame
    const summary = deps.store.colony(l.colony)?.summary ?? null
    const good = l.revokedAt === null && l.expiresAt > deps.clock().toISOString()
    return {
      id: l.id,
      tag: summary?.tag ?? null,
      path: summary === null ? null : colonyPath(summary),
      asOf: l.asOf,
      what: l.what,
      made: instantWords(l.createdAt, zone, today),
      by: l.createdBy,
      until: good ? instantWords(l.expiresAt, zone, today) : null,
    }
  }
  const show = (c: AppContext, typed: Typed, problems: FieldProblem[] = []) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
    const { summary, history } = colony
    return page(
      c,
      <LetterPreviewPage
        frame={c.var.frame}
        form={{ typed, problems }}
        tag={summary.tag}
        path={colonyPath(summary)}
        letter={problems.length > 0 ? null : letterOn(deps, history, one(typed, 'asOf'))}
        words={one(typed, 'words') || null}
        sent={kept
          .list(summary.id)
          .filter((l) => l.what === 'letter')
          .map((l) => line(c, l))}
        earliest={history.intake.on}
      />,
      problems.length === 0 ? 200 : 422,
    )
  }

  app.get('/colony/:tag/letter', (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const { intake, outcome } = colony.history
    const usual = outcome?.on ?? earlier(c.var.frame.today, addDays(intake.on, USUAL_DAY))
    return show(c, { asOf: [usual] })
  })

  app.post('/colony/:tag/letter', async (c) => {
    const colony = colonyIn(c, deps.store)
    if (colony === null) return unknownColony(c, deps, c.req.param('tag'))
    const typed = await typedIn(c)
    const problems = problemsIn(typed, colony.history.intake.on, c.var.frame.today)
    if (problems.length > 0 || one(typed, 'do') !== 'make') return show(c, typed, problems)
    const token = newToken()
    const expires = new Date(deps.clock().getTime() + GOOD_DAYS * DAY_MS).toISOString()
    kept.add({
      id: v7(),
      colony: colony.summary.id,
      digest: digestOf(token),
      asOf: one(typed, 'asOf'),
      words: one(typed, 'words') || null,
      createdAt: deps.clock().toISOString(),
      createdBy: viewerOf(c).name,
      expiresAt: expires,
    })
    const link = `${originOf(c, deps.outside)}/letter/${token}`
    const { zone, today } = c.var.frame
    return page(
      c,
      <AddressMade
        frame={c.var.frame}
        title="The letter’s address"
        headline="The letter has an address"
        says={`Whoever has this address can read the letter, without an account, until ${instantWords(expires, zone, today)}, or until you take it back.`}
        link={link}
        subject="Your bees"
        to={customersMail(deps.store, colony.summary.id)}
        qr={qrCode(link)}
        open="Open it, to print"
        back={{ href: colonyPath(colony.summary), words: `Back to ${colony.summary.tag}` }}
      />,
    )
  })

  app.get('/letters', (c) =>
    page(
      c,
      <LettersPage
        frame={c.var.frame}
        lines={kept.list().map((l) => line(c, l))}
        due={lettersDue(deps.store, c.var.frame.today).map((s) => ({
          tag: s.tag,
          path: `${colonyPath(s)}/letter`,
        }))}
      />,
    ),
  )

  app.post('/letters/:id/revoke', async (c) => {
    kept.revoke(c.req.param('id'), deps.clock().toISOString())
    const back = one(await typedIn(c), 'back')
    return c.redirect(/^\/colony\/[^/\\?#]+\/(letter|keeper-sheet)$/.test(back) ? back : '/letters', 303)
  })
  return app
}

/** Where the sheet of the job knows it. */
const customersMail = (store: Deps['store'], colony: string): string | undefined => {
  const sheet = store.removals.ofColony(colony)
  return sheet === null ? undefined : store.removals.get(sheet)?.last.sheet.job.email
}

function problemsIn(typed: Typed, intakeOn: Day, today: Day): FieldProblem[] {
  const asOf = one(typed, 'asOf')
  const problems: FieldProblem[] = []
  if (!isDay(asOf)) problems.push({ field: 'asOf', message: 'must be a real day' })
  else if (asOf > today) problems.push({ field: 'asOf', message: `must not be later than today, ${today}` })
  else if (asOf < intakeOn)
    problems.push({ field: 'asOf', message: `must not be before the intake on ${intakeOn}` })
  if (one(typed, 'words').length > WORDS_LIMIT)
    problems.push({ field: 'words', message: `must be at most ${WORDS_LIMIT} characters` })
  return problems
}
