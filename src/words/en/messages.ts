/** The morning digest and the page on which one asks for it, in English. */
export const messages = {
  title: 'Morning messages',
  about:
    'Once a day: which boxes ask for something, what, and until when. Tags, actions and dates only; no yard, no person, no customer.',
  notSaved: 'Not saved yet',
  labels: { mail: 'E-mail', hook: 'Webhook', hour: 'Hour' },
  mailHint: 'Leave it empty for no e-mail.',
  noMail: 'This server sends no e-mail. Whoever runs it can name a mail server: RESETTLE_SMTP_URL.',
  hookHint:
    'For a program of yours: an https address that is told the same as JSON, signed. Leave it empty for none.',
  fromHour: 'From what hour',
  hourHint: (zone: string) => `Of the yard’s day (${zone}).`,
  save: 'Save',
  saved: 'Saved.',
  tryMail: 'Send one e-mail now',
  tryHook: 'Call the webhook now',
  wentOut: 'It went out.',
  didNot: (why: string) => `It did not go out: ${why}.`,
  enough: 'Tried often enough for now: wait an hour.',
  secret: {
    title: 'The webhook’s secret',
    show: 'Show it',
    about:
      'Signs every call as the Standard Webhooks specification describes (webhook-id, webhook-timestamp, webhook-signature), so that your program can tell it from anybody else’s. A repeat of a call keeps its webhook-id.',
    renew: 'Make a new secret',
    renewed: 'The webhook has a new secret.',
  },
  lately: 'Lately',
  ways: { mail: 'e-mail', hook: 'webhook' },
  sent: (when: string) => `sent ${when}`,
  sending: 'on its way, or interrupted: not sent again, so that it never comes twice',
  again: (why: string, when: string) => `${why}; tried again ${when}`,
  notSent: (why: string) => `not sent: ${why}`,
  /** Why something did not go out, as it is kept. */
  trouble: (why: string): string => why,
  /** The e-mail itself. */
  digest: {
    count: (n: number) => (n === 0 ? 'no box asks' : n === 1 ? '1 box asks' : `${n} boxes ask`),
    late: (n: number) => `${n} late`,
    nothing: 'No box asks for anything today, and nothing is planned.',
    next: (what: string, day: string) => `No box asks for anything today. The next one: ${what}, ${day}.`,
    blocks: { late: 'Late', today: 'Today' },
    lidOn: '(lid on)',
    shouldHave: (day: string) => `should have been done by ${day}`,
    lastDay: (day: string) => `last day ${day}`,
    round: (address: string) => `The round: ${address}`,
    change: (address: string) => `Change or stop these messages: ${address}`,
    changeSomewhere: 'Change or stop these messages on your account’s page.',
  },
}
