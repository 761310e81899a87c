/** A phone in the field: a yard, the air between, and a phone-size browser whose worker has fetched the round. */
import type { Browser, Page, Worker } from 'playwright-core'
import { v7 } from 'uuid'
import type { Day } from '../../src/days.ts'
import type { Entry } from '../../src/journal/entry.ts'
import type { PhoneState } from '../../src/parts/phone-state.ts'
import type { Role } from '../../src/people/index.ts'
import { PHONE, watchedPage } from './browser.ts'
import { signInAs } from './people.ts'
import { keepSignedIn } from './signed-in.ts'
import { type Wire, wireTo } from './wire.ts'
import { type RunningYard, startYard } from './yard.ts'

export interface Field {
  yard: RunningYard
  wire: Wire
  page: Page
  noticed: string[]
  /** Makes it noon of that day, or another hour of it, in the yard and on the phone. */
  setDay: (day: Day, at?: string) => Promise<void>
  /** Lets some time pass on the phone. */
  later: (seconds: number) => Promise<void>
  /** What the worker says of the outbox. */
  waiting: () => Promise<{ waiting: number; refused: number }>
  /** Resolves when nothing waits any more. */
  sent: () => Promise<void>
  /** Resolves when something was not accepted. */
  refused: () => Promise<void>
  stop: () => Promise<void>
}

export interface FieldOptions {
  day: Day
  as?: { name: string; role: Role }
  /** What is in the yard before the phone comes. */
  entries?: Record<string, unknown>[]
  demo?: boolean
}

/** Starts all of it; the phone has seen Today once with signal. */
export async function startField(browser: Browser, options: FieldOptions): Promise<Field> {
  const yard = await startYard({ day: options.day, ...(options.demo ? { demo: true } : {}) })
  if (options.entries !== undefined) put(yard, options.entries, options.day)
  const person = options.as ?? { name: 'Teuila', role: 'helper' }
  const phone = await phoneIn(yard, browser, person, options.day)
  return {
    ...phone,
    yard,
    stop: async () => {
      await phone.stop()
      await yard.stop()
    },
  }
}

/** Another phone in a yard that runs, with its own signal; at noon, or the hour that is said. */
export async function phoneIn(
  yard: RunningYard,
  browser: Browser,
  person: { name: string; role: Role },
  today: Day,
  hour?: string,
): Promise<Omit<Field, 'yard'>> {
  const wire = await wireTo(yard.url)
  keepSignedIn(wire.url, await signInAs(yard.people, person))
  const { page, context, noticed } = await watchedPage(browser, wire.url, PHONE, { worker: true })
  const worker = (): Worker => {
    // One that was ended may still be in the list, before the one that took its place.
    const latest = context.serviceWorkers().at(-1)
    if (latest === undefined) throw new Error('no service worker')
    return latest
  }
  const setDay = async (day: Day, at = '12:00'): Promise<void> => {
    // What was answered at the old hour and is read at the new one makes the phone take its own clock for wrong.
    for (const end = Date.now() + PATIENCE; wire.open() > 0 && Date.now() < end; )
      await page.waitForTimeout(20)
    await soon('the worker', worker().evaluate('0'))
    yard.setDay(day, at)
    await soon('the clock of the worker', worker().evaluate(turnClock, Date.parse(`${day}T${at}:00Z`)))
  }
  await page.goto('/')
  await soon(
    'the worker',
    page.evaluate(() => navigator.serviceWorker.ready.then(() => true)),
  )
  await setDay(today, hour)
  await page.reload()
  // An answer asked for on the old clock, or written down on the next, would make the phone take its own clock for wrong.
  const now = Date.parse(`${today}T${hour ?? '12:00'}:00Z`)
  await until(
    page,
    'the phone never got the round',
    ({ fetchedAt }) =>
      fetchedAt !== null && Math.abs(Date.parse(fetchedAt) - now) < 600_000 && wire.open() === 0,
  )
  return {
    wire,
    page,
    noticed,
    setDay,
    later: async (seconds) => {
      const now = await soon(
        'the time of the worker',
        worker().evaluate(() => Date.now()),
      )
      await soon('the clock of the worker', worker().evaluate(turnClock, now + seconds * 1000))
    },
    waiting: () => stateOf(page),
    sent: () => until(page, 'something still waits to be sent', (told) => told.waiting === 0),
    refused: () => until(page, 'nothing was refused', (told) => told.refused > 0),
    stop: async () => {
      await context.close()
      await wire.stop()
    },
  }
}

