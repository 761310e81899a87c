/** Whom to call where a brood disease is suspected. */
import type { Frame } from './layout.tsx'
import { Tel } from './reach.tsx'

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
  return (
    <p class="inspector">
      Apiary inspector: <Tel text={inspector} />
    </p>
  )
}
