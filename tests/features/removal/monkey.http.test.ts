/**
 * A beekeeper in a hurry who taps anything in any order, by pages and by the phone's queue: whatever was begun under a “go”
 * had its looks, its trades, its people and its decision at that very place, told here without the code that decides it.
 */
import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { seenOn } from '../../../src/features/removal/hazards.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import { readNotes } from '../../../src/features/removal/notes-read.ts'
import { EMPTY_SHEET, type Sheet } from '../../../src/records/removal-sheet.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'
import { DAY, PAPER, PHOTO, TAPPED } from './ready.ts'

let yard: Yard
beforeAll(async () => {
  yard = await yardOn(DAY)
  await yard.account('Bram')
})

/** More with RUNS=… in front. */
const RUNS = Number(process.env.RUNS ?? 40)

type Fields = Record<string, string | string[]>
const some = <T>(...values: T[]): fc.Arbitrary<T> => fc.constantFrom(...values)
const job = fc.record<Fields>({
  address: some('4 Invented Row', '4 Invented Row', '9 Other Lane', ''),
  what: some('wall', 'wall', 'swarm', 'chimney'),
  since: some('today', 'weeks', ''),
  access: some('ground', 'ladder', ''),
  heightM: some('6', '6', '20', ''),
  bystanders: some('none', 'allergic', 'children', ''),
  'gone.allergic': some('', 'left'),
  'gone.nest': some('', 'mistake'),
  told: some('', '', 'Gas pipe behind it', 'Honey drips'),
  bystandersNote: some('', '', 'Her son is allergic', 'also her sister'),
})
const site = fc.record<Fields>({
  where: some('left of the porch', 'left of the porch', 'the north wall', ''),
  surface: some('siding', 'siding', 'plaster'),
  sheathingMm: some('3/4', ''),
  behind: some<string | string[]>('none-detector', 'none-traced', 'gas', ['electric', 'insulation'], ''),
  hazards: some('none-new', 'none-tested', 'none', 'asbestos', ''),
  temper: some('2', '2', 'unknown', '5', ''),
  africanized: some('no', 'no', 'unknown', ''),
  'gone.gas': some('', 'elsewhere'),
  'gone.asbestos': some('', 'mistake'),
  'gone.electric': some('', 'removed'),
  'gone.insulation': some('mistake'),
  behindNote: some('', '', 'Another gas pipe', 'one more, right of it'),
})
const check = fc.record<Fields>({
  shownOn: some(DAY, DAY, DAY, ''),
  hottestC: some('75', '75', '100', ''),
  cutMm: some('3/4', ''),
  vacuum: some('bee-vacuum', 'none', ''),
  wires: some('none', 'none', 'none', 'near', 'unknown', ''),
  temper: some('1', ''),
  africanized: some('no', ''),
  done: fc
    .tuple(
      fc.oneof(fc.constant([...TICKED] as string[]), fc.subarray([...TICKED] as string[])),
      fc.subarray([
        'read',
        'not-here:gas',
        'not-here:allergic',
        'same:gas',
        'same:asbestos',
        'same:electric',
      ]),
    )
    .map((ticks) => ticks.flat()),
  is: some('go', 'go', 'go', ''),
  reason: some('It is late.'),
  by: some('', 'ok'),
})
const work = fc.record<Fields>({
  outdoorC: some('75', '75', ''),
  now: some('openedAt', 'openedAt', 'boxedAt', ''),
  openedAt: some('', '', '09:00'),
  queen: some('', '', 'caged'),
  'withoutGo.why': some('', '', 'could-not-wait'),
})
const clear = fc.constantFrom('gas', 'electric', 'asbestos').chain((hazard) =>
  fc.record<Fields>({
    hazard: fc.constant(hazard),
    [`trade-${hazard}.as`]: some('gas-fitter', 'electrician', 'surveyor', ''),
    [`trade-${hazard}.who`]: some('Edda Brandt', 'Edda Brandt', 'Bram', 'asked him'),
    [`trade-${hazard}.licence`]: some('4711', '4711', 'ok'),
    [`trade-${hazard}.says`]: some('clear', 'clear', 'clear', 'not-yet', ''),
    [`trade-${hazard}.on`]: some(DAY, DAY, '1950-01-01'),
    photos: some(PAPER, PAPER, '', 'b'.repeat(64)),
  }),
)
const second = fc
  .constantFrom('sting-plan', 'fierce', 'allergy', 'bystanders', 'trade-gas')
  .map((item): Fields => ({ item, [`${item}.by`]: 'Bram', [`${item}.why`]: 'stays' }))
  .chain((fields) => some('', PASSPHRASE).map((passphrase): Fields => ({ ...fields, passphrase })))
