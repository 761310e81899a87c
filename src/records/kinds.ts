/** Kinds of answers that records share beside those of the journal. */
import * as z from 'zod/mini'

export const money = z.number().check(z.minimum(0, 'must not be negative'), z.maximum(1_000_000))
export const several = <T extends string>(values: readonly T[]) =>
  z.array(z.enum(values)).check(z.maxLength(values.length))
