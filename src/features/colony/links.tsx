/** From a colony to its other pages. A phone that gets no answer has only the colony itself. */
import type { Frame } from '../../parts/index.ts'

export const ColonyPages = ({ frame, path, sheet }: { frame: Frame; path: string; sheet: string | null }) =>
  frame.phone?.reached === false ? null : (
    <div class="buttons">
      <a class="button" href={`${path}/health`}>
        Health and feed
      </a>
      {frame.mayOpen(`${path}/changes`) ? (
        <a class="button" href={`${path}/changes`}>
          History of changes
        </a>
      ) : null}
      {sheet === null ? null : (
        <a class="button" href={`/removals/${sheet}`}>
          Removal sheet
        </a>
      )}
    </div>
  )
