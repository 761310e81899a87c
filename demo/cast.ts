/** Who plays in the invented yard. Every name of a person or place here is made up. */

/** Runs the yard: people, rules, backups. Never opens a box. */
export const PERPETUA = 'Perpetua'
/** Cuts colonies out of walls and drives the truck. */
export const MAREN = 'Maren'
/** The other beekeeper; takes swarms and boxes. */
export const TOBIAH = 'Tobiah'
/** Walks the rounds at Marl Hollow. */
export const ISOLDE = 'Isolde'
/** Walks the rounds at Tannery Field. */
export const JUNO = 'Juno'

export const MARL = 'Marl Hollow'
export const TANNERY = 'Tannery Field'

/** Who walks the round in which yard. */
export const helperOf = (yard: string): string => (yard === MARL ? ISOLDE : JUNO)

/** A live colony's tag begins with the letter of the yard it came to. */
export const yardOf = (tag: string): string => (tag.startsWith('M') ? MARL : TANNERY)