/** Most hurried people fill in most of it rightly: a tidy form now and then leads far enough to be wrong late. */
const step = fc.oneof(
  fc.tuple(fc.constant('job'), job),
  fc.tuple(fc.constant('site'), site),
  fc.tuple(fc.constant('check'), check),
  fc.tuple(fc.constant('check'), check),
  fc.tuple(fc.constant('work'), work),
  fc.tuple(fc.constant('work'), work),
  fc.tuple(fc.constant('clear'), clear),
  fc.tuple(fc.constant('second'), second),
)
const TIDY: Record<'job' | 'site' | 'check' | 'work', Fields> = {
  // With nothing told: what was told before is deleted by it.
  job: {
    address: '4 Invented Row',
    what: 'wall',
    access: 'ladder',
    heightM: '6',
    bystanders: 'none',
    'gone.allergic': 'left',
    'gone.children': 'left',
  },
  site: {
    where: 'left of the porch',
    surface: 'siding',
    sheathingMm: '3/4',
    behind: 'none-detector',
    hazards: 'none-new',
    temper: '2',
    africanized: 'no',
  },
  check: {
    shownOn: DAY,
    ...TAPPED,
    done: [...TICKED, 'read'],
    reason: 'Signs later.',
    temper: '1',
    africanized: 'no',
  },
  work: { outdoorC: '75', now: 'openedAt', water: 'yes' },
}
/** Minutes that go by before a step: mostly few, now and then half a day or a night. */
const passing = some(1, 1, 1, 5, 20, 20, 60, 170, 190, 400, 1440)
const timed = (step: fc.Arbitrary<[string, Fields]>): fc.Arbitrary<[string, Fields]> =>
  fc.tuple(step, passing).map(([[act, fields], wait]) => [act, { ...fields, wait: String(wait) }])
/** Nothing between, half the time: else hardly anybody gets as far as to open it. */
const few = fc.oneof(fc.constant<[string, Fields][]>([]), fc.array(timed(step), { maxLength: 2 }))
const day = fc
  .tuple(few, few, few)
  .chain(([first, then, late]) =>
    fc
      .array(passing, { minLength: 5, maxLength: 5 })
      .map(([a = 1, b = 1, c = 1, d = 1, e = 1]): [string, Fields][] => [
        ...(a < 60 ? [['job', { ...TIDY.job, wait: '1' }] as [string, Fields]] : []),
        ['site', { ...TIDY.site, wait: String(a) }],
        ...first,
        ['check', { ...TIDY.check, wait: String(b) }],
        ...then,
        ['work', { ...TIDY.work, wait: String(c) }],
        ...late,
        ['check', { ...TIDY.check, wait: String(d) }],
        ['work', { ...TIDY.work, wait: String(e) }],
      ]),
  )

/** What is told of gas and of who is allergic, by field: in these words and no others. */
const WORDS = { gas: /gas/i, allergic: /allergic/ } as const
const TOLD = (s: Sheet | undefined): (string | undefined)[] => [
  s?.job.told,
  s?.site.bystandersNote,
  s?.site.behindNote,
]
const isTapped = ({ site }: Sheet, what: keyof typeof WORDS): boolean =>
  [...(site.behind ?? []), ...(site.bystanders ?? [])].some((x) => x === what)

/** What was written, and is neither tapped nor looked for again since, whatever became of the words. */
function unanswered(
  open: readonly string[],
  before: Sheet | undefined,
  after: Sheet,
  today: string,
): string[] {
  const { done, doneOn, doneAt } = after.check
  const here = doneOn === today && placeIn(doneAt ?? {}) === placeIn({ ...after.job, ...after.site })
  return (['gas', 'allergic'] as const).filter((what) => {
    const fresh = TOLD(after).some((x) => x !== undefined && !TOLD(before).includes(x) && WORDS[what].test(x))
    const looked = here && done?.includes(`not-here:${what}`) === true
    return (fresh || open.includes(what)) && !isTapped(after, what) && !looked
  })
}

