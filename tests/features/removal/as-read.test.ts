/** Which answers a “go” rests on: all of a sheet, but what has no weight. */
import { expect, test } from 'vitest'
import { isOtherwise } from '../../../src/features/removal/as-read.ts'
import { check, job, type Sheet, site } from '../../../src/records/removal-sheet.ts'
import { DAY, READY } from './ready.ts'

/** How somebody is reached, pictures, and what is kept beside the answers: of no weight for a “go”. */
const NO_GROUND = ['photos', 'name', 'phone', 'email', 'noted', 'lookedAt', 'tickedAt', 'doneAt']
const fieldsOf = (part: 'job' | 'site' | 'check'): [typeof part, string][] =>
  Object.keys({ job, site, check }[part].def.shape).map((field) => [part, field])

test.each([...fieldsOf('job'), ...fieldsOf('site'), ...fieldsOf('check')])(
  '%s.%s said otherwise is another sheet, but for what has no weight',
  (part, field) => {
    // Of clearances and second persons, who and for what.
    const said = ['clearances', 'seconds'].includes(field) ? [{ hazard: 'gas', item: 'kit' }] : 'otherwise'
    const after = { ...READY, [part]: { ...READY[part], [field]: said } } as Sheet
    expect(isOtherwise(READY, after)).toBe(!NO_GROUND.includes(field))
  },
)

test('whatever it says after the opening asks only of what can kill', () => {
  const open: Sheet = { ...READY, work: { on: DAY, openedAt: '10:10' } }
  expect(isOtherwise(open, { ...open, job: { ...open.job, wayIn: 'By the gate' } })).toBe(false)
})
