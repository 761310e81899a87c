/** Amounts in English. */
export const units = {
  /** Symbols that are words, by the English one. */
  symbols: { 'US quarts': 'US quarts', litres: 'litres', miles: 'miles' } as Record<string, string>,
  /** The same of one, by the symbol of many. */
  one: { 'US quarts': 'US quart', litres: 'litre', miles: 'mile' } as Record<string, string>,
  noFrames: 'no frames',
  frame: 'frame',
  frames: 'frames',
}