const plain = (text = ''): string => text.trim().toLowerCase()
type At = Partial<Record<'address' | 'where' | 'surface' | 'type', string | undefined>>
const placeIn = (x: At): string => [x.address, x.where, x.surface, x.type].map(plain).join('|')

/** Hours and days, told by themselves: '2026-06-12 09:10' as minutes. */
const minutesOf = (at: string): number => Date.parse(`${at.replace(' ', 'T')}:00Z`) / 60_000

/** What must be true of a sheet on which something was begun with a “go” now, '2026-06-12 09:10', or at the hour that was typed. */
function wrongIn(s: Sheet, paper: string, now: string, typed?: string): string[] {
  const TODAY = now.slice(0, 10)
  const begun = typed === undefined ? now : `${TODAY} ${typed}`
  const within = (day = '', at = ''): boolean => {
    const old = minutesOf(begun) - minutesOf(`${day} ${at}`)
    return old >= 0 && old <= 180
  }
  const here = placeIn({ ...s.job, ...s.site })
  const { site, check: c, decision: d } = s
  const free = site.type === 'swarm' && c.done?.includes('free') === true && site.surface === undefined
  const ticked = (id: string): boolean =>
    (c.doneOn === TODAY && placeIn(c.doneAt ?? {}) === here && c.done?.includes(id) === true) ||
    c.seconds?.some((x) => x.item === id && x.by === 'Bram' && x.account === true && placeIn(x) === here) ===
      true
  const cleared = (hazard: string, trade: string): boolean =>
    c.clearances?.some(
      (x) =>
        x.hazard === hazard &&
        x.as === trade &&
        x.who === 'Edda Brandt' &&
        x.licence === '4711' &&
        x.says === 'clear' &&
        x.photo === paper &&
        x.on <= TODAY &&
        placeIn(x) === here,
    ) === true
  const looked = (what: 'behind' | 'hazards'): boolean =>
    free || (site[what] !== undefined && placeIn(site.lookedAt?.[what] ?? {}) === here)
  return Object.entries({
    hour: d !== undefined && within(d.on, d.at) && (within(c.doneOn, c.tickedAt) || c.seconds !== undefined),
    decided:
      d?.is === 'go' && d.by === 'Ines' && d.on === TODAY && placeIn(d) === here && d.fell === undefined,
    behind: looked('behind'),
    hazards: looked('hazards'),
    known:
      free ||
      site.old === 'no' ||
      site.oldHow === 'untouched' ||
      (site.oldHow === 'tested' &&
        c.clearances?.some(
          (x) => x.hazard === 'asbestos' && x.as === 'surveyor' && x.says === 'clear' && placeIn(x) === here,
        ) === true) ||
      site.hazards?.includes('asbestos') === true,
    gas: site.behind?.includes('gas') !== true || cleared('gas', 'gas-fitter'),
    electric: site.behind?.includes('electric') !== true || cleared('electric', 'electrician'),
    asbestos: site.hazards?.includes('asbestos') !== true || cleared('asbestos', 'surveyor'),
    temper: site.temper !== undefined && site.africanized !== undefined,
    fierce: (site.temper === 2 || site.temper === 1) && site.africanized === 'no' ? true : ticked('fierce'),
    asked:
      site.bystanders !== undefined
        ? plain(site.lookedAt?.bystanders?.address) === plain(s.job.address)
        : ticked('bystanders'),
    allergic: site.bystanders?.includes('allergic') !== true || ticked('allergy'),
    stings: ticked('sting-plan'),
    read:
      !TOLD(s).some((told) => told !== undefined) ||
      (c.doneOn === TODAY && c.done?.some((id) => id.startsWith('read:')) === true),
    wires: site.nearWires !== true && c.wires === 'none' && c.doneOn === TODAY,
    height: (site.heightM ?? 0) > 0 || site.access !== 'ground' || ticked('ladder-person'),
    heat: (s.work.outdoorC ?? 99) < 30 && (c.hottestC ?? 99) < 30,
  }).flatMap(([what, holds]) => (holds ? [] : [what]))
}

