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
  /** Give a frame of capped brood: she lays, and lacks only bees. */
  'boost',
  /** Order a queen now: she is likely to be needed, and takes days to come. */
  'order-queen',
  'feed',
  /** A mite wash is what is missing. */
  'wash',
  /** Robbing, beetles, moths, deformed wings: what to do is in the reason. */
  'see-to-signs',
  /** Find the queen that fails and take her out. */
  'take-out-queen',
] as const
export type Action = (typeof ACTIONS)[number]
