/** Whom to call where a brood disease is suspected. */
import type { Frame } from './layout.tsx'
import { Tel } from './reach.tsx'

/** `inspector`: as the yard wrote it, name and number. */
export const InspectorLine = ({ inspector, frame }: { inspector: string; frame: Frame }) => {
  const { words } = frame
  if (inspector === '')
    return (
      <p class="inspector">
        {words.parts.noInspector}{' '}
        {frame.may('change-settings') ? (
          <a class="tall" href="/settings">
            {words.parts.sayWhom}
          </a>
        ) : (
          words.parts.askOperator
        )}
      </p>
    )
  return (
    <p class="inspector">
      {words.parts.inspector} <Tel text={inspector} />
    </p>
  )
}
