/** Where each threshold of the protocol comes from, in a line for the reader. */
import type { Protocol } from './protocol.ts'

type Threshold = Exclude<keyof Protocol, 'windows'>

export const SOURCE_OF_SETTING: Record<Threshold, string> = {
  holdDays:
    'Common practice, about a month. A colony that raises its own queen has capped worker brood about day 32-34, so the hold is a minimum and proves nothing by itself.',
  minFramesOfBees: 'Common practice: 3-5 frames of bees make a summer colony that can live.',
  miteThreshold: '3 mites per 100 bees by wash (USDA-ARS Tucson); others treat from 2.',
  miteThresholdByMonth:
    'Guides differ by season: 1-2 per 100 while there is little brood, 2-3 while much is reared (the guide of the Honey Bee Health Coalition, not checked against the print; newer editions are lower).',
  matingMonths:
    'Mating flights need calm weather above about 20 °C (68 °F; sources say 16-21 °C) and drones about; which months have it, the yard knows best.',
  miteWashValidDays: 'Common practice: wash again 10-14 days after a treatment.',
  diseaseLookValidDays:
    'Common practice. About one colony in five that carries American foulbrood shows it within a month (19 %; afb.org.nz): a clean look is no clearance.',
  heatLimitC: 'Common practice: no cut-out above 85 °F (29 °C); comb slumps, bees and people overheat.',
  cutMarginMm: 'Common practice: the sheathing and 1/8 inch, so that what runs behind it stays whole.',
  clearance: 'Not to be changed: a suspected brood disease holds until somebody records who cleared it.',
  salvagedQueenRelease:
    'Common practice: 2-3 days for a queen of their own; keepers differ (48 hours to 5 days).',
}
