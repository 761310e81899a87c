/** Sends removal sheets that wait, after their photos. Sending again what the server has is harmless: it compares them. */
import type { Problem } from '../journal/index.ts'
import { heldIn, photosOfSheet, type Sheet, sheet as sheetSchema, withFound } from '../records/index.ts'
import { canonical } from '../store/index.ts'
import { ask } from './asking.ts'
import { isRefused, type KeptSheet, type WaitingSheet } from './database.ts'
import { handPiece, type Pieces } from './photo-sender.ts'
import { type Answer, type Ended, problemsIn, refused, type SendParts, unsentPhoto } from './sender.ts'
import { acknowledgeSheet, refuseSheet, triedSheet, waitingSheets } from './sheet-outbox.ts'

/** Sends each once; one that cannot be taken now waits for the next time. */
export async function sendSheets(parts: SendParts): Promise<Ended> {
  let ended: Ended = 'done'
  for (const kept of await waitingSheets(parts.db, parts.viewer.id)) {
    if (isRefused(kept.mine)) continue
    const answer = await hand(parts, kept)
    parts.moved?.()
    if (answer === 'taken' || answer === 'refused') continue
    if (answer !== 'broken') return answer
    ended = 'no-answer'
  }
  return ended
}

async function hand(
  parts: SendParts,
  { id, mine }: KeptSheet & { mine: WaitingSheet },
): Promise<Exclude<Answer, 'piece'>> {
  const { base, sheet, over, behind = 0 } = mine
  const post = (sheet: Sheet, over: number | false) =>
    ask(parts.fetch, '/removals/sync', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', 'Resettle-Person': parts.viewer.id },
      body: JSON.stringify({
        id,
        base,
        sheet: { ...sheet, site: signedBy(mine, sheet) },
        over,
        // What it takes for now by the clock that it was written by: the server knows whether that was right.
        now: new Date(parts.now().getTime() + behind).toISOString(),
      }),
    })
  let clash: number | undefined
  const refuseIt = (problems: Parameters<typeof refuseSheet>[2]) => refuseSheet(parts.db, id, problems, clash)
  const pieces: Pieces = new Map()
  const first = foundIn(mine)
  // Over a thin signal a picture takes minutes, in which a colleague may open what gas was found behind.
  if (first !== null && (await unsentPhoto(parts.db, photosOfSheet(sheet))) !== null) {
    const answer = await post(first, false)
    if (typeof answer === 'string') return answer
  }
  for (;;) {
    const picture = await unsentPhoto(parts.db, photosOfSheet(mine.sheet))
    if (picture === null) break
    const answer = await handPiece(parts, pieces, picture, refuseIt)
    if (answer !== 'taken' && answer !== 'piece') return answer
  }
  await triedSheet(parts.db, id)
  const answer = await post(sheet, typeof over === 'number' && over)
  if (typeof answer === 'string') return answer
  const { version } = (answer.body ?? {}) as { version?: unknown }
  if (typeof version === 'number') clash = version
  if (!answer.ok) return refused(answer, refuseIt)
  const made = madeOf(answer.body, id)
  if (made === null) return 'no-answer'
  await acknowledgeSheet(parts.db, { id, sent: sheet, now: parts.now().toISOString() }, made)
  return 'taken'
}

/** Whoever sends it signs nothing for another: what they found on this phone is on the sheet, and noted when it comes in. */
function signedBy({ from, owner }: WaitingSheet, { site: { noted, ...site } }: Sheet): Sheet['site'] {
  const had = (from?.site.noted ?? []).map(canonical)
  const own = noted?.filter((n) => n.by === owner.name || had.includes(canonical(n)))
  return own === undefined ? site : { ...site, noted: own }
}

/** The version it was made from with what was found since, and no pictures: null where the server knows none, or nothing was found. */
function foundIn({ from, sheet }: WaitingSheet): Sheet | null {
  if (from === undefined) return null
  const found = withFound(from, sheet, from)
  const decision = heldIn(sheet, from)
  if (canonical(found) === canonical(from) && decision === undefined) return null
  const had = (from.site.noted ?? []).map(canonical)
  // Why something is off goes with what is taken off.
  const noted = sheet.site.noted?.filter((n) => n.is === 'found' || had.includes(canonical(n)))
  return {
    ...found,
    site: { ...found.site, ...(noted === undefined ? {} : { noted }) },
    ...(decision === undefined ? {} : { decision }),
  }
}

/** What the server keeps now, and says of it, where the answer names the sheet; null where it is none of ours. */
function madeOf(body: unknown, id: string): { version: number; sheet: Sheet; said: Problem[] } | null {
  const { kept, version, sheet, said } = (body ?? {}) as Record<string, unknown>
  const parsed = sheetSchema.safeParse(sheet)
  return kept === id && typeof version === 'number' && parsed.success
    ? { version, sheet: parsed.data, said: problemsIn({ problems: said }) }
    : null
}
