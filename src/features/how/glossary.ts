/** The words of the yard in the order in which one meets them, with what is drawn of them; src/words says what they mean. */
import type { DrawingName } from '../../drawings/index.ts'
import type { Words } from '../../words/index.ts'

type Terms = Words['how']['terms']
type Group = keyof Words['how']['groups']

export const GLOSSARY: readonly {
  group: Group
  terms: readonly { id: keyof Terms; drawing?: DrawingName }[]
}[] = [
  {
    group: 'cells',
    terms: [
      { id: 'eggs', drawing: 'egg' },
      { id: 'open-brood', drawing: 'larva' },
      { id: 'capped-brood', drawing: 'flat-caps' },
      { id: 'drone-brood', drawing: 'raised-caps' },
      { id: 'laying-workers', drawing: 'many-eggs' },
      { id: 'fresh-comb' },
      { id: 'comb-ties', drawing: 'comb-ties' },
    ],
  },
  {
    group: 'queens',
    terms: [
      { id: 'cup', drawing: 'cup' },
      { id: 'open-cell', drawing: 'open-cell' },
      { id: 'capped-cell', drawing: 'capped-cell' },
      { id: 'emerged-cell', drawing: 'emerged-cell' },
      { id: 'torn-cell', drawing: 'torn-cell' },
      { id: 'virgin', drawing: 'virgin' },
      { id: 'mated-queen', drawing: 'queen' },
      { id: 'drone', drawing: 'drone' },
      { id: 'queenright' },
      { id: 'queenless-roar' },
      { id: 'accepted' },
    ],
  },
  {
    group: 'plan',
    terms: [
      { id: 'first-brood-check' },
      { id: 'lid-on' },
      { id: 'quiet-time' },
      { id: 'frame-of-eggs' },
      { id: 'donor' },
      { id: 'boost' },
      { id: 'unite' },
      { id: 'mite-wash' },
      { id: 'hold' },
      { id: 'held' },
    ],
  },
  {
    group: 'strength',
    terms: [
      { id: 'frame-of-bees' },
      { id: 'stores' },
      { id: 'dearth' },
      { id: 'robbing' },
      { id: 'chalkbrood', drawing: 'chalkbrood' },
      { id: 'foulbrood', drawing: 'sunken-caps' },
      { id: 'deformed-wings' },
      { id: 'beetles' },
      { id: 'moths' },
    ],
  },
  {
    group: 'came',
    terms: [{ id: 'swarm' }, { id: 'trap-out' }, { id: 'nucleus' }],
  },
]
