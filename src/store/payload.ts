import type * as z from 'zod/mini'
import { type Problems, type Result, refused } from '../result.ts'

/** What a row keeps as JSON, or why it cannot be read, in words that follow the row's name. */
export function readPayload<T>(
  schema: z.ZodMiniType<T>,
  text: string,
): Result<{ made: T }, Problems<string>> {
  let payload: unknown
  try {
    payload = JSON.parse(text)
  } catch {
    return refused(['is not JSON'])
  }
  const parsed = schema.safeParse(payload)
  if (parsed.success) return { ok: true, made: parsed.data }
  const issue = parsed.error.issues[0]
  return refused([`does not fit the schema (${issue?.path.join('.') ?? ''}: ${issue?.message ?? ''})`])
}
