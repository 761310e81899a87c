/** From a colony to its other pages. A phone that gets no answer has only the colony itself. */
import type { Frame } from '../../parts/index.ts'

export const ColonyPages = ({ frame, path, sheet }: { frame: Frame; path: string; sheet: string | null }) => {
  const said = frame.words.colony
  return frame.phone?.reached === false ? null : (
    <div class="buttons">
      <a class="button" href={`${path}/health`}>
        {said.health}
      </a>
      {frame.mayOpen(`${path}/changes`) ? (
        <a class="button" href={`${path}/changes`}>
          {said.changes}
        </a>
      ) : null}
      {sheet === null ? null : (
        <a class="button" href={`/removals/${sheet}`}>
          {said.removalSheet}
        </a>
      )}
    </div>
  )
}
