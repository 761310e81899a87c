/** Coming in by an invitation, in English. */
import type { Role } from '../../people/index.ts'

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
