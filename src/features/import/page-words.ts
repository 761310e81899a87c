/** Words of taking in an old spreadsheet. */

import {
  type Choice,
  labelIn,
  METHOD,
  NOT_WRITTEN_DOWN,
  OUTCOME,
  QUEEN,
  removalTypes,
} from '../../words/index.ts'
import type { Field, Target } from './fields.ts'
import type { WordFound } from './mapping.ts'
import type { Delimiter } from './sheet.ts'
import { NOT_SAID, STILL_HERE, type Worded } from './words.ts'

export const DELIMITER_WORDS: Record<Delimiter, string> = {
  comma: 'commas',
  semicolon: 'semicolons',
  tab: 'tabs',
  bar: 'upright bars',
}

export const FIELD_WORDS: Record<Field, string> = {
  tag: 'Tag of the box',
  removal_type: 'Removal type',
  intake_on: 'Day of intake',
  removed_on: 'Day of the removal',
  queen_at_intake: 'Queen at intake',
  yard: 'Yard',
  stand: 'Stand',
  outcome: 'What became of it',
  outcome_on: 'Day it left',
  into: 'United into',
  removed_by: 'Who removed it',
  site: 'Customer or address (private)',
  outdoor_c: 'Temperature outdoors',
  hours_open_to_boxed: 'Hours from opening to boxed',
  method: 'Method',
  egg_frames: 'Frames of eggs',
  open_frames: 'Frames of open brood',
  capped_frames: 'Frames of capped brood',
  note: 'Note',
}

export const TARGET_WORDS: Record<Target, string> = {
  ...FIELD_WORDS,
  'to-note': 'into the note, with its heading',
  'leave-out': 'leave it out',
}

export const WORDED_TITLES: Record<Worded, string> = {
  queen_at_intake: 'Words for the queen at intake',
  outcome: 'Words for what became of a colony',
  method: 'Words for the method',
  removal_type: 'Words for the removal type',
}

/** What a word of a column can mean. */
export function meaningsOf(
  column: Worded,
  { word, meaning }: Pick<WordFound, 'word' | 'meaning'>,
  ownTypes: readonly string[],
): Choice[] {
  switch (column) {
    case 'queen_at_intake':
      return QUEEN
    case 'outcome':
      return [{ value: STILL_HERE, label: 'Still in the yard' }, ...OUTCOME]
    case 'method':
      return [{ value: NOT_SAID, label: 'Not said' }, ...METHOD.filter((c) => c.value !== '')]
    case 'removal_type': {
      const known = removalTypes([...ownTypes, NOT_WRITTEN_DOWN])
      const own = [...new Set([meaning ?? '', word.trim()])].filter(
        (name) => name !== '' && !known.some((c) => c.value === name),
      )
      return [...own.map((name) => ({ value: name, label: `“${name}”, a type of its own` })), ...known]
    }
  }
}

/** A value of the colonies CSV as it is shown. */
export const valueWords: Record<Worded, (value: string) => string> = {
  queen_at_intake: (v) => labelIn(QUEEN, v),
  outcome: (v) => labelIn(OUTCOME, v),
  method: (v) => labelIn(METHOD, v),
  removal_type: (v) => labelIn(removalTypes([v]), v),
}