test('whatever is tapped, what was begun with a “go” had one, and all that it rests on', async () => {
  let opened = 0
  let runs = 0
  await fc.assert(
    fc.asyncProperty(fc.oneof(job, fc.constant(TIDY.job)), day, async (call, steps) => {
      // Each job has papers, a caller and a house of its own: what is on another sheet of the same house is asked of this one too.
      const paper = String(++runs).padStart(64, '0')
      const own = (fields: Fields): Fields =>
        fields.address === undefined || fields.address === ''
          ? fields
          : { ...fields, address: `${runs}${String(fields.address)}` }
      const name = `Ottoline Fairweather ${runs}`
      yard.setDay(DAY, '06:00')
      await yard.photos.keep({ ...PHOTO, id: paper })
      const made = await yard.post('/removals/new', {
        ...own(call),
        name,
        version: '0',
      })
      const path = (made.to ?? '').replace(/\?.*/, '')
      const id = path.split('/').at(-1) ?? ''
      const last = (): { version: number; sheet: Sheet } | undefined => yard.store.removals.get(id)?.last
      let clock = minutesOf(`${DAY} 06:00`)
      let open = unanswered([], undefined, last()?.sheet ?? EMPTY_SHEET, DAY)
      const at = (): string => new Date(clock * 60_000).toISOString().slice(0, 16).replace('T', ' ')
      for (const [act, { wait, ...rest }] of steps) {
        clock += Number(wait)
        const now = at()
        const [today = '', hour = ''] = now.split(' ')
        yard.setDay(today, hour)
        // Forms are opened on the day they are posted, but for those that lay open.
        const fields = Object.fromEntries(
          Object.entries(rest).map(([name, value]) => [
            name,
            value === DAY && act !== 'clear' ? today : value,
          ]),
        )
        const before = last()?.sheet
        if (Array.isArray(fields.done))
          fields.done = fields.done.map((d) => (d === 'read' ? readNotes(before ?? EMPTY_SHEET) : d))
        const of =
          act === 'second'
            ? (/name="of" value="([^"]*)"/.exec(
                (await yard.get(`${path}/second?item=${String(fields.item)}`)).text,
              )?.[1] ?? '')
            : ''
        const kept = act === 'job' ? { name, plannedOn: DAY } : {}
        const photos = fields.photos === PAPER ? { photos: paper } : {}
        await yard.post(`${path}/${act}`, {
          ...kept,
          ...own(fields),
          ...photos,
          of,
          seen: before === undefined ? '' : seenOn(before),
          version: String(last()?.version),
        })
        const after = last()?.sheet
        if (after === undefined) throw new Error('the sheet is gone')
        open = unanswered(open, before, after, today)
        const { work: w } = after
        if (w.openedAt !== undefined || w.boxedAt !== undefined || w.queen !== undefined)
          expect(
            [w.underGo, w.withoutGo].some((x) => x !== undefined),
            'begun with a go, or with a reason',
          ).toBe(true)
        const wasUnder = JSON.stringify(before?.work.underGo)
        if (w.underGo !== undefined && JSON.stringify(w.underGo) !== wasUnder && w.withoutGo === undefined) {
          opened++
          const typed = w.openedAt === before?.work.openedAt ? undefined : w.openedAt
          expect(wrongIn(after, paper, now, typed), `${now} ${JSON.stringify(after)}`).toEqual([])
          expect(open, `written, and begun over: ${JSON.stringify(after)}`).toEqual([])
        }
        // Bees, queen or box that are first said on another day than any mark are of nobody's look.
        const first = (['queen', 'boxedAt'] as const).some(
          (x) => before?.work[x] === undefined && w[x] !== undefined,
        )
        if (first && before?.work.boxedAt === undefined && w.withoutGo === undefined)
          expect(w.underGo?.on, `${now} ${JSON.stringify(after)}`).toBe(today)
      }
      // Whoever has opened one job decides no other before that one is over; nor is each page to look through all jobs of before.
      yard.store.removals.erase(id)
    }),
    { numRuns: RUNS },
  )
  expect(yard.errors).toEqual([])
  expect(opened, 'some did get to open it').toBeGreaterThan(0)
})
