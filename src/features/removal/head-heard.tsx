/** What stands in the head of a page that a phone made itself: it knows of the job what it was told last. */
import { comesBack } from '../../records/index.ts'
import type { RemovalProps } from './page.tsx'
import { isOver } from './stage.ts'

/** A phone that made this page itself knows what it was told last: a colleague may have found gas since. */
export const AsKnown = (p: RemovalProps) => {
  const { heard, goes, late, stage, sheet, path } = p
  if (heard === null || isOver(stage)) return null
  if (heard.signIn)
    return (
      <p class="notice notice-late">
        <b>Your sign-in is over.</b> What others found since {heard.words} is not here, and nothing of yours
        reaches them: <a href={`/sign-in?to=${encodeURIComponent(path)}`}>sign in again</a>, or call.
      </p>
    )
  const { openedAt } = sheet.work
  const open = openedAt !== undefined && !comesBack(sheet, p.frame.today)
  // What a colleague finds while it is open does not come here by itself.
  const known = open
    ? stage === 'go' && sheet.decision?.heard?.of === heard.of
    : stage === 'go' && goes && late === null
  const lead = known
    ? `${open ? 'Open' : 'Go'}, as this phone knows it, of`
    : !open && heard.deaf && 'Heard nothing since'
  return lead ? (
    <p class={known ? 'notice' : 'notice notice-late'}>
      <b>
        {lead} {heard.words}.
      </b>{' '}
      What others found since is not here: open this page where there is a signal
      {open ? ', or call' : known ? ' before the cut, or call' : '. Without, it is asked beside “Go”'}.
    </p>
  ) : null
}
