/** What is done at a box in five steps. */
export const ACTS = [
  'first-brood-check',
  'outside-look',
  'caged-queen',
  'test-frame',
  'introduce',
  'unite',
  'boost',
  'feed',
  'mite-wash',
  'close-down',
  'close-up',
  'take-out-queen',
  'move-out',
] as const
export type Act = (typeof ACTS)[number]

export interface HowTo {
  title: string
  /** What to have in hand before the lid comes off. */
  bring: string
  steps: readonly [string, string, string, string, string]
}
