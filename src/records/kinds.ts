/** Kinds of answers that records share. */
import { z } from 'zod'
import { isDay } from '../days.ts'
import { MOST_PHOTOS, photoId } from '../journal/index.ts'

export const day = z.string().refine(isDay, 'must be a real date written YYYY-MM-DD')
export const time = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time written HH:MM')
export const text = (max: number) =>
  z.string().trim().min(1, 'must not be empty').max(max, `must be at most ${max} characters`)
export const money = z.number().min(0, 'must not be negative').max(1_000_000)
export const several = <T extends string>(values: readonly T[]) => z.array(z.enum(values)).max(values.length)
export const photos = z.array(photoId).max(MOST_PHOTOS, `must be at most ${MOST_PHOTOS} photos`).optional()
