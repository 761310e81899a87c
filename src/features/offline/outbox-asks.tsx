/** What is asked before something leaves the outbox unsent, or its owner leaves the phone; and where its owner is not known yet. */
import { type Frame, Layout } from '../../parts/index.ts'
import { dayWords } from '../../words/index.ts'
import { type OwnItem, wordsOf } from './outbox-items.ts'

export const TakeOutPage = ({ frame, item }: { frame: Frame; item: OwnItem }) => {
  const words = wordsOf(item, frame)
  return (
    <Layout frame={frame} title="Take it out" ways={false}>
      <p class="crumb">
        <a href="/outbox">‹ Waiting to be sent</a>
      </p>
      <h1>Take it out unsent?</h1>
      <p>
        <b>
          {item.tag}, {dayWords(item.on, frame.today)}: {words.title}
        </b>
        {words.facts.length === 0 ? '' : `: ${words.facts.join('; ')}`}
      </p>
      <p>Nobody but this phone knows of it. Once it is taken out it cannot be got back.</p>
      <div class="buttons">
        <form method="post" action={`/outbox/${item.n}/take-out`}>
          <button class="button button-late" type="submit">
            Take it out
          </button>
        </form>
        <a class="button" href="/outbox">
          Leave it
        </a>
      </div>
    </Layout>
  )
}

/** Before signing out while something waits. */
export const SignOutPage = ({ frame, waiting, one }: { frame: Frame; waiting: string; one: boolean }) => (
  <Layout frame={frame} title="Sign out?" ways={false}>
    <h1 id="sign-out-warning">{waiting}</h1>
    <p>
      {one
        ? 'If you sign out now it stays on this phone. It is sent when you sign in on it again, and only then: nobody else can send it for you.'
        : 'If you sign out now they stay on this phone. They are sent when you sign in on it again, and only then: nobody else can send them for you.'}
    </p>
    <div class="buttons">
      <a class="button button-do" href="/outbox">
        Send them first
      </a>
      <form method="post" action={frame.path}>
        <input type="hidden" name="anyway" value="yes" />
        <button class="button" type="submit">
          Sign out all the same
        </button>
      </form>
    </div>
  </Layout>
)

/** While the phone does not know who is signed in: how much waits, and nothing of what it says. */
export const UnlistedPage = ({ frame, waiting }: { frame: Frame; waiting: string }) => (
  <Layout frame={frame} title="Without signal" ways={false}>
    <h1>{waiting}</h1>
    <p>What waits is listed here, and goes, as soon as the yard has told this phone who is signed in.</p>
    <div class="buttons">
      <a class="button button-do" href="/outbox">
        Look again
      </a>
      <a class="button" href="/sign-in?to=%2Foutbox">
        Sign in
      </a>
    </div>
  </Layout>
)
