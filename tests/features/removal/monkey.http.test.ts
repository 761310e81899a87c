/**
 * A beekeeper in a hurry who taps anything in any order, by pages and by the phone's queue: whatever was begun under a “go”
 * had its looks, its trades, its people and its decision at that very place, told here without the code that decides it.
 */
import fc from 'fast-check'
import { beforeAll, expect, test } from 'vitest'
import { seenOn } from '../../../src/features/removal/hazards.ts'
import { TICKED } from '../../../src/features/removal/item.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { PASSPHRASE } from '../../support/people.ts'
import { type Yard, yardOn } from '../../support/yard-on.ts'
import { DAY, PAPER, PHOTO } from './ready.ts'

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
})
const check = fc.record<Fields>({
  shownOn: some(DAY, DAY, DAY, ''),
  hottestC: some('75', '75', '100', ''),
  cutMm: some('3/4', ''),
  vacuum: some('bee-vacuum', 'none', ''),
  wires: some('none', 'none', 'none', 'near', 'unknown', ''),
  temper: some('1', ''),
  africanized: some('no', ''),
  done: fc.oneof(fc.constant([...TICKED] as string[]), fc.subarray([...TICKED] as string[])),
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
const TIDY: Record<'site' | 'check' | 'work', Fields> = {
  site: {
    where: 'left of the porch',
    surface: 'siding',
    sheathingMm: '3/4',
    behind: 'none-detector',
    hazards: 'none-tested',
    temper: '2',
    africanized: 'no',
  },
  check: {
    shownOn: DAY,
    hottestC: '75',
    cutMm: '3/4',
    vacuum: 'bee-vacuum',
    wires: 'none',
    done: [...TICKED],
    is: 'go',
    reason: 'Signs later.',
    temper: '1',
    africanized: 'no',
  },
  work: { outdoorC: '75', now: 'openedAt' },
}
const few = fc.array(step, { maxLength: 2 })
const day = fc
  .tuple(few, few, few)
  .map(([first, then, late]): [string, Fields][] => [
    ['site', TIDY.site],
    ...first,
    ['check', TIDY.check],
    ...then,
    ['work', TIDY.work],
    ...late,
    ['check', TIDY.check],
    ['work', TIDY.work],
  ])

const plain = (text = ''): string => text.trim().toLowerCase()
type At = Partial<Record<'address' | 'where' | 'surface' | 'type', string | undefined>>
const placeIn = (x: At): string => [x.address, x.where, x.surface, x.type].map(plain).join('|')

/** What must be true of a sheet on which something was opened with a “go”. */
function wrongIn(s: Sheet, paper: string): string[] {
  const here = placeIn({ ...s.job, ...s.site })
  const { site, check: c, decision: d } = s
  const free = site.type === 'swarm' && c.done?.includes('free') === true && site.surface === undefined
  const ticked = (id: string): boolean =>
    (c.doneOn === DAY && placeIn(c.doneAt ?? {}) === here && c.done?.includes(id) === true) ||
    c.seconds?.some((x) => x.item === id && x.by === 'Bram' && x.account === true && placeIn(x) === here) ===
      true
  const cleared = (hazard: string, trade: string): boolean =>
    c.clearances?.some(
      (x) =>
        x.hazard === hazard &&
        x.as === trade &&
        x.who === 'Edda Brandt' &&
        x.licence === '4711' &&
        x.photo === paper &&
        x.on === DAY &&
        placeIn(x) === here,
    ) === true
  const looked = (what: 'behind' | 'hazards'): boolean =>
    free || (site[what] !== undefined && placeIn(site.lookedAt?.[what] ?? {}) === here)
  return Object.entries({
    decided: d?.is === 'go' && d.by === 'Ines' && d.on === DAY && placeIn(d) === here && d.fell === undefined,
    behind: looked('behind'),
    hazards: looked('hazards'),
    known:
      free || site.old === 'no' || site.oldHow !== undefined || site.hazards?.includes('asbestos') === true,
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
    wires: site.nearWires !== true && c.wires === 'none' && c.doneOn === DAY,
    height: (site.heightM ?? 0) > 0 || site.access !== 'ground' || ticked('ladder-person'),
    heat: (s.work.outdoorC ?? 99) < 30 && (c.hottestC ?? 99) < 30,
  }).flatMap(([what, holds]) => (holds ? [] : [what]))
}

test('whatever is tapped, what was begun with a “go” had one, and all that it rests on', async () => {
  let opened = 0
  let runs = 0
  await fc.assert(
    fc.asyncProperty(job, day, async (call, steps) => {
      // Each job has papers and a house of its own: what is on another sheet of the same house is asked of this one too.
      const paper = String(++runs).padStart(64, '0')
      const own = (fields: Fields): Fields =>
        fields.address === undefined || fields.address === ''
          ? fields
          : { ...fields, address: `${runs}${String(fields.address)}` }
      await yard.photos.keep({ ...PHOTO, id: paper })
      const made = await yard.post('/removals/new', {
        ...own(call),
        name: 'Ottoline Fairweather',
        version: '0',
      })
      const path = (made.to ?? '').replace(/\?.*/, '')
      const id = path.split('/').at(-1) ?? ''
      const last = (): { version: number; sheet: Sheet } | undefined => yard.store.removals.get(id)?.last
      for (const [act, fields] of steps) {
        const before = last()?.sheet
        const of =
          act === 'second'
            ? (/name="of" value="([^"]*)"/.exec(
                (await yard.get(`${path}/second?item=${String(fields.item)}`)).text,
              )?.[1] ?? '')
            : ''
        const kept = act === 'job' ? { name: 'Ottoline Fairweather', plannedOn: DAY } : {}
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
        const { work: w } = after
        if (w.openedAt !== undefined || w.boxedAt !== undefined || w.queen !== undefined)
          expect(
            [w.underGo, w.withoutGo].some((x) => x !== undefined),
            'begun with a go, or with a reason',
          ).toBe(true)
        if (w.underGo !== undefined && before?.work.underGo === undefined && w.withoutGo === undefined) {
          opened++
          expect(wrongIn(after, paper), JSON.stringify(after)).toEqual([])
        }
      }
      // Whoever has opened one job decides no other before that one is over.
      const over = last()
      if (over !== undefined)
        yard.store.removals.save(
          id,
          over.version,
          { ...over.sheet, ended: { on: DAY, why: 'Over.' } },
          { savedAt: `${DAY}T12:00:00.000Z`, savedBy: 'Ines' },
        )
    }),
    { numRuns: RUNS },
  )
  expect(yard.errors).toEqual([])
  expect(opened, 'some did get to open it').toBeGreaterThan(0)
})
