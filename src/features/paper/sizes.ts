/** Sizes of paper. */
export const SIZES = ['a4', 'letter'] as const
export type Size = (typeof SIZES)[number]

/** Where one reckons in °F, printers hold Letter paper. */
export const usualSize = (temperature: 'F' | 'C'): Size => (temperature === 'F' ? 'letter' : 'a4')
