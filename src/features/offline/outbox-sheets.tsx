/** Removal sheets that wait. */
import { sentenceOf } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import type { SheetItem } from './outbox-items.ts'

export const Sheets = ({ sheets, frame }: { sheets: SheetItem[]; frame: Frame }) => (
  <ol class="lines outbox">
    {sheets.map((s) => (
      <li>
        {s.own === null ? (
          <p>
            {frame.words.outbox.sheet.theirs(s.owner, s.kills)}{' '}
            <span class="soft">{frame.words.outbox.sheet.goes(s.owner)}</span>
          </p>
        ) : (
          <>
            <p>
              <a class="tall" href={`/removals/${s.id}`}>
                <b>{s.own.name}</b>
              </a>
              , {frame.words.outbox.sheet.what}.{' '}
              <span class="soft">
                {frame.words.outbox.sheet.kept(frame.words.dates.instant(s.keptAt, frame.zone, frame.today))}
              </span>
            </p>
            {s.own.problems.length === 0 ? null : (
              <>
                <p class="problem">
                  {frame.words.outbox.notAccepted}:{' '}
                  {s.own.problems.map((p) => sentenceOf('', p.message, frame.words)).join(' ')}.{' '}
                  {s.own.again ? frame.words.outbox.sheet.again : ''}
                </p>
                <div class="buttons">
                  {s.own.again ? null : s.own.over ? (
                    <form method="post" action={`/outbox/sheet/${s.id}/over`}>
                      <button class="button" type="submit">
                        {frame.words.outbox.sheet.over}
                      </button>
                    </form>
                  ) : (
                    <a class="button button-do" href={`/removals/${s.id}`}>
                      {frame.words.outbox.mend}
                    </a>
                  )}
                  <a class="button button-late" href={`/outbox/sheet/${s.id}/take-out`}>
                    {frame.words.outbox.sheet.takeOut(s.own.out)}
                  </a>
                </div>
              </>
            )}
          </>
        )}
      </li>
    ))}
  </ol>
)
