/** Where each rule's window comes from, in a line for the reader. */
import type { Rule } from './plan-types.ts'

export const SOURCE_OF: Record<Rule, string> = {
  'outside-look': 'Common practice: the first days after a move are when a colony leaves.',
  'queen-release':
    'Common practice: 2-3 days for a queen of their own, 3-5 for a stranger; keepers differ (48 hours to 5 days).',
  'telling-visit':
    'Eggs hatch after 3 days, so eggs from day 4 are new (Winston 1987); cells are begun within 48 hours of loss (Fell & Morse 1984).',
  'egg-frame':
    'Common practice; larvae make a queen until 3 days after hatching, best within 36 hours (Oliver 2021).',
  'cells-on-egg-frame':
    'Cells show after 1-5 days (Oliver 2021; common practice); read the frame by day 8, before a virgin could emerge on day 10.',
  'recheck-eggs':
    'Past the horizon of the frame given (eggs hatch after 3 days, open brood is capped after 9; Winston 1987).',
  'new-queen-eggs':
    'First egg 10.6 days after emergence, 4-22 (Szabo et al. 1987); 12.9 (Pérez-Sato & Ratnieks 2006). Planned at 12, given up after 21.',
  'buy-queen': 'Common practice; laying workers threaten 3-4 weeks after the last young brood.',
  'eggs-after-introduction': 'Common practice: eggs 3-10 days after release.',
  'worker-brood':
    'Worker brood is capped 9 days after the egg (Winston 1987); only flat worker caps prove a mated queen.',
  'comb-ties': 'Common practice: combs are attached, and bands often chewed, within one to two weeks.',
  'mite-wash': 'Common practice; threshold 3 mites per 100 bees by wash (USDA-ARS).',
  welfare:
    'Common practice: small beetles and robbing can ruin a weak colony within two weeks of warm weather.',
  'unite-or-boost': 'Common practice: 3-5 frames of bees make a summer colony that can live.',
  'laying-workers':
    'Onset about 14 days (Collison), 21 (Oliver 2021) to 30 days without queen and young brood; shaking out is disputed.',
  'move-out': 'The hold of the protocol, and every condition for leaving met.',
}
