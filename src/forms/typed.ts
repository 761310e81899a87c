/** What was typed into a form: every value as text, by field name, kept exactly so that a refused form comes back filled. */
export type Typed = Record<string, string[]>

/** Text with more than this many characters is not kept: nobody typed it. */
const KEPT = 20_000

/** The trimmed text of a field; '' when it was left empty. */
export const one = (typed: Typed, name: string): string => (typed[name]?.at(-1) ?? '').trim()

/** Every non-empty value of a field that may be ticked more than once. */
export const many = (typed: Typed, name: string): string[] => (typed[name] ?? []).filter((v) => v !== '')

/** True when any field whose name begins so was filled. */
export const anyTyped = (typed: Typed, prefix: string): boolean =>
  Object.keys(typed).some((name) => name.startsWith(prefix) && one(typed, name) !== '')

/** A form's data as typed. Files are not accepted and are left out. */
export function typedFrom(data: FormData): Typed {
  const typed: Typed = Object.create(null)
  for (const [name, value] of data)
    if (typeof value === 'string') {
      const values = typed[name] ?? []
      values.push(value.slice(0, KEPT))
      typed[name] = values
    }
  return typed
}
