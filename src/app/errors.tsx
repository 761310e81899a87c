/** Answers when there is nothing to show: an unknown page or colony, a body too large, a bug of ours. */

import { HTTPException } from 'hono/http-exception'
import type { Language } from '../languages.ts'
import type { Frame } from '../parts/index.ts'
import type { Repository } from '../store/index.ts'
import { wordsIn } from '../words/index.ts'
import type { AppContext, PageDeps } from './context.ts'
import {
  BrokenPage,
  NoColonyPage,
  NoEntryPage,
  NoPagePage,
  TooLargePage,
  TooManyTriesPage,
} from './error-pages.tsx'
import { frameFor } from './frame.tsx'
import { nearestTags } from './nearest.ts'
import { isApiPath, problemResponse } from './problem.ts'
import { colonyPath, page, sendsJson } from './respond.tsx'
import { TooMuch } from './sent.ts'
import { languageFor } from './spoken.ts'

type Answer = Response | Promise<Response>

export const unknownPage = (c: AppContext): Answer => page(c, <NoPagePage frame={spokenFrame(c)} />, 404)

/** An unknown colony: says so and offers the tags that look most like what was asked for. */
export function unknownColony(c: AppContext, deps: PageDeps, asked: string): Answer {
  const known = deps.store.colonies({})
  const near = nearestTags(asked, known).map((s) => ({
    tag: s.tag,
    path: colonyPath(s),
    left: s.closedOn !== null,
  }))
  return page(c, <NoColonyPage frame={spokenFrame(c)} asked={asked} near={near} />, 404)
}

/** Too many guesses at a secret address came from where this one comes from. */
export function tooManyTries(c: AppContext, deps: PageDeps, seconds: number): Answer {
  c.header('Retry-After', String(seconds))
  const frame = frameFor(c, deps)
  return page(c, <TooManyTriesPage frame={frame} wait={frame.words.signIn.tooMany(seconds)} />, 429)
}

export const unknownEntry = (c: AppContext): Answer => page(c, <NoEntryPage frame={spokenFrame(c)} />, 404)

/** `error`: why, when it is not the bytes. */
export function tooLarge(c: AppContext, error?: TooMuch): Answer {
  if (isApiPath(c.req.path))
    return problemResponse(413, error?.message ?? 'At most 1 MiB can be sent at once.')
  const frame = frameOf(c)
  const what = error === undefined ? undefined : frame.words.errors.tooLarge.fields(error.most)
  return page(c, <TooLargePage frame={frame} what={what} yard={c.req.path === '/data/import'} />, 413)
}

/** Something of ours broke, or the machine's disk did: reported to the log, said in a sentence to the reader. */
export const broken =
  (deps: Pick<PageDeps, 'report'>) =>
  (error: Error, c: AppContext): Answer => {
    if (error instanceof TooMuch) return tooLarge(c, error)
    if (error instanceof HTTPException && isApiPath(c.req.path)) return problemResponse(error.status)
    if (error instanceof HTTPException && (error.status < 500 || error.res !== undefined))
      return error.getResponse()
    deps.report(error, `${c.req.method} ${c.req.path}`)
    const trouble = troubleOf(error)
    if (trouble === 'busy') c.header('Retry-After', '5')
    const status = { full: 507, busy: 503, damaged: 503, bug: 500 } as const
    if (isApiPath(c.req.path)) return problemResponse(status[trouble], TROUBLE_WORDS[trouble])
    const posted = c.req.method === 'POST'
    return sendsJson(c)
      ? c.json({ error: TROUBLE_WORDS[trouble] }, status[trouble])
      : page(
          c,
          <BrokenPage
            frame={spokenFrame(c)}
            posted={posted}
            trouble={spokenFrame(c).words.errors.broken[trouble]}
          />,
          status[trouble],
        )
  }

type Trouble = 'full' | 'busy' | 'damaged' | 'bug'

/** What a failure to read or write the database means. */
function troubleOf(error: Error): Trouble {
  const code = 'code' in error ? String(error.code) : ''
  if (code === 'SQLITE_FULL' || code === 'ENOSPC') return 'full'
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED')) return 'busy'
  return /^SQLITE_(CORRUPT|NOTADB|IOERR)/.test(code) ? 'damaged' : 'bug'
}

/** For programs. */
const TROUBLE_WORDS = wordsIn('en').errors.broken

/** The frame, or one that stands when the frame itself could not be made. */
const frameOf = (c: AppContext): Frame =>
  (c.get('frame') as Frame | undefined) ?? bareFrame(c.req.path, () => null)

/** The same in the language of whoever asks, wherever they are: of these pages every word is in the catalogue. */
const spokenFrame = (c: AppContext): Frame => ({ ...frameOf(c), words: wordsIn(languageFor(c)) })

/** A frame that stands when nothing is known: not the day, not the yard, not who asks. */
export const bareFrame = (path: string, built: Frame['built'], language: Language = 'en'): Frame => ({
  today: '',
  zone: 'UTC',
  units: { temperature: 'F', weight: 'lb' },
  viewer: null,
  may: () => false,
  mayOpen: () => false,
  words: wordsIn(language),
  path,
  built,
})

/** The colony of a path, by tag or id; null when there is none. */
export function colonyIn(
  c: AppContext,
  store: Repository,
): NonNullable<ReturnType<Repository['colony']>> | null {
  return store.colony(c.req.param('tag') ?? '')
}