/** Runs in the worker: its clock shows that moment from now on, and goes on from there. */
function turnClock(moment: number): void {
  const scope = globalThis as unknown as { Real?: DateConstructor; Date: DateConstructor }
  const Real = scope.Real ?? scope.Date
  scope.Real = Real
  const ahead = moment - Real.now()
  scope.Date = class extends Real {
    constructor(...given: [] | [number | string | Date]) {
      super(...((given.length === 0 ? [Real.now() + ahead] : given) as [number]))
    }
    static override now(): number {
      return Real.now() + ahead
    }
  } as DateConstructor
}

type Told = Pick<PhoneState, 'waiting' | 'refused' | 'fetchedAt' | 'signIn'>

/** Milliseconds: longer than a busy machine takes, shorter than the time of a test, so that it is said what was waited for. */
const PATIENCE = 120_000

/** A script in a page or worker that went away is never answered. */
function soon<T>(what: string, answer: Promise<T>): Promise<T> {
  let timer: NodeJS.Timeout
  const late = new Promise<never>((_, fail) => {
    timer = setTimeout(() => fail(new Error(`${what}: no answer`)), PATIENCE)
  })
  return Promise.race([answer, late]).finally(() => clearTimeout(timer))
}

/** What the worker answers when it is asked how it stands. */
export const stateOf = (page: Page): Promise<Told> =>
  soon(
    'the state of the phone',
    page.evaluate(
      () =>
        new Promise<Told>((done) => {
          const hear = (event: MessageEvent): void => {
            if (event.data?.phone === undefined) return
            navigator.serviceWorker.removeEventListener('message', hear)
            done(event.data.phone)
          }
          navigator.serviceWorker.addEventListener('message', hear)
          void navigator.serviceWorker.ready.then(({ active }) => active?.postMessage({ ask: 'state' }))
        }),
    ),
  )

/** Asks the phone how it stands until it stands so. */
async function until(page: Page, otherwise: string, so: (told: Told) => boolean): Promise<void> {
  for (const end = Date.now() + PATIENCE; Date.now() < end; await page.waitForTimeout(50))
    if (so(await stateOf(page))) return
  throw new Error(otherwise)
}

/** Writes entries as if somebody had sent them; throws when they are refused. */
export function put(yard: RunningYard, entries: Record<string, unknown>[], today: Day): void {
  const result = yard.store.append(entries, { today, recordedAt: `${today}T06:00:00.000Z` })
  if (!result.ok) throw new Error(JSON.stringify(result.problems))
}

/** Intakes of that many colonies, on stands 1 and up. */
export const intakes = (tags: readonly string[], on: Day): Record<string, unknown>[] =>
  tags.map((tag, i) => ({
    id: v7(),
    colony: tag,
    kind: 'intake',
    on,
    by: 'Bram',
    removal: { type: 'wall', site: '4 Acacia Lane' },
    yard: 'North field',
    stand: String(i + 1),
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1, capped: 1 },
    bees: { frames: 5 },
  }))

/** What came into the journal after the intakes, in the order in which the server came to know it. */
export const recorded = (
  yard: RunningYard,
): { tag: string; on: Day; kind: Entry['kind']; by: string; note?: string }[] =>
  [...yard.store.journal()]
    .filter((r) => r.entry.kind !== 'intake')
    .map(({ entry }) => ({
      tag: yard.store.colony(entry.colony)?.summary.tag ?? '?',
      on: entry.on,
      kind: entry.kind,
      by: entry.by,
      ...('note' in entry && entry.note !== undefined ? { note: entry.note } : {}),
    }))
