/** The invented jobs that are done: saved as they stand, by form or by phone, no “go” of theirs falls and none is marked. Invented throughout. */
import { expect, test } from 'vitest'
import type { Sheet } from '../../src/records/index.ts'
import { filledFile } from '../support/filled.ts'
import { formIn, yardOn } from '../support/yard-on.ts'

const TODAY = '2026-06-10'

test.each(['form', 'phone'])(
  'the work of every done job, saved by %s with nothing of it changed',
  async (by) => {
    const yard = await yardOn(TODAY, 'operator', filledFile(TODAY, 'whole'))
    const went = ({ decision: d, work }: Sheet) =>
      d?.is === 'go' && d.fell === undefined && work.boxedAt !== undefined && work.withoutGo === undefined
    const jobs = yard.store.removals.list().filter(({ sheet }) => went(sheet))
    expect(jobs.length).toBeGreaterThan(1)
    for (const { id, version, sheet } of jobs) {
      const path = `/removals/${id}/work`
      const sent = { ...sheet, job: { ...sheet.job, wayIn: 'By the gate' } }
      const { status } =
        by === 'form'
          ? await yard.post(path, formIn((await yard.get(path)).text))
          : await yard.send('/removals/sync', { id, base: version, over: false, sheet: sent })
      expect(status).toBe(by === 'form' ? 303 : 200)
      const last = yard.store.removals.get(id)?.last
      expect(last?.version).toBeGreaterThan(version)
      expect(last && went(last.sheet), sheet.job.name).toBe(true)
    }
  },
)
