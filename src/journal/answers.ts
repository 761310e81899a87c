/** Kinds of answers that entries and records share, each with what is said of one that is none. */
import * as z from 'zod/mini'
import { isDay } from '../days.ts'
import { TIME } from '../time-of-day.ts'

export const day = z.string().check(z.refine(isDay, 'must be a real date written YYYY-MM-DD'))
export const time = z.string().check(z.regex(TIME, 'must be a time written HH:MM'))
export const text = (max: number) =>
  z
    .string()
    .check(
      z.trim(),
      z.minLength(1, 'must not be empty'),
      z.maxLength(max, `must be at most ${max} characters`),
    )

/** Photos of one entry, or of one part of a sheet, at most. */
export const MOST_PHOTOS = 8
/** A photo's name: the SHA-256 of its bytes. The picture itself is a file beside the database. */
export const photoId = z.string().check(z.regex(/^[0-9a-f]{64}$/, 'must be the SHA-256 of a photo'))
/** Pictures. They prove nothing to the plan: what they show has to be said. */
export const photos = z
  .array(photoId)
  .check(z.maxLength(MOST_PHOTOS, `must be at most ${MOST_PHOTOS} photos`))
