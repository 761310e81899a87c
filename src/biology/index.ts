/** The door of this room; README.md says what is behind it. */
export { BROOD_SURVIVAL, DRONE, HARD, QUEEN, STEADY_BROOD, WORKER } from './development.ts'
export { hemisphereOf } from './hemisphere.ts'
export {
  LAYING_WORKER_RISK,
  LAYING_WORKERS_POSSIBLE_FROM,
  LOOK_AGAIN_AT_DOUBLES,
  NEW_QUEEN_DOUBLES_DAYS,
} from './laying-workers.ts'
export {
  CELLS_SHOW_AFTER,
  EMERGENCE_AFTER_LOSS,
  EMERGENCE_AFTER_LOSS_HARD,
  FIRST_EGG_AFTER_EMERGENCE,
  FIRST_EGG_AFTER_EMERGENCE_HARD,
  FIRST_EGG_AFTER_RELEASE,
  MATES_AFTER_EMERGENCE,
  OLD_QUEEN_LAYS_AGAIN,
  OLDEST_FOR_QUEEN,
  QUIET_BEFORE_EMERGENCE,
  RIPE_CELL_EMERGES,
  TEST_FRAME_IGNORED_AFTER,
  VIRGIN_AGE_WHEN_GIVEN,
} from './queen-rearing.ts'
export { QUEEN_EGG_LAID, WORKER_EGG_LAID } from './sightings.ts'
export { BEES_PER_FRAME, BEES_PER_LB, CELLS_PER_FRAME_SIDE, framesOfBees } from './strength.ts'
export { FULL_LOOK_C, SHORT_LOOK_C } from './weather.ts'
