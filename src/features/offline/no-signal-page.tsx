/** Pages a phone shows when the server does not answer and it cannot do without. */
import { type Frame, Layout } from '../../parts/index.ts'

export const NoSignalPage = ({ frame }: { frame: Frame }) => {
  const { noSignal, today } = frame.words.trouble
  return (
    <Layout frame={frame} title={noSignal.title}>
      <h1>{noSignal.heading}</h1>
      <p>{noSignal.why}</p>
      <p>{noSignal.signIn}</p>
      <div class="buttons">
        <a class="button button-do" href="/">
          {today}
        </a>
        <a class="button" href="/outbox">
          {noSignal.waits}
        </a>
      </div>
    </Layout>
  )
}

export const NotKeptPage = ({ frame }: { frame: Frame }) => {
  const { notKept } = frame.words.trouble
  return (
    <Layout frame={frame} title={notKept.title}>
      <h1>{notKept.heading}</h1>
      <p>{notKept.why}</p>
    </Layout>
  )
}
