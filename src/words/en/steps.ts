/**
 * How each act is done, in five steps, for somebody who does it for the first time. Common practice throughout, but for
 * what names a source; days and limits are the yard's rules (src/biology, the protocol) and are not repeated here, so that
 * no step says another day than the plan.
 */
import type { Act, HowTo } from '../acts.ts'

export const steps: Record<Act, HowTo> = {
  'first-brood-check': {
    title: 'Open a box for the first brood check',
    bring: 'smoker, hive tool, a place to set one frame down, a light for dark comb',
    steps: [
      'Choose a warm, calm hour. Stand with the sun over your shoulder, so that it falls into the cells. Two puffs of smoke at the entrance, and wait half a minute.',
      'Lift out an outer frame first and stand it aside: the others then come up without rolling bees, or the queen.',
      'Go frame by frame to the brood. Lift straight up and slowly, and hold each frame over the box: if she falls, she falls home.',
      'Look for four things and say something of each: eggs, grubs, lids, queen cells at the edges and on the face. “None” is an answer, “not looked” is another. Half a look decides nothing.',
      'Put the frames back in their order and the same way round, close up, and tap what you saw before you walk on.',
    ],
  },
  'outside-look': {
    title: 'Look from outside, lid on',
    bring: 'nothing; feed, if the plan says so',
    steps: [
      'Stand at the side of the entrance, out of the way of the bees, for some minutes.',
      'Watch: are they flying, and do some bring pollen? Pollen often means brood, but proves nothing.',
      'Look at the ground and the board: many dead, crawlers with bad wings, fighting at the entrance, or nobody at all.',
      'Put an ear to the wall and knock once: a short hum that dies away is well. Lift the back a little: light means hungry.',
      'Tap “Looked, all well”, or write down what was not.',
    ],
  },
  'caged-queen': {
    title: 'See to a queen in her cage',
    bring: 'smoker, hive tool, something to open the cage with',
    steps: [
      'A little smoke, the lid off gently, and look at the cage before you touch it: do bees sit loosely and feed her, or do they cling and bite?',
      'Look for queen cells near the cage. Cut every one before she comes out, or one of them kills her.',
      'Empty cage: take it out, look for no queen today, and close. Her eggs are looked for later.',
      'Still in, and the bees are calm: open the cage low between two frames and let her walk down. They cling: leave her in, and come back as the plan says.',
      'Dead, or killed: there is likely another queen. Take the cage out and write down just what you found.',
    ],
  },
  'test-frame': {
    title: 'Give a frame of eggs',
    bring: 'a donor box looked at for disease, a damp towel, a brush, a pen',
    steps: [
      'Choose a donor that is well: laying queen, no sign of disease, few mites, not held.',
      'Take a frame with eggs and the smallest grubs. See that the donor’s queen is not on it, and brush the bees off: jolts harm eggs and grubs.',
      'Cover it with the damp towel and carry it over at once. Eggs dry out in minutes of sun (below about half humidity none hatched: Doull 1976).',
      'Early or late in the day, gently, set it in the middle of the bees. Write the date and “eggs” on its top bar, to find it again.',
      'Write it down with the donor’s tag. On the day that the plan names, look for queen cells on this very frame.',
    ],
  },
  introduce: {
    title: 'Introduce a mated queen',
    bring: 'the queen in her cage, a drop of water for her, feed',
    steps: [
      'Look through every frame for a queen, a young queen, or queen cells. Found one? Do not put her in: write it down and see what the plan says.',
      'Until then keep her cage shaded, warm and dry, with a drop of water on the mesh twice a day.',
      'Wedge the cage between two frames where brood is, or would be: the mesh to the bees, the candy end a little up, its cap off.',
      'Close up. Feed thin syrup inside where little comes in: fed bees take a queen more easily.',
      'Leave the box alone until the day on which the plan asks for the cage. Write down that you gave her.',
    ],
  },
  unite: {
    title: 'Unite with another colony',
    bring: 'a sheet of newspaper, smoker, hive tool, a strap',
    steps: [
      'Look at the brood of both for disease. In doubt, stop: nothing that is sick or held is united.',
      'Only one queen may be left: find the poorer queen, or every queen cell, and take them out.',
      'Toward evening take the lid off the strong box that has the queen. Lay one sheet of newspaper over its frames and slit it twice with the hive tool.',
      'Set the weak colony’s box on the paper, lid on, strap round. Leave one entrance, below, and narrow it.',
      'After about a week the paper is gnawed through: put the frames together in as few boxes as they fill. Write down that it left, united, and into which box.',
    ],
  },
  boost: {
    title: 'Add a frame of capped brood',
    bring: 'a donor box looked at for disease, hive tool, a pen',
    steps: [
      'Choose a strong donor that is well, and find its queen first: she stays where she is.',
      'Take a frame that is nearly all flat lids, best with bees just gnawing out. Grubs need many nurses, so have few of them on it.',
      'No more brood than the small colony can sit on: one frame at a time. The bees that sit on it come along.',
      'Set it right beside their own brood, and take an empty frame from the edge in exchange.',
      'Narrow the entrance, feed, and write down the frame and the donor’s tag.',
    ],
  },
  feed: {
    title: 'Feed a colony',
    bring: 'white sugar in water, a feeder that goes inside, something to float on it',
    steps: [
      'Robbers at the entrance? Stop that first. Feed only once it is over.',
      'Mix by weight: one part sugar and one part water to build on, two and one to store. Only white sugar: honey of unknown bees brings disease.',
      'Toward evening set the feeder inside, above the bees, with straw or a float in it so that they do not drown. Too cold for them to fly: fondant on the frames instead.',
      'Spill nothing. Close every gap, and narrow the entrance of a small colony to a finger’s width.',
      'Write down how much. Next time take away what has gone sour.',
    ],
  },
  'mite-wash': {
    title: 'Wash bees for mites',
    bring: 'jar with mesh lid, half-cup measure, alcohol or soapy water, a white tub',
    steps: [
      'Find the queen and stand her frame aside. Not found: take bees from a frame that you have searched on both sides.',
      'Shake the bees of a brood frame into a tub and scoop half a cup of them, about 300. Give the others back.',
      'Into the jar, liquid over them, lid on, and swirl for a minute. These bees die; a colony that is not washed may.',
      'Pour through the mesh into the white tub and count the mites. Rinse once more and count again.',
      'Write down bees and mites: 9 on 300 are 3 on 100. Then see what the plan says; the label is the law.',
    ],
  },
  'close-down': {
    title: 'Stop robbing',
    bring: 'a piece of foam or grass, tape, a wet sheet',
    steps: [
      'Bees that fight at the entrance and probe every gap are robbers. Do not open this box, nor any beside it.',
      'Close the entrance to one bee’s width, with foam, grass or a block.',
      'Tape every other gap. Carry away all honey, syrup and wet comb that lies about.',
      'Still a cloud of them: hang a wet sheet over the box until evening. The bees that live there find their way round it.',
      'Look at dusk and on the next two days. Feed only once it is over, at dusk, inside. Write down that you saw it.',
    ],
  },
  'close-up': {
    title: 'Close up and call the inspector',
    bring: 'nothing more than you have; no tool goes from here to another box',
    steps: [
      'Lids sunken, dark or with ragged holes, dead grubs that draw out in a thread, a foul smell: take a photo, put the frame back, and stop.',
      'Close the box and narrow its entrance: robbers carry it to the next.',
      'Mark the box. From now on nothing goes into it or out of it: no bees, comb, honey or frames.',
      'Scrape the hive tool and scorch it, wash your hands, change gloves. End the round here, or go on with clean tools.',
      'Record it with “brood disease suspected”, and call the apiary inspector. Whether to sample, burn or treat is theirs to say.',
    ],
  },
  'take-out-queen': {
    title: 'Find a queen and take her out',
    bring: 'smoker, hive tool, an empty box to set frames into, a cage',
    steps: [
      'Come when many bees are out flying. Hardly any smoke: it makes her run.',
      'Start where the eggs or the brood are. As a frame comes up, look first at the side of the next one that was dark.',
      'Then down one side of the frame and up the other, edges first. Look for long legs and a path of bees that turn to her.',
      'Not on the frames: look at the walls and the floor. Not found in ten minutes: close up, and try again another day.',
      'Catch her by the wings, or cage her. Write down that she was taken out, and what she laid.',
    ],
  },
  'move-out': {
    title: 'Move a box out',
    bring: 'strap, mesh or foam for the entrance, the papers, a second pair of hands',
    steps: [
      'A last look at every frame of brood for disease, in daylight. Anything in doubt: it stays.',
      'See that the list of what is missing is empty, and that the papers for where it goes are made.',
      'When all have flown home, in the evening or before dawn, close the entrance so that air gets in. Floor, box and lid under one strap.',
      'Two people lift. On the truck frames point the way you drive, with air, and no sun on them.',
      'At the new stand open it at once and lean a branch before the entrance, so that they learn the place. Write down where it went.',
    ],
  },
}
