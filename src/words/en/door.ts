/** Signing in, and one's own account, in English. */
import type { Role } from '../../people/index.ts'
import { keysWords, ROLE_WORDS } from '../people.ts'

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

export const account = {
  title: 'Your account',
  /** 'Helper, signed in in 2 browsers. …' */
  signedIn: (role: Role, browsers: number) =>
    `${ROLE_WORDS[role]}, signed in ${browsers === 1 ? 'in this browser only' : `in ${browsers} browsers`}. A browser that is not used for a month is signed out.`,
  changed: 'The passphrase is changed. Every other browser was signed out.',
  keysBack: 'Tokens and calendar addresses are taken back.',
  signOut: 'Sign out',
  signOutEverywhere: 'Sign out everywhere',
  takeBack: (n: number) =>
    `Take back ${keysWords(n)} too: otherwise ${n === 1 ? 'it works' : 'they work'} on`,
  language: {
    title: 'Language',
    hint: 'For the pages of the round; others are in English.',
    save: 'Read in this language',
    fromBrowser: 'As the browser says',
    saved: 'Pages of the round are in this language from now on.',
  },
  change: 'Change the passphrase',
  notChanged: 'Not changed yet',
  old: 'Passphrase now',
  next: 'New passphrase',
  nextHint:
    'At least 12 characters. Three or four words that have nothing to do with each other are easy to remember and hard to guess.',
  again: 'New passphrase again',
  notTheSame: 'is not the same as above',
  save: 'Change it',
}

/** Opened from an invitation. */
export const invite = {
  hello: (name: string) => `Hello ${name}`,
  can: {
    helper: 'As a helper you see which boxes to open today and why, and record what you find.',
    beekeeper:
      'As a beekeeper you log intakes, record visits and outcomes, and correct what is wrong in the journal.',
    operator: 'As an operator you can do everything here, including people, rules and backups.',
  } satisfies Record<Role, string>,
  choose: 'Choose a passphrase',
  again: 'The same again',
  notChosen: 'Not chosen yet',
  comeIn: 'Choose it and come in',
  after: (name: string) =>
    `You sign in with the name ${name}. This phone stays signed in for a month after each visit. The link you came by works no more once you have chosen.`,
}
