/** Entries of the fuzz, as the phone's outbox and programs send them. */
import fc from 'fast-check'
import { ENTRY_KINDS, KIND_SCHEMAS } from '../../src/journal/entry.ts'
import { BREAK, DAYS, type Names, TAG, text } from './values.ts'

/** Whole entries, as a program would send them. */
const WHOLE = [
  { kind: 'inspection', opened: true, eggs: 'single', cells: 'none' },
  { kind: 'note', text: 'Calm.' },
  { kind: 'given', what: 'syrup', litres: 1, cost: 4 },
  { kind: 'move', yard: 'Quarry yard', stand: '9' },
  { kind: 'mite-wash', bees: 300, mites: 2 },
  { kind: 'missed-visit', reason: 'rain' },
  { kind: 'outcome', what: 'moved-out', destination: 'Invented Orchard' },
  { kind: 'withdrawal', reason: 'Wrong box.' },
  { kind: 'intake', removal: { type: 'wall' }, yard: 'Quarry yard', queen: 'unseen' },
] as const

/** A whole entry with a few fields spoilt: most of what is refused is refused for one of them. */
function spoilt(names: Names): fc.Arbitrary<unknown> {
  const whole = fc
    .record({
      base: fc.constantFrom(...WHOLE),
      id: fc.uuid(),
      colony: fc.constantFrom(...names.tags),
      on: fc.constantFrom('2026-05-20', '2026-05-31', '2026-06-01'),
      replaces: fc.constantFrom(...names.ids),
    })
    .map(({ base, replaces, ...rest }) => ({
      ...base,
      ...rest,
      ...(base.kind === 'withdrawal' ? { replaces } : {}),
    }))
  const fields = ['by', 'on', 'at', 'colony', 'replaces', 'note', 'kind', 'id', 'surprise'] as const
  const wrong = fc.tuple(fc.constantFrom(...fields), text(names))
  return fc
    .tuple(whole, fc.oneof(fc.constant([]), fc.array(wrong, { maxLength: 2 })))
    .map(([entry, some]) => ({ ...entry, ...Object.fromEntries(some) }))
}

/** An entry that is nearly right: any kind, some fields of that kind and of others, plausible and hostile values. */
function nearlyEntry(names: Names): fc.Arbitrary<unknown> {
  const shapes = KIND_SCHEMAS.map((o) => Object.keys(o.shape))
  const value: fc.Arbitrary<unknown> = fc.oneof(
    text(names),
    fc.boolean(),
    fc.double(),
    fc.integer({ min: -5, max: 400 }),
    fc.constantFrom(null, [], {}, ['beetles'], { type: 'wall' }, { type: TAG, site: BREAK }),
  )
  const base = fc.record({
    id: fc.oneof(
      { weight: 3, arbitrary: fc.uuid() },
      { weight: 1, arbitrary: fc.constantFrom(...names.ids) },
    ),
    colony: fc.oneof(fc.constantFrom(...names.tags), text(names)),
    on: fc.constantFrom(...DAYS),
    by: fc.constantFrom('Odalys', 'Bram', 'Teuila', TAG),
  })
  const rest = fc.oneof(
    ...shapes.map((keys) =>
      fc.record(
        {
          ...Object.fromEntries(keys.map((k) => [k, value])),
          kind: fc.constantFrom(...ENTRY_KINDS),
          opened: fc.boolean(),
          text: text(names),
          replaces: fc.constantFrom(...names.ids),
          yard: fc.constantFrom('Quarry yard', TAG),
          queen: fc.constantFrom('unseen', 'caged', BREAK),
          removal: fc.constantFrom({ type: 'wall' }, { type: TAG }),
          what: fc.constantFrom('syrup', 'died', TAG),
          reason: text(names),
        },
        { requiredKeys: ['kind', 'opened'] },
      ),
    ),
  )
  return fc.tuple(rest, base).map(([a, b]) => pruned({ ...a, ...b }))
}

/** Fields that the kind does not have are mostly left out, so that some entries are taken. */
function pruned(e: Record<string, unknown>): Record<string, unknown> {
  const shape = KIND_SCHEMAS.find((o) => o.shape.kind.def.values.some((kind) => kind === e.kind))?.shape
  const keep = String(e.id).charCodeAt(0) % 4 === 0
  return keep || shape === undefined ? e : Object.fromEntries(Object.entries(e).filter(([k]) => k in shape))
}

/** What is sent as JSON: one entry, several, or no entry at all. */
export function entryBodies(names: Names): fc.Arbitrary<unknown> {
  const entry = fc.oneof(spoilt(names), nearlyEntry(names))
  return fc.oneof(
    { weight: 3, arbitrary: entry },
    { weight: 1, arbitrary: fc.array(entry, { maxLength: 3 }) },
    { weight: 1, arbitrary: fc.json().map((j) => JSON.parse(j) as unknown) },
  )
}
