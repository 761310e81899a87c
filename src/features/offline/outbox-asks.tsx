/** What is asked before something leaves the outbox unsent, or its owner leaves the phone; and where its owner is not known yet. */
import { Crumb, type Frame, Layout } from '../../parts/index.ts'
import { type OwnItem, type SheetItem, wordsOf } from './outbox-items.ts'

export const TakeOutPage = ({ frame, item }: { frame: Frame; item: OwnItem }) => {
  const words = wordsOf(item, frame)
  const { outbox, dates } = frame.words
  return (
    <Layout frame={frame} title={outbox.takeOut} ways={false}>
      <Crumb to="/outbox">{outbox.takingOut.back}</Crumb>
      <h1>{outbox.takingOut.asks}</h1>
      <p>
        <b>
          {item.tag}, {dates.day(item.on, frame.today)}: {words.title}
        </b>
        {words.facts.length === 0 ? '' : `: ${words.facts.join('; ')}`}
      </p>
      <p>{outbox.takingOut.gone}</p>
      <div class="buttons">
        <form method="post" action={`/outbox/${item.n}/take-out`}>
          <button class="button button-late" type="submit">
            {outbox.takeOut}
          </button>
        </form>
        <a class="button" href="/outbox">
          {outbox.takingOut.leave}
        </a>
      </div>
    </Layout>
  )
}

/** What goes of a sheet that was not accepted, and what stays and is sent. */
export const TakeOutSheetPage = ({
  frame,
  id,
  own,
}: {
  frame: Frame
  own: NonNullable<SheetItem['own']>
  id: string
}) => {
  const { outbox } = frame.words
  const found = own.found.join(', ')
  return (
    <Layout frame={frame} title={outbox.takeOut} ways={false}>
      <Crumb to="/outbox">{outbox.takingOut.back}</Crumb>
      <h1>{own.name}</h1>
      <p>{outbox.sheet.out(own.out)}</p>
      {own.stays ? (
        <p>
          <b>{outbox.sheet.stays(found)}</b>
        </p>
      ) : (
        <p>{found === '' ? outbox.takingOut.gone : `${found}. ${outbox.takingOut.gone}`}</p>
      )}
      <div class="buttons">
        <form method="post" action={`/outbox/sheet/${id}/take-out`}>
          <button class="button button-late" type="submit">
            {outbox.sheet.takeOut(own.out)}
          </button>
        </form>
        <a class="button" href="/outbox">
          {outbox.takingOut.leave}
        </a>
      </div>
    </Layout>
  )
}

/** Before signing out while something waits. */
export const SignOutPage = ({ frame, waiting, one }: { frame: Frame; waiting: string; one: boolean }) => (
  <Layout frame={frame} title={frame.words.outbox.signingOut.title} ways={false}>
    <h1 id="sign-out-warning">{waiting}</h1>
    <p>{one ? frame.words.outbox.signingOut.one : frame.words.outbox.signingOut.more}</p>
    <div class="buttons">
      <a class="button button-do" href="/outbox">
        {frame.words.outbox.signingOut.sendFirst}
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

/** While the phone does not know who is signed in: how much waits, and nothing of what it says. */
export const UnlistedPage = ({ frame, waiting }: { frame: Frame; waiting: string }) => (
  <Layout frame={frame} title={frame.words.outbox.title} ways={false}>
    <h1>{waiting}</h1>
    <p>{frame.words.outbox.unlisted.says}</p>
    <div class="buttons">
      <a class="button button-do" href="/outbox">
        {frame.words.outbox.unlisted.again}
      </a>
      <a class="button" href="/sign-in?to=%2Foutbox">
        {frame.words.outbox.signIn}
      </a>
    </div>
  </Layout>
)
