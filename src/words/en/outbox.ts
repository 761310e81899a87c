/** What waits on a phone, and pages that need signal, in English. */
export const outbox = {
  title: 'Without signal',
  nothing: 'Nothing waits to be sent',
  allIn: 'Everything written down in this browser is in the yard’s book.',
  saveCopy: 'Save a copy as a file',
  sendNow: 'Send now',
  signIn: 'Sign in',
  signInFirst: 'Sign in, and they go',
  ended: 'Your session has ended. Nothing is lost: it waits here until you have signed in.',
  how: {
    title: 'Working without signal',
    once: (intakes: boolean) =>
      `Open Today once with signal. From then on the round works without: Today, the boxes, recording${intakes ? ', intakes' : ''}. The plan is made anew on the phone every day.`,
    waits:
      'What you write down waits here and is sent when the signal is back. It waits as long as it takes.',
    install:
      'Put Resettle on the home screen (“Install” or “Add to Home Screen” in the browser’s menu). A browser may clear out what a mere page keeps after some days without a visit.',
    https:
      'It needs an address that begins with https:// . On a plain http:// address of the local network browsers keep nothing, and everything needs signal.',
  },
  theirs: (owner: string) => `Goes when ${owner} signs in on this phone.`,
  stuck: (owner: string) => `Not accepted: ${owner} has to mend it on this phone.`,
  notAccepted: 'Not accepted',
  /** What is wrong is the whole of it, and no field. */
  it: 'It',
  tag: 'Tag',
  colony: 'Colony',
  kept: (when: string, by: string) => `Kept ${when}, signed ${by}.`,
  resting: 'Goes after the one it rests on has been mended.',
  doubt: {
    asks: (on: string) => `Was it ${on}?`,
    says: (phone: string, yard: string) =>
      `This phone said ${phone} when it was ${yard} in the yard. It goes once you have said so.`,
    yes: (on: string) => `Yes, ${on}`,
    of: (tag: string) => `, of ${tag}`,
  },
  mend: 'Mend it',
  change: 'Change it',
  again: 'Send as it is',
  takeOut: 'Take it out',
  takeBack: 'Take it back',
  sheet: {
    theirs: (owner: string, kills: string) => `A removal sheet of ${owner}${kills && `: ${kills}`}.`,
    what: (kills: string) => `Removal sheet${kills && `: ${kills}`}`,
    kept: (when: string) => `Kept here since ${when}.`,
    again: 'It goes again with the next signal.',
    over: 'Put mine over theirs',
    takeOut: (what: string | null) =>
      what ? `Take mine out: ${what}` : what === null ? 'Take mine out' : 'Let that stand',
    out: (what: string | null) =>
      what
        ? `Yours goes: ${what}. The yard’s own word stays.`
        : what === null
          ? 'What you wrote on it goes.'
          : 'The words of both stay, or the more careful answer.',
    stays: (found: string) =>
      found === '' ? 'The rest stays, and is sent.' : `This stays, and is sent: ${found}.`,
  },
  takingOut: {
    back: 'Waiting to be sent',
    asks: 'Take it out unsent?',
    gone: 'Nobody but this phone knows of it. Once it is taken out it cannot be got back.',
    leave: 'Leave it',
  },
  signingOut: {
    title: 'Sign out?',
    stays: 'If you sign out now it stays on this phone: nobody else can send it for you.',
    sendFirst: 'Send them first',
    anyway: 'Sign out all the same',
  },
  unlisted: {
    says: 'What waits is listed here, and goes, as soon as the yard has told this phone who is signed in.',
    again: 'Look again',
    job: 'It may be of this job. The page opens once the round is here.',
  },
  noSignal: {
    title: 'No signal',
    heading: 'This page needs signal',
    keeps:
      'The yard’s server does not answer, and this phone keeps only the round: the boxes in the yard, and recording.',
    session: 'If the server answers but the session has ended, signing in needs signal too.',
    whatWaits: 'What waits to be sent',
  },
  notKept: {
    title: 'Not saved',
    heading: 'This was not saved',
    says: 'The yard’s server does not answer, and this phone had no room to keep it, or may not. Go back: what you typed is still in the form. Make room on the phone, or try again with signal.',
  },
}
