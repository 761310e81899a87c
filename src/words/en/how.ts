/** Pages for a new helper, in English: the words of the yard, each in a sentence, and the first round. */

/** Trade words (common practice); days of development: Winston 1987, queens Büchler et al. 2013. */
export const how = {
  title: 'How it is done',
  toHand: (what: string) => `To hand: ${what}.`,
  ownPage: 'On a page of its own',
  alsoOnPhone: 'These pages are on this phone too, without signal.',
  words: 'Words and drawings',
  firstRoundTitle: 'Your first round',
  walk: 'Walk the round',
  groups: {
    cells: 'In the cells',
    queens: 'Queens and queen cells',
    plan: 'What the plan says',
    strength: 'Strength, food and trouble',
    came: 'How bees came',
  },
  terms: {
    eggs: {
      term: 'Eggs',
      means:
        'White grains, one standing in a cell. For three days they are eggs: a queen laid them in these days.',
    },
    'open-brood': {
      term: 'Open brood',
      means: 'Grubs in open cells, three to nine days after the egg was laid.',
    },
    'capped-brood': {
      term: 'Capped worker brood',
      means: 'Cells with flat lids. Only a queen that has mated makes these: the best proof there is.',
    },
    'drone-brood': {
      term: 'Drone brood',
      means: 'Lids raised like bullets. In small worker cells they mean that no mated queen lays.',
    },
    'laying-workers': {
      term: 'Laying workers',
      means:
        'After weeks without queen and brood workers lay: several eggs in a cell, some on the walls, and only drones come of them.',
    },
    'fresh-comb': {
      term: 'Fresh comb',
      means: 'Comb built since the box came. What is laid in it can be of nobody before.',
    },
    'comb-ties': {
      term: 'Comb ties',
      means: 'Bands that hold cut comb in its frame, until the bees have fastened it.',
    },
    cup: {
      term: 'Cup',
      means: 'The empty beginning of a queen cell. Bees build them at any time: it proves nothing.',
    },
    'open-cell': {
      term: 'Open queen cell',
      means: 'Longer, hanging down, a grub in white jelly: they raise a queen.',
    },
    'capped-cell': {
      term: 'Capped queen cell',
      means: 'Long as a peanut and closed: a queen comes out within eight days.',
    },
    'emerged-cell': {
      term: 'Emerged cell',
      means: 'Its tip cut round like a lid: a young queen is, or was, in the box.',
    },
    'torn-cell': {
      term: 'Torn-down cell',
      means: 'Opened at the side and empty: killed by a queen, or cleared by the bees.',
    },
    virgin: {
      term: 'Virgin',
      means: 'A young queen before her mating flight: slender, quick and easily overlooked.',
    },
    'mated-queen': {
      term: 'Mated queen',
      means: 'A queen that has flown and can lay workers: long body, slow walk.',
    },
    drone: {
      term: 'Drone',
      means: 'A male bee: thick, blunt, big eyes. Often taken for a queen by those who seek one.',
    },
    queenright: {
      term: 'Queenright',
      means: 'Proven to have a mated queen that lays. Queenless: it has none, and no cell either.',
    },
    'queenless-roar': {
      term: 'Queenless roar',
      means: 'A loud, uneven hum that does not die away when the lid is lifted. A hint, no proof.',
    },
    accepted: {
      term: 'Accepted, rejected',
      means: 'A queen that was put in, and is fed and followed; or is bitten, balled and killed.',
    },
    'first-brood-check': {
      term: 'First brood check',
      means:
        'The visit some days after the bees came, on which eggs, queen cells or neither tell how it stands. It is only telling within its days.',
    },
    'lid-on': {
      term: 'Lid on, outside look',
      means: 'Nothing is opened: watch the entrance, listen, lift a little.',
    },
    'quiet-time': {
      term: 'Quiet time',
      means:
        'Days in which a young queen emerges, flies and mates. An open box can cost her: the lid stays on.',
    },
    'frame-of-eggs': {
      term: 'Frame of eggs, test frame',
      means:
        'A frame with eggs and small grubs from another colony. Queen cells on it say that there is no queen; without a queen it gives them one.',
    },
    donor: { term: 'Donor', means: 'A healthy colony in the yard that gives frames of eggs or brood.' },
    boost: {
      term: 'Boost',
      means: 'To give a small colony a frame of capped brood, so that young bees come out in it.',
    },
    unite: {
      term: 'Unite',
      means: 'To put two colonies together, so that one lives well instead of two badly.',
    },
    'mite-wash': {
      term: 'Mite wash',
      means: 'Half a cup of bees washed in alcohol, the mites counted: how many on 100 bees.',
    },
    hold: {
      term: 'The hold',
      means: 'The least number of days a rescued colony stays before it may move out.',
    },
    held: {
      term: 'Held',
      means:
        'Nothing goes in or out: brood disease is suspected here, or where its bees or frames came from.',
    },
    'frame-of-bees': {
      term: 'Frame of bees',
      means: 'One deep frame covered on both sides. How strong a colony is, is counted in these.',
    },
    stores: { term: 'Stores', means: 'Honey and syrup in the comb. Low: less than a full frame of it.' },
    dearth: { term: 'Dearth', means: 'Days in which nothing flowers: queens pause, robbers come.' },
    robbing: {
      term: 'Robbing',
      means: 'Strange bees fight in and carry the honey off. Close down the entrance, open nothing.',
    },
    chalkbrood: {
      term: 'Chalkbrood',
      means: 'Hard white or grey mummies, loose in the cells. No cause to call anybody.',
    },
    foulbrood: {
      term: 'Foulbrood',
      means:
        'Sunken, dark lids with ragged holes, grubs that draw a thread, a foul smell. Close up and call.',
    },
    'deformed-wings': {
      term: 'Deformed wings',
      means: 'Crumpled stubs instead of wings: far too many mites.',
    },
    beetles: {
      term: 'Small hive beetles',
      means: 'Dark beetles that run from light. Their grubs turn comb to slime.',
    },
    moths: { term: 'Wax moths', means: 'Grubs and webs in comb that the bees do not cover.' },
    swarm: {
      term: 'Prime swarm, cast',
      means: 'A prime swarm brings its laying queen; a cast brings a virgin. Neither brings brood.',
    },
    'trap-out': {
      term: 'Trap-out',
      means: 'Bees that were let out of a wall and not back in. Their queen mostly stayed behind.',
    },
    nucleus: {
      term: 'Nucleus',
      means: 'A small colony on purpose: a queen and a few frames of bees. Small is not doomed.',
    },
  },
  /** In the order in which it happens. */
  firstRound: [
    {
      title: 'Before you go',
      says: [
        'Say where you go, and when you will be back. Know who is allergic, and where the medicine is. Not alone, the first time.',
        'Veil, gloves, smoker and water. Open Today once with signal: from then on this phone knows all boxes and works without.',
        'Today lists the boxes to see to, one line a box. What comes first there, comes first.',
      ],
    },
    {
      title: 'At each box',
      says: [
        'Read the tag on the box and the tag on the phone. They are the same, or you are at the wrong box.',
        'Read what is asked. “Leave the lid on” means it: an open box can cost the colony its queen.',
        'Do what is asked and no more. “How it is done” has five steps for each act; “How it looks” has drawings of each answer.',
        'Tap what you saw before you walk on. “None” means you looked and there was none. Did you not look? Say nothing.',
        'The bar at the bottom says what to do now. It may change while you tap: do that before the lid goes on.',
      ],
    },
    {
      title: 'When in doubt',
      says: [
        'Sunken, dark or ragged lids, a foul smell: close up at once and call. Do not go on to the next box with the same tool.',
        'Not sure what you saw? Take a photo of the comb and say so in the note. Nobody minds a question.',
        '“Please look at this” in a note puts the box on a beekeeper’s list.',
        'Tapped the wrong thing, or the wrong box? “Correct it” stands with every entry. Nothing is lost, and nothing is secret.',
        'Short of breath, swelling or dizzy after a sting: leave everything and call for help.',
      ],
    },
    {
      title: 'At the end',
      says: [
        'Boxes you did not get to: say so. They come first tomorrow, and nobody takes it ill.',
        'No signal? What you wrote waits on this phone and goes by itself. The line at the top says how many.',
      ],
    },
  ],
}
