/** How a catalogue of sentences makes the type of what can be said: a code, and the parameters of its sentence. */

export type Catalogue = Record<string, (p: never) => string>

type Given<F> = F extends () => string ? unknown : F extends (p: infer P) => string ? P : never

/** A code of the catalogue with what its sentence needs. */
export type SaidOf<C extends Catalogue> = { [K in keyof C & string]: { code: K } & Given<C[K]> }[keyof C &
  string]

/** The sentence of what is to be said. The type of `said` holds code and parameters together. */
export const wordsOf = <C extends Catalogue>(catalogue: C, said: SaidOf<C>): string =>
  (catalogue[said.code] as (p: SaidOf<C>) => string)(said)
