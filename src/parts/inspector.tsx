/** Whom to call where a brood disease is suspected. */
import { telIn } from '../words/index.ts'
import type { Frame } from './layout.tsx'

/** `inspector`: as the yard wrote it, name and number. */
export const InspectorLine = ({ inspector, frame }: { inspector: string; frame: Frame }) => {
  if (inspector === '')
    return (
      <p class="inspector">
        No number of an apiary inspector is kept.{' '}
        {frame.may('change-settings') ? (
          <a class="tall" href="/settings">
            Say whom to call
          </a>
        ) : (
          'Ask an operator whom to call.'
        )}
      </p>
    )
  const tel = telIn(inspector)
  return (
    <p class="inspector">
      Apiary inspector:{' '}
      {tel === null ? (
        <b>{inspector}</b>
      ) : (
        <>
          {tel.before}
          <a class="tall" href={tel.href}>
            <b>{tel.shown}</b>
          </a>
          {tel.after}
        </>
      )}
    </p>
  )
}
