/** The removals of the invented yard, step by step as their sheets were filled. Invented throughout. */

import { addDays } from '../src/days.ts'
import { TICKED } from '../src/features/removal/index.ts'
import { MAREN, TOBIAH } from './cast.ts'
import { type Job, signed, workOf } from './job.ts'

export const JOBS: Job[] = [
  {
    tag: 'M-03',
    by: MAREN,
    calledAgo: 52,
    plannedAfter: 3,
    job: {
      name: 'Larkbarrow park, head gardener',
      phone: '555 0142',
      address: 'Storm-felled ash, Larkbarrow park',
      told: 'An ash came down in the storm, the hollow is full of bees.',
      plannedAt: '07:30',
    },
    steps: [
      () => ({
        site: {
          type: 'tree',
          where: 'in the hollow of the felled trunk, about a metre from the break',
          foundBy: ['flight', 'opened'],
          access: 'ground',
          behind: [],
          behindHow: 'traced',
          hazards: [],
          old: 'no',
          sprayed: 'no',
          bystanders: ['passers-by'],
          temper: 2,
          africanized: 'no',
          sheathingMm: 60,
        },
      }),
      () => ({ agreement: { pricing: 'fixed', fixed: 280 } }),
      ({ planned, sheet }) => ({
        agreement: { ...sheet.agreement, signature: signed(sheet, planned, 'paper') },
      }),
      ({ planned }) => ({
        check: {
          on: planned,
          from: '07:30',
          until: '12:00',
          hours: [
            { at: '08:00', c: 14 },
            { at: '10:00', c: 17 },
            { at: '12:00', c: 19 },
          ],
          cutMm: 60,
          vacuum: 'none',
          done: [...TICKED],
        },
        decision: { is: 'go', by: MAREN, on: planned, at: '07:40', unmet: [] },
      }),
      ({ planned, intake }) => ({
        work: workOf(intake, planned, {
          arrivedAt: '07:30',
          openedAt: '08:10',
          boxedAt: '11:10',
          leftAt: '12:00',
          sealed: 'owner',
          cleaned: 'all',
          left: 'The trunk goes to the sawyer.',
        }),
      }),
    ],
  },
  {
    tag: 'T-12',
    by: MAREN,
    calledAgo: 6,
    plannedAfter: 5,
    job: {
      name: 'Clemency Hartwell',
      phone: '555 0117',
      address: 'Porch wall, 9 Quillpen Row, Ostermoor',
      wayIn: 'Side gate is open; the terrier is loud and kind.',
      told: 'Bees go in under the porch roof since spring; honey on the inside wall.',
      plannedAt: '16:30',
    },
    steps: [
      () => ({
        site: {
          type: 'wall',
          where: 'in the porch wall, two bays, from the sill up',
          foundBy: ['heat-camera', 'listening'],
          foundNote: 'about 70 cm high',
          access: 'step-ladder',
          heightM: 2.4,
          surface: 'tongue and groove boards',
          sheathingMm: 19,
          behind: ['insulation'],
          hazards: [],
          old: 'no',
          sprayed: 'no',
          bystanders: ['animals', 'neighbours'],
          temper: 2,
          africanized: 'no',
        },
      }),
      () => ({ agreement: { pricing: 'hourly', hourly: 95, hours: 4 } }),
      ({ planned, sheet }) => ({
        agreement: { ...sheet.agreement, signature: signed(sheet, addDays(planned, -2), 'drawn') },
      }),
      ({ planned }) => ({
        check: {
          on: planned,
          from: '16:30',
          until: '20:00',
          hours: [
            { at: '16:00', c: 24 },
            { at: '18:00', c: 22 },
            { at: '20:00', c: 19 },
          ],
          cutMm: 22,
          vacuum: 'bee-vacuum',
          done: [...TICKED],
        },
        decision: { is: 'go', by: MAREN, on: planned, at: '16:35', unmet: [] },
      }),
      ({ planned, intake }) => ({
        work: workOf(intake, planned, {
          arrivedAt: '16:30',
          openedAt: '17:00',
          boxedAt: '20:00',
          leftAt: '20:50',
          queenFoundAt: '18:20',
          sealed: 'yes',
          cleaned: 'all',
          left: 'Boards back up: a joiner, next week.',
        }),
      }),
    ],
  },
  {
    by: MAREN,
    calledAgo: 3,
    plannedAfter: 4,
    job: {
      name: 'Osric Pellow',
      phone: '555 0133',
      address: 'The old bakery, 2 Kiln Lane, Heronsby',
      told: 'Hundreds at the eaves above the flour store. The boards have old paint.',
      plannedAt: '07:00',
    },
    steps: [
      () => ({
        site: {
          type: 'roof',
          where: 'behind the eaves board above the flour store',
          foundBy: ['flight', 'scope'],
          access: 'ladder',
          heightM: 4.6,
          surface: 'painted eaves board',
          sheathingMm: 25,
          behind: ['electric'],
          hazards: ['lead-paint'],
          old: 'yes',
          sprayed: 'unknown',
          bystanders: ['passers-by', 'allergic'],
          bystandersNote: 'The baker carries adrenaline.',
          temper: 3,
          africanized: 'no',
        },
      }),
      () => ({ agreement: { pricing: 'hourly', hourly: 110, hours: 5 } }),
      ({ planned }) => ({
        check: {
          on: planned,
          from: '07:00',
          until: '13:00',
          hours: [
            { at: '07:00', c: 19 },
            { at: '09:00', c: 24 },
            { at: '11:00', c: 28 },
            { at: '13:00', c: 31 },
          ],
          vacuum: 'bee-vacuum',
          done: ['clothing', 'water', 'tools', 'queen-clip', 'brood-chest', 'codes', 'sting-plan'],
        },
      }),
    ],
  },
  {
    by: TOBIAH,
    calledAgo: 0,
    plannedAfter: 2,
    job: {
      name: 'Widow Ardley',
      phone: '555 0160',
      address: 'Orchard wall, Heronsby',
      told: 'A cluster like a football in the espalier pear since noon.',
    },
    steps: [],
  },
  {
    by: MAREN,
    calledAgo: 12,
    plannedAfter: 2,
    job: {
      name: 'Gasworks cottages, caretaker',
      phone: '555 0171',
      address: '3 Gasworks Row, Pellbury',
      told: 'Bees in the wall beside the meter.',
    },
    steps: [
      () => ({
        site: {
          type: 'wall',
          where: 'beside the gas meter, low down',
          foundBy: ['listening'],
          access: 'ground',
          sheathingMm: 12,
          behind: ['gas'],
          hazards: ['asbestos'],
          old: 'yes',
          sprayed: 'yes',
          sprayedNote: 'wasp foam, last week',
        },
      }),
      ({ planned }) => ({
        decision: {
          is: 'refuse',
          by: MAREN,
          on: planned,
          reason:
            'Gas beside it, cement board that may be asbestos, and they are foamed already: for the owner, the gas supplier and a licensed contractor.',
          unmet: ['Cleared by the licensed trade: gas pipe, asbestos suspected'],
        },
      }),
    ],
  },
]
