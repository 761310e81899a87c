/** The foot of a sheet's page: call-backs, papers, who changed it; and the notice that somebody saved meanwhile. */

import type { RemovalProps } from './page.tsx'
import { isOver } from './stage.ts'

/** Somebody else saved the same part since this form was opened. */
export interface Clash {
  by: string
  when: string
  /** Fields in which theirs differs, with what they say. */
  theirs: { label: string; value: string }[]
}

export const ClashNotice = ({ clash, kept }: { clash: Clash; kept: string | undefined }) => (
  <div class="notice notice-late" role="alert">
    <h2>{clash.by} saved this page meanwhile</h2>
    {kept === undefined ? null : <p>{kept}.</p>}
    <p>
      At {clash.when}, after you had opened it. What you typed is still here. Saving again puts yours on top;
      theirs stays in the history of the sheet.
    </p>
    {clash.theirs.length === 0 ? null : (
      <dl class="sheet-facts">
        {clash.theirs.map((t) => (
          <>
            <dt>{t.label}</dt>
            <dd>{t.value === '' ? 'empty' : t.value}</dd>
          </>
        ))}
      </dl>
    )}
  </div>
)

export const Papers = ({ path, older, stage, callBacks }: RemovalProps) =>
  older !== null ? null : (
    <section class="section">
      {callBacks.length === 0 ? null : (
        <>
          <h2>Call-backs</h2>
          <ul>
            {callBacks.map((line) => (
              <li>{line}</li>
            ))}
          </ul>
        </>
      )}
      {isOver(stage) ? (
        <div class="buttons">
          <a class="button" href={`${path}/call-back`}>
            They called again
          </a>
        </div>
      ) : null}
      <details class="caution">
        <summary>Print it{isOver(stage) ? '' : ', or end it without a removal'}</summary>
        <div class="buttons">
          <a class="button" href={`${path}/print?what=job`}>
            Print the job sheet
          </a>
          <a class="button" href={`${path}/print?what=agreement`}>
            Print the agreement
          </a>
          {isOver(stage) ? null : (
            <a class="button" href={`${path}/end`}>
              It ends without a removal
            </a>
          )}
        </div>
      </details>
    </section>
  )

export const Versions = (p: RemovalProps) => (
  <details class="caution">
    <summary>
      Who changed it{p.frame.may('safekeeping') && p.older === null ? ', and erasing it' : ''}
    </summary>
    <ol class="versions">
      {p.versions.map((v) => (
        <li>
          <a class="tall" href={`${p.path}?version=${v.version}`}>
            {Number.isInteger(v.version) ? `Version ${v.version}` : 'As written on this phone'}
          </a>{' '}
          <span class="soft">
            {v.by}, {v.when}
          </span>
        </li>
      ))}
    </ol>
    {p.frame.may('safekeeping') && p.older === null ? (
      <p>
        <a class="tall" href={`${p.path}/erase`}>
          Erase this sheet
        </a>
      </p>
    ) : null}
  </details>
)
