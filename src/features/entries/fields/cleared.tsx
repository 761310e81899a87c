/** Clearing a suspected brood disease. */

import { FIELDS, Fields } from '../../../forms/index.ts'
import type { EntryFieldsProps } from './common.tsx'

export const ClearedFields = (p: EntryFieldsProps) => (
  <Fields {...p} of={FIELDS['disease-cleared']} show={['clearedBy', 'reference', 'note', 'photos']} />
)
