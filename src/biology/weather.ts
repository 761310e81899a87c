/** Outdoor temperatures for opening a hive, °C. Sources conflict (10, 13, 15.6, 21 °C); Caron's two steps are used. */

/** A full look: 70 °F and sunny (D. Caron). */
export const FULL_LOOK_C = 21
/** A short look at 2-3 frames: 60 °F (D. Caron). */
export const SHORT_LOOK_C = 15.6
