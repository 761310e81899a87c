import { Hono } from 'hono'
import { validate } from 'uuid'
import { z } from 'zod'
import { type Env, type PageDeps, sendsJson, signedIn, viewerOf } from '../../app/index.ts'
import { problemsOf } from '../../journal/index.ts'
import { EMPTY_SHEET, type Grave, mergeSheets, type Sheet, sheet } from '../../records/index.ts'
import { clashWords } from './clash-words.ts'
import { keepFound } from './found-kept.ts'
import { answersTo, goneFrom, withNoted } from './grave.ts'
import { asSeenHere, isUnclocked, withoutHours, withTickedAt } from './seen-here.ts'
import { isElsewhere, momentNow } from './sheet-handlers.ts'
import { fallenNow, goneUnsaid, honest, sentProblems, withBoxes, withKept } from './sync-judge.ts'
import { withWords, writtenAnew } from './written.ts'

const sent = z.strictObject({
  id: z.string().refine(validate, 'must be an id'),
  /** The version it was made from; 0 for a sheet that began on the phone. */
  base: z.int().min(0),
  sheet,
  /** The version that was read, over which this one is to stand; an older program says only that one was, and asks again. */
  over: z.union([z.boolean(), z.int().check(z.positive())]),
  /** What the phone takes for this moment, by the clock that the sheet was written by. */
  now: z.optional(z.iso.datetime()),
})

/**
 * POST /removals/sync: a sheet as a phone wrote it without signal. What only one side changed is kept from both; where both
 * said something else of one field it is refused and says what, unless the same person wrote both or it is to stand over that version.
 * 200 {kept, version, sheet} or 422 {problems, version}: the one that it may stand over, where there is one. Sending again is harmless.
 * 409 as with entries.
 */
export function removalSync(deps: PageDeps): Hono<Env> {
  const app = new Hono<Env>()
  app.post('/removals/sync', async (c) => {
    c.header('Cache-Control', 'no-store')
    const person = c.req.header('resettle-person')
    if (person !== undefined && person !== viewerOf(c).id)
      return c.json({ error: 'somebody else is signed in' }, 409)
    const body: unknown = sendsJson(c) ? await c.req.json().catch(() => undefined) : undefined
    const parsed = sent.safeParse(body)
    if (!parsed.success) return c.json({ problems: problemsOf(parsed.error, body) }, 422)
    const { id, base, over, sheet: came, now } = parsed.data
    const unclocked = now !== undefined && isUnclocked(now, deps.clock())
    const { removals } = deps.store
    const absent = await absentOf(deps, came)
    const found = removals.get(id)
    const last = found?.last
    const known = base === 0 ? EMPTY_SHEET : removals.version(id, base)?.sheet
    const mine = known === undefined ? came : withTickedAt(known, came)
    if (found === null && base > 0)
      return refuse('This sheet was erased from the yard’s book, and nothing can be added to it any more')
    if (known === undefined)
      return refuse(
        'The yard’s book does not have the sheet that this was written on: write it again on its page',
      )
    const { sheet: both, clashes } =
      last === undefined || last.version === base
        ? { sheet: mine, clashes: [] }
        : mergeSheets(known, mine, last.sheet)
    const own = clashes.every(
      (path) =>
        saidBy(id, path, base) === signedIn(c) &&
        (path !== 'decision' || isLater(mine.decision, last?.sheet.decision)),
    )
    if (last !== undefined && !own && over !== last.version)
      return refuse(clashWords(last, mine, clashes, c.var.frame.units), true)
    const before = last?.sheet ?? EMPTY_SHEET
    // Who is at another job decides none here, and two people are not one.
    const decidesAnew = JSON.stringify(both.decision) !== JSON.stringify(before.decision)
    const elsewhere = isElsewhere(deps, id, signedIn(c), c.var.frame.today) !== undefined
    const wrong = unclocked && decidesAnew
    const fair = clashes.length === 0 && !(elsewhere && decidesAnew) && !wrong
    const decided = fair ? both : undecided(both, momentNow(c, deps), wrong)
    const ticked = unclocked ? withoutHours(before, withKept(before, decided)) : withKept(before, decided)
    const merged =
      ticked.check.tickedAt === before.check.tickedAt
        ? ticked
        : untickedFor(ticked, writtenAnew(known, before))
    const gone = goneUnsaid(before, merged, known, c.var.frame.today)
    if (gone.length > 0)
      return refuse(
        `Takes off what no trade has cleared, or without saying why: ${gone.join(', ')}. Put it back on the page of the sheet, or say there why it is gone`,
      )
    const problems = sentProblems(c, deps, known, mine, found, { id, absent })
    if (problems.length > 0) return refuse(problems)
    const stamp = { savedAt: deps.clock().toISOString(), savedBy: signedIn(c) }
    const seen = asSeenHere(c, deps, {
      id,
      known,
      merged: honest(
        fallenNow(c, deps, noticed(before, merged), id, { read: readBy(merged.decision), before }),
        deps.clock().toISOString(),
        momentNow(c, deps),
      ),
      found,
      unseen: elsewhere || unclocked,
    })
    const result = removals.save(id, last?.version ?? 0, withBoxes(c, deps, before, seen, id), stamp)
    if (!result.ok)
      return 'problems' in result
        ? c.json({ problems: result.problems }, 422)
        : refuse('Somebody else saved it at the same moment: write on its page again, and it is sent')
    const made = removals.get(id)
    return c.json({ kept: id, version: result.version, sheet: made?.last.sheet ?? merged })

    /** Who first said, since that version, what stands there now: of a sheet that was merged not always who saved it last. */
    function saidBy(id: string, path: string, since: number): string | undefined {
      const values = (found?.versions ?? [])
        .filter((v) => v.version > since)
        .map((v) => ({ by: v.savedBy, value: at(removals.version(id, v.version)?.sheet, path) }))
      const other = values.findIndex((v) => v.value !== values[0]?.value)
      return values.at(other === -1 ? -1 : other - 1)?.by
    }

    /** What came onto the sheet in words other than ours is noted all the same. */
    function noticed(was: Sheet, now: Sheet): Sheet {
      const unsaid = goneFrom(now, was).filter(
        (what) => now.site.noted?.findLast((n) => n.what === what)?.is !== 'found',
      )
      const moment = momentNow(c, deps)
      return unsaid.length === 0 ? withWords(was, now, moment) : withNoted(was, now, {}, moment)
    }

    /** The sheet on which that was decided: as it stands here, or as the phone had it. */
    function readBy(decided: Sheet['decision']): Sheet {
      return JSON.stringify(decided) === JSON.stringify(before.decision) ? before : mine
    }

    /** What it brings stays, whatever else it is refused for: wires that were found do not wait for a clash over the way in. */
    function refuse(said: string | string[], clashes = false): Response {
      if (last !== undefined && known !== undefined) keepFound(c, deps, { id, last }, mine, known)
      const version = clashes ? removals.get(id)?.last.version : undefined
      const problems = [said].flat().map((message) => ({ field: '', message, line: message }))
      return c.json({ problems, version }, 422)
    }
  })
  return app
}

