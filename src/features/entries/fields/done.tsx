/** What is done at a box beside looking: cage, ties, mite wash, something given. Used in a visit and in corrections. */

import { Choices, FIELDS, Fields, type FormState, useWords } from '../../../forms/index.ts'
import { GIVEN_PARTS } from '../given.ts'
import type { EntryFieldsProps } from './common.tsx'

/** `visit`: part of a visit, where it may be left out and the visit has its own note. */
interface DoneProps extends EntryFieldsProps {
  visit?: boolean
}

export const CageFields = ({ visit, ...p }: DoneProps) => {
  const { choices, choiceWords } = p.frame.words
  return (
    <Fields
      {...p}
      of={FIELDS['queen-cage']}
      show={visit ? ['found'] : ['found', 'note']}
      with={
        visit
          ? { found: { choices: [{ value: '', label: choiceWords.notLooked }, ...choices.CAGE], across: 3 } }
          : {}
      }
    />
  )
}

/** In a visit only: the entry itself says that they are off. */
export const TiesField = (p: { form: FormState; prefix: string }) => {
  const { record } = useWords()
  return (
    <Choices
      form={p.form}
      name={`${p.prefix}done`}
      label={record.bands}
      choices={[
        { value: '', label: record.leftOn },
        { value: 'yes', label: record.allOff },
      ]}
      across={2}
    />
  )
}

export const WashFields = ({ visit, ...p }: DoneProps) => (
  <>
    <p class="hint">{p.frame.words.record.washHint}</p>
    <Fields
      {...p}
      of={FIELDS['mite-wash']}
      show={[['bees', 'mites'], ...(visit ? [] : (['note', 'photos'] as const))]}
    />
  </>
)

interface GivenProps extends DoneProps {
  donors: string[]
}

/**
 * On a visit what was given is tapped, and only then what belongs to it is asked (`given.ts`). A correction shows all that an
 * entry can hold, or it would be lost.
 */
export const GivenFields = ({ visit, donors, ...p }: GivenProps) => {
  const fields = { ...p, of: FIELDS.given, with: { donor: { list: donors } } }
  if (!visit)
    return (
      <Fields
        {...fields}
        show={['what', ['frames', 'donor'], 'caged', ['litres', 'kg', ...cost(p)], 'syrup', ...REST]}
      />
    )
  return (
    <div class="given">
      <Fields
        {...fields}
        show={['what']}
        with={{
          what: {
            choices: [{ value: '', label: p.frame.words.record.nothing }, ...p.frame.words.choices.GIFT],
          },
        }}
      />
      <div class="given-more">
        {Object.entries(GIVEN_PARTS).map(([part, { fields: asked }]) => (
          <div class={`given-${part}`}>
            <Fields {...fields} show={asked} />
          </div>
        ))}
        <Fields {...fields} show={[...cost(p), 'note']} />
      </div>
    </div>
  )
}

const REST = ['product', ['batch', 'withdrawalDays'], 'note'] as const

/** What things cost is not for everybody. */
const cost = ({ frame }: EntryFieldsProps): 'cost'[] => (frame.may('see-private') ? ['cost'] : [])
