/** One’s own account, in English. */
import type { Role } from '../../people/index.ts'
import { keysWords, ROLE_WORDS } from '../people.ts'

export const account = {
  title: 'Your account',
  /** 'Helper, signed in in 2 browsers. …' */
  signedIn: (role: Role, browsers: number) =>
    `${ROLE_WORDS[role]}, signed in ${browsers === 1 ? 'in this browser only' : `in ${browsers} browsers`}. A browser that is not used for a month is signed out.`,
  changed: 'The passphrase is changed. Every other browser was signed out.',
  keysBack: 'Tokens and calendar addresses are taken back.',
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
