import { Hono } from 'hono'
import { validate } from 'uuid'
import { z } from 'zod'
import { type Env, type PageDeps, sendsJson, signedIn, viewerOf } from '../../app/index.ts'
import { problemsOf } from '../../journal/index.ts'
import {
  beginsIn,
  comesBack,
  type Decision,
  EMPTY_SHEET,
  type Grave,
  mergeSheets,
  type Sheet,
  sheet,
} from '../../records/index.ts'
import { clashWords, YOU } from './clash-words.ts'
import { keepFound, withKeptFound } from './found-kept.ts'
import { killing } from './found-words.ts'
import { answersTo, goneFrom, withNoted } from './grave.ts'
import { asSeenHere, isUnclocked, withoutHours, withTickedAt } from './seen-here.ts'
import { isElsewhere, momentNow, stoodFor } from './sheet-handlers.ts'
import { fallenNow, goneUnsaid, honest, sentProblems, withBoxes, withKept } from './sync-judge.ts'
import { withFoundAt } from './was-said.ts'
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
 * said something else of one field, the careful answer or theirs stands, and it is refused and says what, unless the same person wrote
 * both, it is to stand over that version, or no tap could choose: what stands then is said beside it (`said`).
 * 200 {kept, version, sheet, said?} or 422 {problems, version}: the one that it may stand over, where there is one. Sending again is harmless.
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
      return refuse(
        `This sheet was erased from the yard’s book, and nothing can be added to it any more. ${erasedWith(came)}`,
      )
    if (known === undefined)
      return refuse(
        'The yard’s book does not have the sheet that this was written on: write it again on its page',
      )
    const {
      sheet: merging,
      clashes,
      settled,
    } = last === undefined || last.version === base
      ? { sheet: mine, clashes: [], settled: [] }
      : mergeSheets(known, mine, last.sheet)
    const before = last?.sheet ?? EMPTY_SHEET
    const others = clashes.filter((path) => !isOwn(path))
    const asks = last !== undefined && others.length > 0 && over !== last.version
    const whose = others.map((path) => saidBy(id, path, base))
    const moment = { ...momentNow(c, deps), ...(asks && whose[0] !== undefined ? { by: whose[0] } : {}) }
    const both = asks ? besideClash(known, mine, before, wasRead(mine.decision)) : merging
    const said = asks
      ? clashWords(
          whose.map((by) => (by === signedIn(c) ? YOU : by)),
          [before, mine, both],
          clashes,
          settledIn(both),
          c.var.frame.units,
        )
      : []
    // Who is at another job decides none here, and two people are not one.
    const decidesAnew = JSON.stringify(both.decision) !== JSON.stringify(before.decision)
    const elsewhere = isElsewhere(deps, id, signedIn(c), c.var.frame.today) !== undefined
    const wrong = unclocked && decidesAnew
    const unread = asks ? decidesAnew : clashes.length > 0
    const fair = !unread && !(elsewhere && decidesAnew) && !wrong
    const decided = fair ? both : undecided(both, moment, wrong)
    const ticked = unclocked ? withoutHours(before, withKept(before, decided)) : withKept(before, decided)
    const merged =
      ticked.check.tickedAt === before.check.tickedAt
        ? ticked
        : untickedFor(ticked, writtenAnew(known, before))
    const gone = goneUnsaid(before, merged, known, c.var.frame.today)
    // No “go” comes of a sheet that is asked about: what it brings beside it is not held up by what it lacks for one.
    const judged = asks && !beginsIn(known, mine) ? undecided(mine, moment, false) : mine
    const problems = sentProblems(c, deps, known, judged, found, { id, absent, asks })
    if (asks && (gone.length > 0 || problems.length > 0)) return refuse([...said, ALL_OUT], true)
    if (gone.length > 0)
      return refuse(
        `Takes off what no trade has cleared, or without saying why: ${gone.join(', ')}. Put it back on the page of the sheet, or say there why it is gone`,
      )
    if (problems.length > 0) return refuse(problems)
    const stamp = { savedAt: deps.clock().toISOString(), savedBy: signedIn(c) }
    const seen = asSeenHere(c, deps, {
      id,
      known,
      sent: mine,
      merged: honest(
        fallenNow(c, deps, noticed(before, merged), id, { read: readBy(merged.decision), before }),
        deps.clock().toISOString(),
        momentNow(c, deps),
      ),
      found,
      unseen: elsewhere || unclocked,
    })
    const boxed = withBoxes(c, deps, before, seen, id)
    const whole = asks ? withKeptFound(c, deps, boxed, mine, known, true) : boxed
    const result = removals.save(id, last?.version ?? 0, whole, stamp)
    if (!result.ok)
      return 'problems' in result
        ? c.json({ problems: result.problems }, 422)
        : refuse('Somebody else saved it at the same moment: write on its page again, and it is sent')
    const settledAll = others.every((path) => settledIn(both).includes(path))
    if (asks && !settledAll)
      return c.json({ problems: linesOf([...said, REST_IN]), version: result.version }, 422)
    const made = removals.get(id)
    const told = asks ? { said: linesOf(said) } : {}
    return c.json({ kept: id, version: result.version, sheet: made?.last.sheet ?? merged, ...told })

    /** One's own word on another phone: it is as good as the other, but what was seen on site is not known by its hour. */
    function isOwn(path: string): boolean {
      return (
        saidBy(id, path, base) === signedIn(c) &&
        (path !== 'decision' || isLater(mine.decision, before.decision)) &&
        (!path.startsWith('site.') || settled.includes(path))
      )
    }

    /** Where no tap puts mine over it: a careful answer stands, also where it is a decision and mine. */
    function settledIn({ decision }: Sheet): string[] {
      return decision !== undefined && decision === mine.decision ? [...settled, 'decision'] : settled
    }

    /** A phone that heard no answer sends it again. */
    function wasRead(d: Sheet['decision']): boolean {
      const of = (x: Sheet['decision']): string => [x?.is, x?.by, x?.on, x?.at].join()
      return (found?.versions ?? []).some(
        (v) => v.version > base && of(removals.version(id, v.version)?.sheet.decision) === of(d),
      )
    }

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
      const stood = stoodFor(c, deps, { id, versions: found?.versions ?? [] })
      const noted =
        unsaid.length === 0 ? withWords(was, now, moment, stood) : withNoted(was, now, {}, moment, stood)
      return withFoundAt(mine, was, noted, moment)
    }

    /** The sheet on which that was decided: as it stands here, or as the phone had it. */
    function readBy(decided: Sheet['decision']): Sheet {
      return JSON.stringify(decided) === JSON.stringify(before.decision) ? before : mine
    }

    /** What it brings stays, whatever else it is refused for: wires that were found do not wait for a clash over the way in. */
    function refuse(said: Said | Said[], clashes = false): Response {
      if (last !== undefined && known !== undefined) keepFound(c, deps, { id, last }, mine, known, true)
      const version = clashes ? removals.get(id)?.last.version : undefined
      return c.json({ problems: linesOf([said].flat()), version }, 422)
    }
  })
  return app
}

