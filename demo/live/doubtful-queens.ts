/** Queens that make one wonder: late, unmated, or not the one that was expected. */
import { MARL, TOBIAH } from '../cast.ts'
import { colony } from '../story.ts'

export const doubtfulQueens = [
  // The late virgin: nothing on the likely day, nothing a week later; her last day is near.
  colony('M-07', {
    daysAgo: 32,
    yard: MARL,
    stand: '7',
    by: TOBIAH,
    at: '16:10',
    removal: {
      type: 'wall',
      outdoorC: 20,
      hoursOpenToBoxed: 3,
      method: 'vacuum',
      sprayed: 'no',
      site: 'Behind the shutters, 5 Gull Steps',
    },
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1, capped: 1.5 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 6 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'some',
      cells: 'capped',
      cellCount: 3,
      queen: 'unseen',
      framesOfBees: 5,
      stores: 'enough',
    })
    .tiesOff(8)
    .outside(15, { stores: 'enough', note: 'Rain all week.' })
    .wash(21, 5)
    .outside(21, { stores: 'enough' })
    .open(26, {
      eggs: 'none',
      open: 'none',
      cells: 'emerged',
      queen: 'unseen',
      framesOfBees: 4,
      stores: 'enough',
      signs: [],
      note: 'Polished cells, waiting. It rained through her flying days.',
    })
    .open(30, {
      eggs: 'none',
      open: 'none',
      capped: 'none',
      cells: 'none',
      queen: 'seen',
      framesOfBees: 3.5,
      stores: 'enough',
    }),

  // Cells on day 5, eggs on day 9: no queen raised from those cells can be laying yet. Somebody else is.
  colony('M-22', {
    daysAgo: 10,
    yard: MARL,
    stand: '22',
    by: TOBIAH,
    at: '18:40',
    removal: {
      type: 'tree',
      outdoorC: 22,
      hoursOpenToBoxed: 4,
      method: 'brushed',
      sprayed: 'no',
      site: 'Hollow willow, Sallow Bank weir',
    },
    queen: 'unseen',
    brood: { eggs: 1, open: 1.5, capped: 2 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 8 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'some',
      cells: 'open',
      cellCount: 2,
      queen: 'unseen',
      framesOfBees: 8,
      stores: 'enough',
      signs: [],
    })
    .open(9, {
      eggs: 'single',
      queen: 'unseen',
      cells: 'torn-down',
      framesOfBees: 8,
      stores: 'enough',
      signs: [],
      note: 'Fresh eggs, and both cells pulled down. Was she here all along?',
    }),

  // A virgin that never mated: she lays, but only drones.
  colony('M-17', {
    daysAgo: 39,
    yard: MARL,
    stand: '17',
    by: TOBIAH,
    at: '17:20',
    removal: {
      type: 'tree',
      outdoorC: 17,
      hoursOpenToBoxed: 6,
      method: 'brushed',
      sprayed: 'no',
      site: 'Old lime, Heronsby green',
    },
    queen: 'unseen',
    brood: { eggs: 0.5, open: 1, capped: 1 },
    broodCare: 'closed-chest',
    queenCells: 'none',
    bees: { frames: 6 },
    tiedComb: true,
    temper: 2,
  })
    .outside(2)
    .open(5, {
      eggs: 'none',
      open: 'some',
      cells: 'capped',
      cellCount: 2,
      queen: 'unseen',
      framesOfBees: 5,
      stores: 'enough',
    })
    .tiesOff(9)
    .outside(15, { stores: 'enough', note: 'Cold and windy; nothing flew.' })
    .wash(22, 6)
    .outside(22, { stores: 'enough' })
    .open(29, {
      eggs: 'single',
      open: 'none',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 4,
      stores: 'enough',
      signs: [],
    })
    .open(38, {
      eggs: 'single',
      open: 'some',
      capped: 'drone-in-worker',
      queen: 'seen',
      cells: 'none',
      framesOfBees: 3.5,
      stores: 'enough',
      signs: [],
      note: 'All caps domed. She is there and she lays, but she never mated.',
    }),
]
