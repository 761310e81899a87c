/** What a new helper is told: the words of the yard, each in a sentence, and the first round. Data only, to be translated. */
import type { DrawingName } from '../../drawings/index.ts'

export interface Term {
  /** Where a link leads to. */
  id: string
  term: string
  means: string
  drawing?: DrawingName
}

/** Trade words (common practice); days of development: Winston 1987, queens Büchler et al. 2013. Grouped as one meets them. */
export const GLOSSARY: readonly { title: string; terms: readonly Term[] }[] = [
  {
    title: 'In the cells',
    terms: [
      {
        id: 'eggs',
        term: 'Eggs',
        means:
          'White grains, one standing in a cell. For three days they are eggs: a queen laid them in these days.',
        drawing: 'egg',
      },
      {
        id: 'open-brood',
        term: 'Open brood',
        means: 'Grubs in open cells, three to nine days after the egg was laid.',
        drawing: 'larva',
      },
      {
        id: 'capped-brood',
        term: 'Capped worker brood',
        means: 'Cells with flat lids. Only a queen that has mated makes these: the best proof there is.',
        drawing: 'flat-caps',
      },
      {
        id: 'drone-brood',
        term: 'Drone brood',
        means: 'Lids raised like bullets. In small worker cells they mean that no mated queen lays.',
        drawing: 'raised-caps',
      },
      {
        id: 'laying-workers',
        term: 'Laying workers',
        means:
          'After weeks without queen and brood workers lay: several eggs in a cell, some on the walls, and only drones come of them.',
        drawing: 'many-eggs',
      },
      {
        id: 'fresh-comb',
        term: 'Fresh comb',
        means: 'Comb built since the box came. What is laid in it can be of nobody before.',
      },
      {
        id: 'comb-ties',
        term: 'Comb ties',
        means: 'Bands that hold cut comb in its frame, until the bees have fastened it.',
        drawing: 'comb-ties',
      },
    ],
  },
  {
    title: 'Queens and queen cells',
    terms: [
      {
        id: 'cup',
        term: 'Cup',
        means: 'The empty beginning of a queen cell. Bees build them at any time: it proves nothing.',
        drawing: 'cup',
      },
      {
        id: 'open-cell',
        term: 'Open queen cell',
        means: 'Longer, hanging down, a grub in white jelly: they raise a queen.',
        drawing: 'open-cell',
      },
      {
        id: 'capped-cell',
        term: 'Capped queen cell',
        means: 'Long as a peanut and closed: a queen comes out within eight days.',
        drawing: 'capped-cell',
      },
      {
        id: 'emerged-cell',
        term: 'Emerged cell',
        means: 'Its tip cut round like a lid: a young queen is, or was, in the box.',
        drawing: 'emerged-cell',
      },
      {
        id: 'torn-cell',
        term: 'Torn-down cell',
        means: 'Opened at the side and empty: killed by a queen, or cleared by the bees.',
        drawing: 'torn-cell',
      },
      {
        id: 'virgin',
        term: 'Virgin',
        means: 'A young queen before her mating flight: slender, quick and easily overlooked.',
        drawing: 'virgin',
      },
      {
        id: 'mated-queen',
        term: 'Mated queen',
        means: 'A queen that has flown and can lay workers: long body, slow walk.',
        drawing: 'queen',
      },
      {
        id: 'drone',
        term: 'Drone',
        means: 'A male bee: thick, blunt, big eyes. Often taken for a queen by those who seek one.',
        drawing: 'drone',
      },
      {
        id: 'queenright',
        term: 'Queenright',
        means: 'Proven to have a mated queen that lays. Queenless: it has none, and no cell either.',
      },
      {
        id: 'queenless-roar',
        term: 'Queenless roar',
        means: 'A loud, uneven hum that does not die away when the lid is lifted. A hint, no proof.',
      },
      {
        id: 'accepted',
        term: 'Accepted, rejected',
        means: 'A queen that was put in, and is fed and followed; or is bitten, balled and killed.',
      },
    ],
  },
  {
    title: 'What the plan says',
    terms: [
      {
        id: 'first-brood-check',
        term: 'First brood check',
        means:
          'The visit some days after the bees came, on which eggs, queen cells or neither tell how it stands. It is only telling within its days.',
      },
      {
        id: 'lid-on',
        term: 'Lid on, outside look',
        means: 'Nothing is opened: watch the entrance, listen, lift a little.',
      },
      {
        id: 'quiet-time',
        term: 'Quiet time',
        means:
          'Days in which a young queen emerges, flies and mates. An open box can cost her: the lid stays on.',
      },
      {
        id: 'frame-of-eggs',
        term: 'Frame of eggs, test frame',
        means:
          'A frame with eggs and small grubs from another colony. Queen cells on it say that there is no queen; without a queen it gives them one.',
      },
      {
        id: 'donor',
        term: 'Donor',
        means: 'A healthy colony in the yard that gives frames of eggs or brood.',
      },
      {
        id: 'boost',
        term: 'Boost',
        means: 'To give a small colony a frame of capped brood, so that young bees come out in it.',
      },
      {
        id: 'unite',
        term: 'Unite',
        means: 'To put two colonies together, so that one lives well instead of two badly.',
      },
      {
        id: 'mite-wash',
        term: 'Mite wash',
        means: 'Half a cup of bees washed in alcohol, the mites counted: how many on 100 bees.',
      },
      {
        id: 'hold',
        term: 'The hold',
        means: 'The least number of days a rescued colony stays before it may move out.',
      },
      {
        id: 'held',
        term: 'Held',
        means:
          'Nothing goes in or out: brood disease is suspected here, or where its bees or frames came from.',
      },
    ],
  },
  {
    title: 'Strength, food and trouble',
    terms: [
      {
        id: 'frame-of-bees',
        term: 'Frame of bees',
        means: 'One deep frame covered on both sides. How strong a colony is, is counted in these.',
      },
      {
        id: 'stores',
        term: 'Stores',
        means: 'Honey and syrup in the comb. Low: less than a full frame of it.',
      },
      {
        id: 'dearth',
        term: 'Dearth',
        means: 'Days in which nothing flowers: queens pause, robbers come.',
      },
      {
        id: 'robbing',
        term: 'Robbing',
        means: 'Strange bees fight in and carry the honey off. Close down the entrance, open nothing.',
      },
      {
        id: 'chalkbrood',
        term: 'Chalkbrood',
        means: 'Hard white or grey mummies, loose in the cells. No cause to call anybody.',
        drawing: 'chalkbrood',
      },
      {
        id: 'foulbrood',
        term: 'Foulbrood',
        means:
          'Sunken, dark lids with ragged holes, grubs that draw a thread, a foul smell. Close up and call.',
        drawing: 'sunken-caps',
      },
      {
        id: 'deformed-wings',
        term: 'Deformed wings',
        means: 'Crumpled stubs instead of wings: far too many mites.',
      },
      {
        id: 'beetles',
        term: 'Small hive beetles',
        means: 'Dark beetles that run from light. Their grubs turn comb to slime.',
      },
      {
        id: 'moths',
        term: 'Wax moths',
        means: 'Grubs and webs in comb that the bees do not cover.',
      },
    ],
  },
  {
    title: 'How bees came',
    terms: [
      {
        id: 'swarm',
        term: 'Prime swarm, cast',
        means: 'A prime swarm brings its laying queen; a cast brings a virgin. Neither brings brood.',
      },
      {
        id: 'trap-out',
        term: 'Trap-out',
        means: 'Bees that were let out of a wall and not back in. Their queen mostly stayed behind.',
      },
      {
        id: 'nucleus',
        term: 'Nucleus',
        means: 'A small colony on purpose: a queen and a few frames of bees. Small is not doomed.',
      },
    ],
  },
]

/** The first round of a new helper, in the order in which it happens. */
export const FIRST_ROUND: readonly { title: string; says: readonly string[] }[] = [
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
]
