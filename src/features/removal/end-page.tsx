/** Ending a job without a removal, and erasing a sheet. */
import { type FormState, NoteField, ProblemSummary } from '../../forms/index.ts'
import { type Frame, Layout } from '../../parts/index.ts'
import { Boxes } from './head-came.tsx'

export interface EndProps {
  frame: Frame
  form: FormState
  path: string
  name: string
}

export const RemovalEndPage = ({ frame, form, path, name }: EndProps) => (
  <Layout frame={frame} title="Ends without a removal" ways={false}>
    <p class="crumb">
      <a href={path}>‹ {name}</a>
    </p>
    <h1>Ends without a removal</h1>
    <ProblemSummary form={form} labels={() => 'Why'} />
    <form method="post" action={`${path}/end`} id="entry-form" novalidate>
      <NoteField
        form={form}
        name="why"
        label="Why"
        hint="Left by themselves, not honey bees, somebody else took them, the customer said no."
        maxlength={500}
      />
      <div class="save">
        <button class="button button-do" type="submit">
          Save
        </button>
      </div>
    </form>
  </Layout>
)

interface EraseProps extends Omit<EndProps, 'form'> {
  versions: number
  colonies: { tag: string; path: string }[]
  /** What it says of the house that can kill. */
  said: string[]
  /** What is left of it on open sheets of this house. */
  leaves: { name: string; words: string }[]
}

export const RemovalErasePage = ({ frame, path, name, versions, colonies, said, leaves }: EraseProps) => (
  <Layout frame={frame} title="Erase a sheet" ways={false}>
    <p class="crumb">
      <a href={path}>‹ {name}</a>
    </p>
    <h1>Erase {name}</h1>
    <h2>What goes now, for good</h2>
    <ul>
      <li>
        This sheet: {versions} {versions === 1 ? 'version' : 'versions'}, with name, address, signature and
        photos. The signer’s address for the text answers no more.
      </li>
      {said.length === 0 ? null : (
        <li>
          What it says of this house: <b>{said.join(', ')}</b>. A new sheet of it will not know. Is the job
          not done? End it, and erase it later.
        </li>
      )}
      <li>Name and address in entries that are not in the book.</li>
      {colonies.length === 0 ? null : (
        <li>
          Where <Boxes of={colonies} /> came from, and the letters about{' '}
          {colonies.length === 1 ? 'it' : 'them'}.
        </li>
      )}
      <li>The file of the database and its log are written anew, so nothing of it lies on in them.</li>
    </ul>
    <h2>What stays, and until when</h2>
    <ul>
      {leaves.map((l) => (
        <li>
          On the open sheet of {l.name}, read there before “go”: “{l.words}” Not the words themselves.
        </li>
      ))}
      {colonies.length === 0 ? null : (
        <li>The colonies and their journal. Somebody may have written a name into a note: look.</li>
      )}
      <li>
        Phones forget it within a day of having signal. A sheet that waits on one to be sent is refused when
        it comes; an intake that waits there still brings the address along: look.
      </li>
      <li>
        Backups of before keep it. Of each month the last one is kept for twelve months that have one: about a
        year. Sooner only if you delete them in the folder of backups.
      </li>
      <li>
        Copies made before an upgrade or streamed elsewhere, exports, downloaded backups, mails and paper stay
        until you delete them.
      </li>
      <li>A backup that is gone back to brings it back: erase it again then.</li>
    </ul>
    <form method="post" action={`${path}/erase`}>
      <div class="save">
        <button class="button button-late" type="submit">
          Erase it
        </button>
        <a class="button" href={path}>
          Keep it
        </a>
      </div>
    </form>
  </Layout>
)