/** Whichever of two answers stands, no “go” was decided over both: it is decided anew, by whoever reads them. */
function undecided(s: Sheet, { by, on, at }: ReturnType<typeof momentNow>, wrong: boolean): Sheet {
  const { decision, work } = s
  const standing = decision?.is === 'go' && decision.fell === undefined && work.openedAt === undefined
  const because = wrong ? { because: 'clock' as const } : {}
  return standing ? { ...s, decision: { ...decision, fell: { by, on, at, ...because } } } : s
}

/** Of two decisions of one person the later one is meant: a “go” of eight takes back no refusal of half past nine. */
const isLater = (mine: Sheet['decision'], theirs: Sheet['decision']): boolean =>
  `${mine?.on} ${mine?.at ?? ''}` > `${theirs?.on} ${theirs?.at ?? ''}`

/** Photos of papers that are named and not here: a phone sends them before the sheet. */
async function absentOf(deps: PageDeps, { check }: Sheet): Promise<Set<string>> {
  const named = (check.clearances ?? []).flatMap((x) => x.photo ?? [])
  const there = await Promise.all(named.map((id) => deps.photos.find(id)))
  return new Set(named.filter((_, i) => there[i] === null))
}

/** What was ticked on a phone that had not read what is said here since of exactly that. */
const untickedFor = (s: Sheet, unread: readonly Grave[]): Sheet =>
  s.check.done === undefined
    ? s
    : {
        ...s,
        check: { ...s.check, done: s.check.done.filter((d) => !unread.flatMap(answersTo).includes(d)) },
      }

/** What stands there, to be compared. 'site.temper', 'decision' */
function at(s: Sheet | undefined, path: string): string | undefined {
  const keys = path.split('.')
  return JSON.stringify(
    keys.reduce<unknown>((x, key) => (x as Record<string, unknown> | undefined)?.[key], s),
  )
}
