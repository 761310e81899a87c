/** A photo as it is kept: checked, without metadata, named by the SHA-256 of its bytes. The same on phone and server. */
import { type Problems, type Result, refused } from '../result.ts'
import { stripped } from './jpeg.ts'

export interface Photo {
  /** SHA-256 of `bytes`, in hex. */
  id: string
  bytes: Uint8Array<ArrayBuffer>
}

/** A problem continues a sentence: 'is no JPEG picture'. */
export type PhotoRead = Result<{ photo: Photo }, Problems<string>>

/** Bytes at most. A phone makes it 0.2 to 0.6 MB before it is kept; without scripts it comes as the camera made it. */
export const PHOTO_LIMIT = 12 * 1024 * 1024

/** Pixels at most along one side: more than any phone's camera makes. */
const SIDE_LIMIT = 20_000
/** Pixels at most: whoever looks at it needs four bytes for each. Phones keep 12 to 50 million. Judgement. */
const PIXEL_LIMIT = 110_000_000

/** Checks and strips a file that should be a photo. */
export async function photoIn(file: Uint8Array): Promise<PhotoRead> {
  if (file.length > PHOTO_LIMIT)
    return refused([`is larger than ${PHOTO_LIMIT / 1024 / 1024} MB: make it smaller`])
  const read = stripped(file)
  if (!read.ok) return read
  if (Math.max(read.width, read.height) > SIDE_LIMIT || read.width * read.height > PIXEL_LIMIT)
    return refused([`is ${read.width} by ${read.height} pixels: make it smaller`])
  return { ok: true, photo: { id: await idOf(read.bytes), bytes: read.bytes } }
}

async function idOf(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes))
  return Array.from(digest, (b) => b.toString(16).padStart(2, '0')).join('')
}

/** Where photos are kept and found again. */
export interface PhotoShelf {
  /** Done when it is on the disk. Keeping it again is harmless. */
  keep: (photo: Photo) => Promise<void>
  find: (id: string) => Promise<Uint8Array<ArrayBuffer> | null>
}
