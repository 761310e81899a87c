/** What was done and found, as the day goes: opened, boxed, closed up, on the way. Asked once: the intake takes it over. */

import { Fields, one } from '../../forms/index.ts'
import { comesBack } from '../../records/index.ts'
import { BeesAndBox, BroodAlong } from '../entries/index.ts'
import { CLOSING, leftToClose } from './closing.ts'
import { PART_FIELDS } from './fields.ts'
import { Folded } from './folded.tsx'
import { cuts } from './hazards.ts'
import type { PartFieldsProps } from './part-fields.tsx'

const FIELDS = PART_FIELDS.work

export const WorkFields = (p: PartFieldsProps) => {
  const { openedAt, boxedAt } = p.sheet.work
  const back = comesBack(p.sheet, p.frame.today)
  const opened = openedAt !== undefined && !back
  const boxed = boxedAt !== undefined
  return (
    <>
      <input type="hidden" name="shownOn" value={p.frame.today} />
      <input type="hidden" name="shownAt" value={one(p.form.typed, 'shownAt')} />
      <input type="hidden" name="visit" value={one(p.form.typed, 'visit')} />
      <Folded legend="Opening" form={p.form} fields={['arrivedAt', 'openedAt']} open={!opened}>
        <Fields {...p} of={FIELDS} show={['outdoorC', 'water']} />
        <Folded legend="Times by hand" form={p.form} fields={['arrivedAt']}>
          <Fields {...p} of={FIELDS} show={['on', ['arrivedAt', 'openedAt']]} />
        </Folded>
      </Folded>
      <Folded
        legend="Bees and queen"
        form={p.form}
        fields={['queen', 'method', 'queenFoundAt', 'boxedAt', 'brood.eggs', 'brood.open', 'brood.capped']}
        open={opened && !boxed}
      >
        <Fields {...p} of={FIELDS} show={['queen', 'method', ['queenFoundAt', 'boxedAt']]} />
        <Folded legend="Brood, bees and temper; the intake asks too" form={p.form} fields={['bees.frames']}>
          <BroodAlong {...p} />
          <BeesAndBox {...p} />
        </Folded>
        {opened && !boxed ? <Now name="boxedAt" words="Boxed, now: close up first" /> : null}
      </Folded>
      {cuts(p.sheet) ? (
        <Folded
          legend={`Closing up: ${leftToClose(p.sheet).length} of ${CLOSING.length} left`}
          form={p.form}
          fields={[]}
          open={boxed}
        >
          <Fields {...p} of={FIELDS} show={['cleaned', 'sealed', 'closedUp', 'photos', 'left']} />
        </Folded>
      ) : null}
      <Folded legend="On the way, and a note" form={p.form} fields={['boxHours', 'boxC', 'leftAt', 'note']}>
        <Fields {...p} of={FIELDS} show={['onTheWay', ['boxHours', 'boxC'], 'leftAt', 'note']} />
        {one(p.form.typed, 'leftAt') === '' ? <Now name="leftAt" words="Left, now" /> : null}
      </Folded>
    </>
  )
}

interface NowProps {
  name: string
  words: string
}

/** Saves everything in the form, and this time as now. */
const Now = ({ name, words }: NowProps) => (
  <div class="buttons">
    <button class="button" type="submit" name="now" value={name}>
      {words}
    </button>
  </div>
)
