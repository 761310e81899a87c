/** From a colony to what goes out of the yard about it. Not for everybody, so not always there. */
import type { Frame } from '../../parts/index.ts'

export const AfterWays = ({ frame, path, moved }: { frame: Frame; path: string; moved: boolean }) => {
  const said = frame.words.colony
  return frame.mayOpen(`${path}/letter`) ? (
    <section class="section">
      <h2>{said.forOutside}</h2>
      <div class="buttons">
        <a class="button" href={`${path}/letter`}>
          {said.letter}
        </a>
        <a class="button" href={`${path}/keeper-sheet`}>
          {said.keeperSheet}
        </a>
        <a class="button" href={`${path}/move-record`}>
          {said.moveRecord}
        </a>
        {moved ? (
          <a class="button" href={`${path}/follow-up`}>
            {said.howNow}
          </a>
        ) : null}
      </div>
    </section>
  ) : null
}
