/** What is asked before something leaves the outbox unsent, or its owner leaves the phone; and where its owner is not known yet. */
import type { Child } from 'hono/jsx'
import { Photos } from '../../forms/index.ts'
import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import { type OwnItem, photosOf, type SheetItem, wordsOf } from './outbox-items.ts'

/** The question, with what goes and what stays, and the two answers. `to`: where it is taken out. */
const TakeOut = ({
  frame,
  to,
  words,
  asks,
  children,
}: {
  frame: Frame
  to: string
  words: string
  asks: string
  children: Child
}) => (
  <Layout frame={frame} title={frame.words.outbox.takeOut} ways={false}>
    <Crumb to="/outbox">{frame.words.outbox.takingOut.back}</Crumb>
    <h1>{asks}</h1>
    {children}
    <div class="buttons">
      <form method="post" action={`/outbox/${to}/take-out`}>
        <button class="button button-late" type="submit">
          {words}
        </button>
      </form>
      <a class="button" href="/outbox">
        {frame.words.outbox.takingOut.leave}
      </a>
    </div>
  </Layout>
)

export const TakeOutPage = ({ frame, item }: { frame: Frame; item: OwnItem }) => {
  const words = wordsOf(item, frame)
  const { outbox, dates } = frame.words
  return (
    <TakeOut frame={frame} to={String(item.n)} words={outbox.takeOut} asks={outbox.takingOut.asks}>
      <p>
        <b>
          {item.tag}, {dates.day(item.on, frame.today)}: {words.title}
        </b>
        {words.facts.length === 0 ? '' : `: ${words.facts.join('; ')}`}
      </p>
      <Photos ids={photosOf(item)} />
      <p>{outbox.takingOut.gone}</p>
    </TakeOut>
  )
}

/** What goes of a sheet that was not accepted, and what stays and is sent. */
export const TakeOutSheetPage = ({
  frame,
  id,
  own,
}: {
  frame: Frame
  id: string
  own: NonNullable<SheetItem['own']>
}) => {
  const { sheet, takingOut } = frame.words.outbox
  const found = own.found.join(', ')
  return (
    <TakeOut frame={frame} to={`sheet/${id}`} words={sheet.takeOut(own.out)} asks={own.name}>
      <p>{sheet.out(own.out)}</p>
      {own.out === '' && !own.stays ? null : (
        <p>
          <b>{own.stays ? sheet.stays(found) : [found, takingOut.gone].filter(Boolean).join('. ')}</b>
        </p>
      )}
    </TakeOut>
  )
}

/** Before signing out while something waits: what of it can kill, and what becomes of it. `goes`: whether any of it can be sent now. */
export const SignOutPage = ({
  frame,
  waiting,
  kills,
  rest,
  goes,
}: {
  frame: Frame
  waiting: string
  kills: string[]
  rest: string[]
  goes: boolean
}) => (
  <Layout frame={frame} title={frame.words.outbox.signingOut.title} ways={false}>
    <h1 id="sign-out-warning">{waiting}</h1>
    <Kills lines={kills} />
    <p>{[frame.words.outbox.signingOut.stays, ...rest].join(' ')}</p>
    <div class="buttons">
      <a class="button button-do" href="/outbox">
        {goes ? frame.words.outbox.signingOut.sendFirst : frame.words.outbox.unlisted.again}
      </a>
      <form method="post" action={frame.path}>
        <input type="hidden" name="anyway" value="yes" />
        <button class="button" type="submit">
          {frame.words.outbox.signingOut.anyway}
        </button>
      </form>
    </div>
  </Layout>
)

const Kills = ({ lines }: { lines: string[] }) => (
  <>
    {lines.map((line) => (
      <p class="phone-kills">{line}</p>
    ))}
  </>
)

/**
 * While the phone does not know who is signed in: how much waits, and nothing of what it says. `kills`: in place of the page of a job, of
 * which the yard has not heard all that is here, nor this phone the rest.
 */
export const UnlistedPage = ({
  frame,
  waiting,
  kills,
}: {
  frame: Frame
  waiting: string
  kills: string[]
}) => {
  const { outbox } = frame.words
  return (
    <Layout frame={frame} title={outbox.title} ways={false}>
      <h1>{waiting}</h1>
      <Kills lines={kills} />
      <p>{outbox.unlisted[kills.length > 0 ? 'job' : 'says']}</p>
      <div class="buttons">
        <a class="button button-do" href={frame.path}>
          {outbox.unlisted.again}
        </a>
        <a class="button" href="/sign-in?to=%2Foutbox">
          {outbox.signIn}
        </a>
      </div>
    </Layout>
  )
}
