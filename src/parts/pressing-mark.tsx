/** How pressing a box is, in one mark: how late it is, or that it is due, or that it may be done. The same on every page. */
import type { Day } from '../days.ts'
import { useWords } from '../forms/index.ts'
import { howPressing, lateDays, type ToDo } from '../words/index.ts'
import { Mark } from './mark.tsx'

interface PressingProps {
  toDo: Pick<ToDo, 'late' | 'check' | 'also'>
  /** The plan's day. */
  today: Day
  /** A look left out what decides. */
  half?: boolean
}

export const PressingMark = ({ toDo, today, half = false }: PressingProps) => {
  const shape = howPressing(toDo)
  const { parts } = useWords()
  if (half)
    return (
      <Mark shape={shape === 'open' ? 'due' : shape}>
        {toDo.late ? parts.lateHalfALook : parts.halfALook}
      </Mark>
    )
  if (toDo.late) return <Mark shape={shape}>{parts.daysLate(lateDays(toDo, today))}</Mark>
  return (
    <Mark shape={shape}>
      {toDo.check === null ? parts.today : shape === 'open' ? parts.mayDo : parts.due}
    </Mark>
  )
}
