/** One colony’s health, in English: mites, treating them, brood disease, pests, feed. */
const treat = 'treat (the label is the law), then wash again'
const washOrTreat = 'wash again, or treat (the label is the law)'

export const health = {
  title: (tag: string) => `Health of ${tag}`,
  boundToIt: 'Bound to it:',
  recordCleared: 'Record who cleared it',
  recordLook: 'Record a look',
  mites: {
    title: 'Mites',
    noWash: 'No wash yet. Half a cup of bees from a brood frame, about 300, without the queen.',
    stale: (days: number) => ` It is older than ${days} days and counts no longer.`,
    every: 'Every wash',
    day: 'Day',
    onBees: 'Mites on bees',
    per100: 'Per 100',
    threshold: 'Threshold',
    of: (mites: number, bees: number) => `${mites} on ${bees}`,
    record: 'Record a wash',
    rate: (rate: string, lower: string, upper: string) => `${rate} per 100 bees (${lower} to ${upper})`,
    few: (bees: number) => ` ${bees} bees are few: half a cup, about 300, tells more.`,
    over: (threshold: string) =>
      `Over the threshold of ${threshold} per 100, even at the lower limit: ${treat}.`,
    under: (threshold: string) => `Under the threshold of ${threshold} per 100, even at the upper limit.`,
    countOver: (threshold: string, at: boolean) =>
      `${at ? 'At' : 'Over'} the threshold of ${threshold} per 100 by the count: ${washOrTreat}. The sample leaves room for chance.`,
    countUnder: (threshold: string) =>
      `Under the threshold of ${threshold} per 100 by the count, but the sample is too small to be sure: wash again.`,
    short: {
      over: `over the threshold: ${treat}`,
      under: 'under the threshold',
      countOver: `over the threshold by the count: ${washOrTreat}`,
      countUnder: 'under the threshold by the count, not for sure: wash again',
    },
    since: (day: string, days: number) => `since ${day}, ${days} ${days === 1 ? 'day' : 'days'} before`,
    change: (change: string, lower: string, upper: string) => `${change} per 100 (${lower} to ${upper})`,
    rising: (since: string, change: string) => `More mites ${since}: ${change}.`,
    doubles: (days: number) => ` At this pace they double about every ${days} days.`,
    falling: (since: string, change: string) => `Fewer mites ${since}: ${change}.`,
    unclear: (since: string, change: string) => `No clear change ${since}: ${change} can be chance.`,
    chart: (washes: string) => `Mites per 100 bees. ${washes}.`,
    thresholdWord: 'threshold',
    caption:
      'Mites per 100 bees; the bar is what a sample of that size cannot tell apart (95 % limits of Wilson). Mites sit unevenly on bees, so in truth the bar is longer rather than shorter.',
  },
  window: {
    title: 'Window for a mite treatment',
    none: 'No time without capped brood is in sight: mites in cells are out of reach of what works on bees alone.',
    allOnBees: ': no capped brood, so every mite is on a bee.',
    over: ' It is over.',
    reckoned: ' Reckoned from the brood seen and expected: a look can move it.',
    quietToo: (day: string) =>
      `The lid stays on until ${day} for the young queen: take the days after, or a way that opens nothing.`,
    treated: (what: string) => `Treated: ${what}.`,
    record: 'Record a treatment',
    note: 'The label registered where you are is the law: it says how much, at what temperature, with what on, and whether honey may be taken. Respirator made for the vapour, acid-proof gloves, goggles, long sleeves; nobody downwind. Wash again 10 to 14 days after.',
  },
  disease: {
    title: 'Brood disease',
    nobodyLooked: 'Nobody has looked at the brood and noted the signs yet.',
    lastLooked: (when: string) => `Last looked at with the lid off: ${when}.`,
    guide: 'Brood disease: when to stop and call the inspector',
    stopAt: 'Stop at the first of these',
    andClose: ' and close the box:',
    signs: [
      'caps that are sunken, dark, greasy, or have ragged holes;',
      'a dead larva that draws out in a brown thread on a match;',
      'dark scale dried fast to the floor of a cell;',
      'larvae twisted, yellow or brown, “melted”, before they are capped;',
      'a foul or sour smell from the brood.',
    ],
    after: 'Then',
    steps: [
      'Close it up, entrance narrow: robbers carry it to the next box.',
      'Move nothing, unite nothing, give nothing from it, not even empty comb. This book locks all three.',
      'Scrape and scorch the hive tool, wash hands, change gloves. End the round here, or go on with clean tools.',
    ],
    call: 'Call the apiary inspector',
    mustCall: '. In most places you have to, and within days.',
    record: 'Record the visit with “brood disease suspected”.',
    leaveToThem: 'Leave to them',
    whatToLeave:
      ' whether to sample, to burn, or to treat. Antibiotics for it are against the law in many places, and hide it where they are not.',
    notCleared: 'What does not clear it',
    whatNot:
      ': no thread on the match (early cells and dry ones draw none), or a later clean look. About one colony in five that carries American foulbrood shows it within a month, half within two (afb.org.nz). Where it was suspected, go on looking for half a year.',
    somethingElse: 'Likely something else',
    whatElse:
      ': hard white or grey mummies (chalkbrood), raised caps over drones, a few chilled larvae at the edge after a cold night. Note it all the same.',
  },
  pests: {
    title: 'Beetles, moths, robbing',
    names: { beetles: 'Hive beetles', moths: 'Wax moth', robbing: 'Robbing' },
    longAgo: ' That is a while ago: look again.',
    notLooked: 'Nobody has noted the signs of trouble yet.',
    clear: (day: string) => `Looked for, never seen; last ${day}.`,
    gone: (times: number, seen: string, looked: string) =>
      `Seen ${times === 1 ? 'once' : `${times} times`}, last ${seen}; not at the last look, ${looked}.`,
    seen: (day: string, late: boolean, by: string) =>
      `Seen ${day}. Look again ${late ? 'now: it was due' : 'by'} ${by}.`,
  },
  feed: {
    title: 'Feed',
    stores: 'Stores:',
    levels: { low: 'low', enough: 'enough', heavy: 'heavy' },
    uncounted: 'Nobody has counted the bees, so no need is reckoned. Count frames of bees at the next visit.',
    needBefore: 'Where nothing comes in they need ',
    need: (sugar: string, one: string, two: string) =>
      `about ${sugar} of sugar a week: ${one} of 1:1 syrup, or ${two} of 2:1`,
    comb: (sugar: string) => `Each deep frame of comb they still have to build costs about ${sugar} more.`,
    noBrood: 'without brood, which nobody counted',
    ofBrood: (frames: string) => `${frames} of brood`,
    basis: (frames: string, brood: string, day: string, stale: boolean) =>
      `Reckoned from ${frames} of bees, ${brood}, counted ${day}${stale ? ', which is long ago: count again' : ''}.`,
    estimate:
      'An estimate: 7 mg of food a day for an adult, 18 mg for an open brood cell (Khoury, Barron & Myerscough 2013); half as much or twice as much is no surprise.',
    lately: (days: number, sugar: string | null, unmeasured: number) =>
      `Given in the last ${days} days: ${sugar === null ? 'no sugar' : `${sugar} of sugar`}${unmeasured === 0 ? '' : `, and ${unmeasured} without an amount noted`}.`,
    noAmount: 'no amount noted',
    and: ' and ',
    pollen: 'pollen',
    syrup: 'syrup',
    how: 'Inside the hive, no spills, entrance small, towards evening. Never honey of unknown origin: it carries foulbrood.',
    sprayed: ' This colony was sprayed: feed none of its own honey back.',
    record: 'Record feed',
    what: 'What',
    syrupOrSugar: 'Syrup or sugar',
    pollenOrPatty: 'Pollen or patty',
    gallonUs: 'A gallon is 4 quarts.',
    gallonLitres: 'A US quart is 0.95, a gallon 3.8.',
    product: 'Product (may stay empty)',
  },
  forms: {
    washTitle: (tag: string) => `Mite wash of ${tag}`,
    saveWash: 'Save the wash',
    washIntro:
      'Half a cup of bees from a brood frame is about 300. Make sure that the queen is not among them.',
    feedTitle: (tag: string) => `Feed for ${tag}`,
    saveFeed: 'Save the feed',
    treatTitle: (tag: string) => `Mite treatment of ${tag}`,
    saveTreatment: 'Save the treatment',
    productHint: 'As its label calls it, with the registration number where the law asks for it.',
    noteHint: 'How much, as the label says; weather; with or without honey on.',
  },
}
