import { describe, expect, it } from 'vitest'
import { LANGUAGES } from '../../../src/languages.ts'
import type { Lane, Ribbon } from '../../../src/parts/ribbon/model.ts'
import { ribbonOf } from '../../../src/parts/ribbon/model.ts'
import { RibbonSmall, RibbonStrip } from '../../../src/parts/ribbon/strip.tsx'
import { nameAt, roomFor } from '../../../src/parts/ribbon/windows.tsx'
import { laneLabel, ribbonWords } from '../../../src/parts/ribbon/words.ts'
import { wordsIn } from '../../../src/words/index.ts'
import { historyFrom, look, planFrom, WALL } from '../../support/wall-colony.ts'

type Story = Parameters<typeof historyFrom>[0]

const ribbon = (story: Story, today: string): Ribbon => ribbonOf(historyFrom(story), planFrom(story, today))
const lane = (r: Ribbon, of: Lane['of']): Lane | undefined => r.lanes.find((l) => l.of === of)
const drawn = (r: Ribbon): string => String(<RibbonStrip ribbon={r} />)

const CELLS = look('2026-05-06', { eggs: 'none', cells: 'open' })
const NEW_EGGS = look('2026-05-06', { eggs: 'single', cells: 'none' })

describe('the brood ribbon', () => {
  it('fades brood that came along at its last possible days: eggs +3, open +9, capped +21 (Winston 1987)', () => {
    const along = lane(ribbon([WALL], '2026-05-03'), 'along')
    expect(along?.bands).toEqual([
      { kind: 'eggs', from: '2026-05-01', to: '2026-05-04' },
      { kind: 'open', from: '2026-05-05', to: '2026-05-10' },
      { kind: 'capped', from: '2026-05-11', to: '2026-05-22' },
    ])
  })

  it('starts with the youngest brood that came, and shows none where none came', () => {
    const capped = { ...WALL, brood: { eggs: 0, open: 0, capped: 2 } }
    expect(lane(ribbon([capped], '2026-05-03'), 'along')?.bands.map((b) => b.kind)).toEqual(['capped'])
    const none = { ...WALL, brood: { eggs: 0, open: 0, capped: 0 } }
    expect(lane(ribbon([none], '2026-05-03'), 'along')).toBeUndefined()
  })

  it('gives each frame from a donor a lane of its own, from the day it was given', () => {
    const gift = { kind: 'given' as const, on: '2026-05-08', what: 'egg-frame', frames: 1, donor: 'Q-9' }
    const donor = lane(ribbon([WALL, gift], '2026-05-09'), 'donor')
    expect(donor?.name).toBe('egg-frame')
    expect(donor?.bands.at(0)).toEqual({ kind: 'eggs', from: '2026-05-08', to: '2026-05-11' })
  })

  it('shows the queen being raised, her emergence and her first egg, as the plan has them', () => {
    const plan = planFrom([WALL, CELLS], '2026-05-07')
    const r = ribbon([WALL, CELLS], '2026-05-07')
    const queen = lane(r, 'queen')
    const emergence = queen?.bands.find((b) => b.kind === 'emergence')
    expect(emergence).toMatchObject({
      from: plan.spans.emergence?.earliest,
      to: plan.spans.emergence?.latest,
      likely: plan.spans.emergence?.likely,
    })
    expect(lane(r, 'new-layer')?.bands[0]?.kind).toBe('first-egg')
    expect(r.quiet).toEqual(plan.quiet)
    expect(drawn(r)).toContain('rb-quiet')
  })

  it('shows new eggs from the look that proved them', () => {
    const fresh = lane(ribbon([WALL, NEW_EGGS], '2026-05-07'), 'new-layer')
    expect(fresh?.bands[0]).toMatchObject({ kind: 'eggs', from: '2026-05-06' })
    expect(fresh?.bands.at(-1)).toMatchObject({ kind: 'capped', maybe: true })
  })

  it('shows a cage until she was found out of it', () => {
    const caged = { ...WALL, queen: 'caged' }
    const out = { kind: 'queen-cage' as const, on: '2026-05-04', found: 'released' }
    expect(lane(ribbon([caged, out], '2026-05-06'), 'queen')?.bands[0]).toEqual({
      kind: 'caged',
      from: '2026-05-01',
      to: '2026-05-04',
    })
    expect(lane(ribbon([caged], '2026-05-03'), 'queen')?.bands[0]?.to).toBe('2026-05-03')
  })

  it('never draws outside its days, whatever the day', () => {
    for (const today of ['2026-05-01', '2026-05-07', '2026-06-15', '2026-09-01']) {
      const r = ribbon([WALL, CELLS], today)
      expect(r.from <= today && today <= r.to).toBe(true)
      for (const b of r.lanes.flatMap((l) => l.bands)) {
        expect(b.from <= b.to).toBe(true)
        expect(b.from >= r.from && b.to <= r.to).toBe(true)
      }
      for (const [, x] of drawn(r).matchAll(/(?: x|x1|width)="(-?[\d.]+)%"/g)) {
        expect(Number(x)).toBeGreaterThanOrEqual(0)
        expect(Number(x)).toBeLessThanOrEqual(100.3)
      }
    }
  })

  it('keeps every name of a window on the strip of the narrowest phone, beside the window or above it', () => {
    const words = 'Look for the new queen’s eggs'
    const room = roomFor(words)
    for (let start = 0; start < 100; start += 3)
      for (let end = start + 3; end <= 100; end += 3) {
        const { x, anchor, above } = nameAt(words, start, end)
        const [left, right] = anchor === 'start' ? [x, x + room] : [x - room, x]
        expect(left, `${start} to ${end}`).toBeGreaterThanOrEqual(0)
        expect(right, `${start} to ${end}`).toBeLessThanOrEqual(100)
        if (!above) expect(right <= start || left >= end).toBe(true)
      }
  })

  it.each(LANGUAGES)(
    'has lane names in %s that fit on the narrowest phone, on the longest day',
    (language) => {
      const w = wordsIn(language)
      const day = '2026-09-30'
      const band = { kind: 'eggs', from: '2026-08-26', to: day, likely: day } as const
      const kinds: Record<keyof typeof w.ribbon.lanes, Lane['of']> = {
        along: 'along',
        perhapsAlong: 'along',
        'egg-frame': 'donor',
        'open-brood': 'donor',
        'capped-brood': 'donor',
        brood: 'donor',
        caged: 'queen',
        ifRaised: 'queen',
        raised: 'queen',
        treatment: 'treatment',
        newBrood: 'new-layer',
        firstEggs: 'new-layer',
      }
      for (const [name, of] of Object.entries(kinds) as [Lane['name'], Lane['of']][])
        for (const kind of of === 'queen' ? (['caged', 'emergence'] as const) : (['eggs'] as const)) {
          if ((name === 'caged') !== (kind === 'caged') && of === 'queen') continue
          const { likely, ...rest } = band
          const bands = [kind === 'caged' ? { ...rest, kind } : { ...rest, likely, kind }]
          const label = laneLabel({ of, name, bands }, day, w)
          expect(roomFor(label), label).toBeLessThanOrEqual(100)
        }
    },
  )

  it('says in words all that it draws', () => {
    const r = ribbon([WALL, CELLS], '2026-05-07')
    const words = ribbonWords(r).join(' ')
    for (const l of r.lanes) expect(words).toContain(wordsIn('en').ribbon.lanes[l.name])
    expect(words).toContain('Lid stays on')
    expect(words).toContain('Opened: Wed 6 May.')
    expect(words).toContain('Mite wash:')
    expect(drawn(r)).toContain(`aria-label="Brood ribbon. ${words.slice(0, 40)}`)
  })

  it('uses no inline style and tells stages apart by pattern', () => {
    const svg = drawn(ribbon([WALL, CELLS], '2026-05-07'))
    expect(svg).not.toContain('style=')
    for (const kind of ['eggs', 'open', 'capped']) expect(svg).toContain(`rb-bar rb-${kind}`)
  })

  it('has a small form without letters for the rows of the yard', () => {
    const small = String(<RibbonSmall ribbon={ribbon([WALL, CELLS], '2026-05-07')} />)
    expect(small).not.toContain('<text')
    expect(small).toContain('aria-hidden="true"')
  })

  it('ends where the colony left', () => {
    const left = { kind: 'outcome' as const, on: '2026-05-20', what: 'absconded' }
    const r = ribbon([WALL, left], '2026-06-20')
    expect(r.left).toBe('2026-05-20')
    expect(r.windows).toEqual([])
    expect(ribbonWords(r).at(-1)).toBe('Left the yard Wed 20 May.')
  })
})
