/** Pages a phone shows when the server does not answer and it cannot do without. */
import { type Frame, Layout } from '../../parts/index.ts'

export const NoSignalPage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title="No signal">
    <h1>This page needs signal</h1>
    <p>
      The yard’s server does not answer, and this phone keeps only the round: the boxes in the yard, and
      recording.
    </p>
    <p>If the server answers but the session has ended, signing in needs signal too.</p>
    <div class="buttons">
      <a class="button button-do" href="/">
        Today
      </a>
      <a class="button" href="/outbox">
        What waits to be sent
      </a>
    </div>
  </Layout>
)

export const NotKeptPage = ({ frame }: { frame: Frame }) => (
  <Layout frame={frame} title="Not saved">
    <h1>This was not saved</h1>
    <p>
      The yard’s server does not answer, and this phone had no room to keep it, or may not. Go back: what you
      typed is still in the form. Make room on the phone, or try again with signal.
    </p>
  </Layout>
)
