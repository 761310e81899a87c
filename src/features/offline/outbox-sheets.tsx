/** Removal sheets that wait. */
import { sentenceOf } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import { instantWords } from '../../words/index.ts'
import type { SheetItem } from './outbox-items.ts'

export const Sheets = ({ sheets, frame }: { sheets: SheetItem[]; frame: Frame }) => (
  <ol class="lines outbox">
    {sheets.map((s) => (
      <li>
        {s.own === null ? (
          <p>
            A removal sheet of {s.owner}. <span class="soft">It goes when {s.owner} signs in again.</span>
          </p>
        ) : (
          <>
            <p>
              <a class="tall" href={`/removals/${s.id}`}>
                <b>{s.own.name}</b>
              </a>
              , removal sheet.{' '}
              <span class="soft">Kept {instantWords(s.keptAt, frame.zone, frame.today)}.</span>
            </p>
            {s.own.problems.length === 0 ? null : (
              <>
                <p class="problem">
                  Not accepted: {s.own.problems.map((p) => sentenceOf('', p.message)).join(' ')}.
                </p>
                <div class="buttons">
                  <form method="post" action={`/outbox/sheet/${s.id}/over`}>
                    <button class="button" type="submit">
                      Put mine over theirs
                    </button>
                  </form>
                  <form method="post" action={`/outbox/sheet/${s.id}/take-out`}>
                    <button class="button button-late" type="submit">
                      Take mine out
                    </button>
                  </form>
                </div>
              </>
            )}
          </>
        )}
      </li>
    ))}
  </ol>
)