/** Whoever is forgotten stays so, and what was found at their house is on that phone alone. */
function erasedWith(came: Sheet): string {
  const kills = killing(came, EMPTY_SHEET)
  return kills === '' ? '' : `On yours is: ${kills}. Start a new call for that address, and tap it there`
}

const ALL_OUT = 'Yours is not in the yard’s book, but for what you found'
const REST_IN = 'The rest of yours is in the yard’s book'

type Said = string | { field: string; message: string }
const linesOf = (said: readonly Said[]) =>
  said
    .map((x) => (typeof x === 'string' ? { field: '', message: x } : x))
    .map((x) => ({ ...x, line: x.message }))

/** The careful one comes last. */
const CARE: readonly unknown[] = ['go', 'wait', 'refuse']

/**
 * All of a sheet that does not clash; where it does, the careful answer of the two, and else theirs. `read`: its decision was in the
 * book before, and whoever decided since had read it.
 */
function besideClash(known: Sheet, mine: Sheet, theirs: Sheet, read: boolean): Sheet {
  const { sheet: rest, clashes } = mergeSheets(known, mine, theirs, theirs)
  const [is, was] = [mine.decision, theirs.decision].map((d) => CARE.indexOf(d?.is))
  if (!clashes.includes('decision') || read || mine.decision === undefined) return rest
  const [stays, other] =
    Number(is) > Number(was) ? [mine.decision, theirs.decision] : [theirs.decision, mine.decision]
  return stays === undefined ? rest : { ...rest, decision: withReasonOf(stays, other) }
}

/** Of two that stopped it both reasons are kept: the joists are eaten through, whoever has no key. */
function withReasonOf(stays: Decision, other: Decision | undefined): Decision {
  if (stays.is === 'go' || other === undefined || other.is === 'go' || other.reason === undefined)
    return stays
  const { reason = '' } = stays
  if (reason.includes(other.reason)) return stays
  const both = [...(reason === '' ? [] : [reason]), `${other.by}: ${other.reason}`].join('. ')
  return { ...stays, reason: both.slice(0, 1000) }
}

/** Whichever of two answers stands, no “go” was decided over both: it is decided anew, by whoever reads them. */
function undecided(s: Sheet, { by, on, at }: ReturnType<typeof momentNow>, wrong: boolean): Sheet {
  const { decision, work } = s
  const begun = work.openedAt !== undefined && !comesBack(s, on)
  const standing = decision?.is === 'go' && decision.fell === undefined && !begun
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
