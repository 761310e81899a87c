/** One's own tokens for programs, in English. */
import type { Scope } from '../../people/index.ts'

export const tokens = {
  title: 'Tokens for programs',
  /** Around a link to the description. */
  about: [
    'With a token a program of yours asks this yard over HTTP, as you and with no more than you may do. What can be asked is ',
    'described here',
    ', and to programs with a token at /api/v1/openapi.json. A token works on when you sign out or change your passphrase, until it runs out or is taken back.',
  ],
  takenBack: 'The token is taken back. It works no more.',
  make: 'Make a token',
  notMade: 'Not made yet',
  whatFor: 'What it is for',
  whatForHint: 'So that you know later which one to take back.',
  scopes: 'Scopes',
  scopesHint: 'Tick only what the program needs.',
  goodFor: 'Good for',
  days: (n: number) => `${n} days`,
  save: 'Make the token',
  scope: {
    read: 'read: colonies, plans, journals',
    write: 'write: send entries',
    review: 'review: survival',
  } satisfies Record<Scope, string>,
  short: { read: 'read', write: 'write', review: 'review' } satisfies Record<Scope, string>,
  /** `used`: when it was last used, to the hour; `until`: null once it works no more. */
  line: (scopes: string, made: string, used: string | null, until: string | null) =>
    `${scopes}. Made ${made}. ${used === null ? 'Never used.' : `Last used about ${used}.`} ${until === null ? 'Works no more.' : `Works until ${until}.`}`,
  takeBack: 'Take it back',
  made: {
    title: 'The token',
    heading: (name: string) => `The token for ${name}`,
    says: (until: string) =>
      `Copy it now: it is not shown again. It works until ${until}, or until you take it back, and does what you may do, within its scopes. Keep it as you keep a passphrase.`,
    back: 'Back to tokens',
  },
}
