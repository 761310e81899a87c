/** Kinds of answers that records share. */
import * as z from 'zod/mini'
import { isDay } from '../days.ts'
import { MOST_PHOTOS, photoId } from '../journal/index.ts'

export const day = z.string().check(z.refine(isDay, 'must be a real date written YYYY-MM-DD'))
export const time = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time written HH:MM'))
export const text = (max: number) =>
  z
    .string()
    .check(
      z.trim(),
      z.minLength(1, 'must not be empty'),
      z.maxLength(max, `must be at most ${max} characters`),
    )
export const money = z.number().check(z.minimum(0, 'must not be negative'), z.maximum(1_000_000))
export const several = <T extends string>(values: readonly T[]) =>
  z.array(z.enum(values)).check(z.maxLength(values.length))
export const photos = z.optional(
  z.array(photoId).check(z.maxLength(MOST_PHOTOS, `must be at most ${MOST_PHOTOS} photos`)),
)
