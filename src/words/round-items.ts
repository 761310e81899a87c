/** What may have to be loaded before a round. */
export const ITEMS = [
  'egg-frame',
  'mated-queen',
  'unite-or-boost',
  'syrup',
  'cage-tools',
  'mite-wash',
  'band-cutter',
  'moving',
] as const
export type Item = (typeof ITEMS)[number]
