/** Around fields, and what is wrong in them, in English. */
import { problemQuotes } from '../problem.ts'

export const forms = {
  nothingSaved: 'Nothing was saved yet',
  mend: 'What you typed is still here. Mend it and save again.',
  photos: 'Photos',
  photosHint: (most: number) =>
    `Up to ${most}. Everybody in the yard sees them. Where they were taken is left out.`,
  jpegOnly: 'Without JavaScript: JPEG pictures (.jpg) only.',
  takePhotos: 'Take or choose photos',
  keep: 'keep',
  now: 'now',
  of: (n: number, all: number) => `${n} of ${all}`,
  seenThen: (n: number, all: number) => `Seen then, ${n} of ${all}`,
  howItLooks: 'How it looks',
  /** A problem’s sentence, as the journal says it for programs too. */
  problem: problemQuotes,
}
