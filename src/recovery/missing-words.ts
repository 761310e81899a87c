/** What a look left out, in one sentence: the same in the advice, the live panel and on every page. */
import type { Sought } from './state.ts'

const LEFT_OUT: Record<Sought, string> = {
  eggs: 'whether there are eggs',
  'queen cells': 'whether there are queen cells',
  'capped brood': 'whether worker brood is capped',
}

/** 'You have not said whether there are queen cells: that decides it.'; '' where nothing is missing. */
export function missingWords(missing: readonly Sought[]): string {
  const said = [...new Set(missing)].map((m) => LEFT_OUT[m])
  return said.length === 0 ? '' : `You have not said ${said.join(', nor ')}: that decides it.`
}
