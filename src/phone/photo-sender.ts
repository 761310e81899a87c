/**
 * Sends a photo in pieces, each of which the server keeps: a line that is lost costs the piece it was carrying, and the next
 * try goes on behind what has arrived. Between two pieces whoever calls may let something more pressing go.
 */
import { ask } from './asking.ts'
import { photoSent } from './outbox.ts'
import { type Answer, type Picture, type Refuse, refused, type SendParts } from './sender.ts'

/** How far the photos of one run have come, by their ids. */
export type Pieces = Map<string, Progress>

interface Progress {
  /** Where the next piece begins. */
  offset: number
  /** Bytes of the next piece at most. */
  size: number
  /** How often the server had less than we thought. */
  back: number
}

/**
 * The first piece, bytes. It has the 20 seconds of one question to arrive, so a line of a kilobyte a second, the slowest that
 * the server waits for, carries it. A smaller photo goes whole.
 */
export const FIRST_PIECE = 16 * 1024
/** The largest: on a good line a photo of 0.6 MB is then half a dozen requests. */
const LARGEST_PIECE = 512 * 1024
/** A piece that took less than this, milliseconds, is followed by one twice as large. */
const QUICK_MS = 2000
/** What had come was spoiled this often: then it goes whole, and the server says what is wrong with it. */
const GIVE_UP_PIECES_AFTER = 2

const WHOLE_TYPE = 'image/jpeg'
const PIECE_TYPE = 'application/partial-upload'

/** Hands over the next piece, or the whole of a small one. */
export async function handPiece(
  parts: SendParts,
  pieces: Pieces,
  picture: Picture,
  refuseIt: Refuse,
): Promise<Answer> {
  const { id, bytes } = picture
  if (bytes.length <= FIRST_PIECE) return heard(parts, picture, refuseIt, put(parts, picture))
  const known = pieces.get(id)
  if (known === undefined)
    return heard(parts, picture, refuseIt, ask(parts.fetch, `/photos/${id}/arrived`), (offset) =>
      pieces.set(id, { offset, size: FIRST_PIECE, back: 0 }),
    )
  if (known.back >= GIVE_UP_PIECES_AFTER) return heard(parts, picture, refuseIt, put(parts, picture))
  const from = parts.now().getTime()
  const piece = bytes.slice(known.offset, known.offset + known.size)
  const asked = ask(parts.fetch, `/photos/${id}`, {
    method: 'PATCH',
    headers: {
      'Content-Type': PIECE_TYPE,
      'Upload-Offset': String(known.offset),
      'Upload-Length': String(bytes.length),
    },
    body: piece,
  })
  return heard(parts, picture, refuseIt, asked, (offset) => {
    const quick = parts.now().getTime() - from < QUICK_MS
    pieces.set(id, {
      offset,
      size: quick ? Math.min(LARGEST_PIECE, known.size * 2) : known.size,
      back: known.back + (offset > known.offset ? 0 : 1),
    })
  })
}

const put = ({ fetch }: SendParts, { id, bytes }: Picture): ReturnType<typeof ask> =>
  ask(fetch, `/photos/${id}`, { method: 'PUT', headers: { 'Content-Type': WHOLE_TYPE }, body: bytes })

/** What an answer makes of the photo: it is there, more of it has to come, or it stays. */
async function heard(
  { db }: SendParts,
  { id, bytes }: Picture,
  refuseIt: Refuse,
  asked: ReturnType<typeof ask>,
  more: ((offset: number) => void) | null = null,
): Promise<Answer> {
  const answer = await asked
  if (typeof answer === 'string') return answer
  if (!answer.ok) return refused(answer, refuseIt)
  const { kept, offset } = (answer.body ?? {}) as { kept?: unknown; offset?: unknown }
  if (kept === id) {
    await photoSent(db, id)
    return 'taken'
  }
  if (more === null || typeof offset !== 'number' || !(offset >= 0 && offset <= bytes.length))
    return 'no-answer'
  more(offset)
  return 'piece'
}
