/** From a colony to what goes out of the yard about it. Not for everybody, so not always there. */
import type { Frame } from '../../parts/index.ts'

export const AfterWays = ({ frame, path, moved }: { frame: Frame; path: string; moved: boolean }) =>
  frame.mayOpen(`${path}/letter`) ? (
    <section class="section">
      <h2>For those outside</h2>
      <div class="buttons">
        <a class="button" href={`${path}/letter`}>
          Letter to the customer
        </a>
        <a class="button" href={`${path}/keeper-sheet`}>
          Sheet for the new keeper
        </a>
        <a class="button" href={`${path}/move-record`}>
          Move-out record
        </a>
        {moved ? (
          <a class="button" href={`${path}/follow-up`}>
            How is it now?
          </a>
        ) : null}
      </div>
    </section>
  ) : null
