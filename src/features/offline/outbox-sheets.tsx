/** Removal sheets that wait. */
import { Photos, sentenceOf } from '../../forms/index.ts'
import type { Frame } from '../../parts/index.ts'
import type { SheetItem, ToldItem } from './outbox-items.ts'
import { Refused } from './outbox-lines.tsx'

export const Told = ({ told, frame }: { told: ToldItem[]; frame: Frame }) => (
  <ol class="lines outbox outbox-sheets">
    {told.map(({ id, told }) => (
      <li>
        <a class="tall" href={`/removals/${id}`}>
          <b>{told?.name}</b>
        </a>
        <ul>
          {told?.lines.map((p) => (
            <li>{sentenceOf('', p.message, frame.words)}</li>
          ))}
        </ul>
      </li>
    ))}
  </ol>
)

export const Sheets = ({ sheets, frame }: { sheets: SheetItem[]; frame: Frame }) => {
  const { sheet, mend } = frame.words.outbox
  return (
    <ol class="lines outbox outbox-sheets">
      {sheets.map(({ id, own, ...s }) => (
        <li>
          {own === null ? (
            <p>
              {sheet.theirs(s.owner, s.kills)}{' '}
              <span class="soft">{frame.words.outbox[s.stuck ? 'stuck' : 'theirs'](s.owner)}</span>
            </p>
          ) : (
            <>
              <a class="tall" href={`/removals/${id}`}>
                <b>{own.name}</b>
              </a>
              <p>
                {sheet.what(s.kills)}.{' '}
                <span class="soft">
                  {sheet.kept(frame.words.dates.instant(s.keptAt, frame.zone, frame.today))}{' '}
                  {own.again ? sheet.again : ''}
                </span>
              </p>
              <Photos ids={own.photos} />
              {own.problems.length === 0 ? null : (
                <>
                  <Refused
                    frame={frame}
                    why={own.problems.map((p) => sentenceOf('', p.message, frame.words))}
                  />
                  <div class="buttons">
                    {own.again ? null : own.over ? (
                      <form method="post" action={`/outbox/sheet/${id}/over`}>
                        <button class="button" type="submit">
                          {sheet.over}
                        </button>
                      </form>
                    ) : (
                      <a class="button button-do" href={`/removals/${id}`}>
                        {mend}
                      </a>
                    )}
                    <a class="button button-late" href={`/outbox/sheet/${id}/take-out`}>
                      {sheet.takeOut(own.out)}
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
}
