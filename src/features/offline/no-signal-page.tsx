/** Pages a phone shows when the server does not answer and it cannot do without. */
import { type Frame, Layout } from '../../parts/index.ts'

export const NoSignalPage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title={frame.words.outbox.noSignal.title}>
    <h1>{frame.words.outbox.noSignal.heading}</h1>
    <p>{frame.words.outbox.noSignal.keeps}</p>
    <p>{frame.words.outbox.noSignal.session}</p>
    <div class="buttons">
      <a class="button button-do" href="/">
        {frame.words.ways['/']}
      </a>
      <a class="button" href="/outbox">
        {frame.words.outbox.noSignal.whatWaits}
      </a>
    </div>
  </Layout>
)

export const NotKeptPage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title={frame.words.outbox.notKept.title}>
    <h1>{frame.words.outbox.notKept.heading}</h1>
    <p>{frame.words.outbox.notKept.says}</p>
  </Layout>
)
