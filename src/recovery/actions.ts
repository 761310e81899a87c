/** What advice can be. Public format. */
export const ACTIONS = [
  'none',
  'leave-alone',
  'outside-look',
  'open-and-look',
  'release-queen',
  'give-egg-frame',
  'buy-queen',
  'unite',
  'move-out',
  'call-inspector',
] as const
export type Action = (typeof ACTIONS)[number]
