/** One removal sheet of a yard with several people: what stands on it, what a program sends, and its forms as they are tapped on a phone. */
import { expect } from 'vitest'
import type { Role } from '../../../src/people/index.ts'
import type { Sheet } from '../../../src/records/removal-sheet.ts'
import { down, type Phone, phoneIn, wordsOf } from '../../support/phone.ts'
import { ORIGIN, type TestYard } from '../../support/yard-app.ts'
import { CALLED, DAY, READY, SITED, TAPPED } from './ready.ts'

/** A list is one field a tap. */
export type Taps = Record<string, string | readonly string[]>
export const bodyOf = (fields: Taps): URLSearchParams =>
  new URLSearchParams(Object.entries(fields).flatMap(([name, vs]) => [vs].flat().map((v) => [name, v])))
const hidden = (page: string, name: string): string =>
  new RegExp(`name="${name}" value="([^"]*)"`).exec(page)?.[1] ?? ''

/** `yard`: the one of this test. `by`: who saves where a test says nobody. */
export function sheetIn(yard: () => TestYard, id: string, { by = 'Bram', at = '08:00' } = {}) {
  const removals = () => yard().services.store.removals
  const kept = (of = id): Sheet | undefined => removals().get(of)?.last.sheet
  const version = (of = id): number => removals().get(of)?.last.version ?? 0
  return {
    removals,
    kept,
    last: (of = id): Sheet => kept(of) ?? READY,
    version,
    saved: (s: Sheet, savedBy = by, of = id): void => {
      const stamp = { savedAt: `${DAY}T${at}:00.000Z`, savedBy }
      expect(removals().save(of, version(of), s, stamp).ok).toBe(true)
    },
    /** As a phone or a program sends it: on the version that it had read; `over`: over the last one. */
    sync: async (sheet: Sheet, { base = 0, over = false, as = 'beekeeper' as Role, of = id } = {}) => {
      const answer = await yard().ask(as, '/removals/sync', {
        method: 'POST',
        headers: { 'Content-Type': 'application/json' },
        body: JSON.stringify({ id: of, base, over: over && version(of), sheet }),
      })
      return { status: answer.status, text: await answer.text() }
    },
    page: async (path = `/removals/${id}`, as: Role = 'beekeeper') => (await yard().ask(as, path)).text(),
  }
}

/** A phone at noon of the day, whose last signal is gone where `heard`. */
export async function phoneAtNoon(yard: TestYard, { role = 'beekeeper' as Role, heard = true } = {}) {
  const phone = phoneIn(yard, role)
  phone.at(`${DAY}T12:00:00Z`)
  if (heard) await phone.signal()
  else phone.network(down)
  return phone
}

/** `phone`: the one of this test; another one may be taken meanwhile. */
export function sheetOn(phone: () => Phone, id: string) {
  const path = `/removals/${id}`
  /** A form as it is opened: what it says unseen. */
  const form = async (part: string): Promise<Record<string, string>> => {
    const page = await phone().open(`${path}/${part}`)
    return { version: hidden(page, 'version'), shownOn: DAY, shownAt: hidden(page, 'shownAt') }
  }
  /** Exactly these fields. */
  const send = async (part: string, fields: Taps) => {
    const init = { method: 'POST', body: bodyOf(fields) }
    const answer = await phone().syncService.form(new Request(`${ORIGIN}${path}/${part}`, init))
    return { status: answer?.status, text: (await answer?.text()) ?? '' }
  }
  /** A form opened and tapped. */
  const tap = async (part: string, fields: Taps) => {
    const { status, text } = await send(part, { ...(await form(part)), ...fields })
    return { status, html: text, text: wordsOf(text) }
  }
  return {
    form,
    send,
    tap,
    call: (more: Taps) => tap('job', { ...CALLED, ...more }),
    findGas: () => tap('site', { ...SITED, behind: ['insulation', 'gas'] }),
    decide: (more: Taps = {}) => tap('check', { ...TAPPED, ...more }),
    mine: async (of = id) => (await (await phone().database()).get('sheets', of))?.mine,
    words: async (at = path) => wordsOf(await phone().open(at)),
  }
}
