/** Finding anything, in English. */
export const find = {
  title: 'Find',
  /** `customers`: of whoever may find them too. */
  field: (customers: boolean) =>
    `Tag, stand, yard, or words of a note${customers ? ', a customer or street' : ''}`,
  recent: 'Written down last',
  nothing: (typed: string) => `Nothing fits “${typed}”.`,
  near: 'Tags that look like it',
  boxes: 'Boxes',
  removals: 'Removals',
  entries: 'Words of entries',
  more: (n: number) => `${n} more. Type another word to narrow it down.`,
  onPhone: (sheets: boolean) =>
    `Looked through what this phone keeps: the boxes in the yard and their journals${sheets ? ', and the removal sheets of these days' : ''}.`,
  countBoxes: (n: number) => `${n} ${n === 1 ? 'box' : 'boxes'}`,
  countRemovals: (n: number) => `${n} ${n === 1 ? 'removal' : 'removals'}`,
  countEntries: (n: number) => `${n} ${n === 1 ? 'entry' : 'entries'}`,
  called: (day: string) => `called ${day}`,
  nameless: 'Without a name',
  signed: (kind: string, by: string) => `${kind}, signed ${by}`,
}
