/** What work came to that can be refused: what was made of it, or why not. A refusal is a value and never thrown. */

/** What is wrong, beside the field of that name ('' is the whole). */
export interface FieldProblem {
  field: string
  /** A sentence without the field's name. */
  message: string
}

/** Why not: sentences beside fields, or sentences alone. */
export interface Problems<P = FieldProblem> {
  problems: P[]
}

/** `Not`: why not, where problems do not say all of it. */
export type Result<T, Not = Problems> = ({ ok: true } & T) | ({ ok: false } & Not)

export const refused = <P>(problems: P[]): { ok: false } & Problems<P> => ({ ok: false, problems })
