/** Signing in, in English. */
import type { Role } from '../../people/index.ts'

export const signIn = {
  title: 'Sign in',
  name: 'Name',
  passphrase: 'Passphrase',
  refused: 'You are not signed in',
  /** Never says whether it was the name or the passphrase. */
  wrong: 'The name or the passphrase is not right.',
  tooMany: (seconds: number) =>
    `Too many tries: wait ${seconds < 90 ? `${seconds} seconds` : `${Math.ceil(seconds / 60)} minutes`}, then try again.`,
  noAccount:
    'No account, or the passphrase forgotten? An operator of this yard can give you a link to choose one. Such a link works once, within a week; after that, ask for another.',
  language: 'Language',
  demo: {
    title: 'This yard is invented',
    about: 'Nothing in it is real, and it is gone when the demo stops. Look around as one of its people:',
    roles: {
      operator: 'operator: sees everything, looks after people and backups',
      beekeeper: 'beekeeper: logs intakes from the truck, records and corrects',
      helper: 'helper: walks the round at Marl Hollow',
    } satisfies Record<Role, string>,
  },
  again: {
    title: 'Sign in first',
    nothingSaved: 'You are not signed in, or not any more. Nothing was saved.',
    notLost:
      'What you typed is not lost: sign in from this link, which opens beside this page. Then come back here, go one page back, and save again.',
  },
}
