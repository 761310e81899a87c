/** What each drawing shows, in English. */
export const drawings = {
  egg: 'One egg a cell, standing on the bottom like a grain of rice',
  larva: 'A white grub curled up at the bottom of its cell',
  'flat-caps': 'Flat or slightly rounded lids, like dry bread: worker brood',
  'raised-caps': 'Lids raised like bullets: drone brood',
  cup: 'A cup: small as an acorn’s, empty. Bees build them at any time',
  'open-cell': 'An open queen cell: longer, with a grub in white jelly, mouth down',
  'capped-cell': 'A capped queen cell: long as a peanut, closed at the tip',
  'emerged-cell': 'An emerged cell: the tip cut round like a lid. A young queen is out',
  'torn-cell': 'A torn-down cell: opened at its side by a queen or by bees',
  drone: 'A drone: thick and blunt, eyes that meet on top',
  virgin: 'A young queen: slender, quick, hardly longer than a worker',
  queen: 'A laying queen: long body, wings that cover half of it',
  'many-eggs': 'Several eggs a cell, some on the walls: workers are laying',
  'comb-ties': 'Comb held in its frame by bands',
  chalkbrood: 'Hard white or grey mummies in the cells, loose when the frame is shaken',
  'sunken-caps': 'Lids sunken, dark, with ragged holes: close up and ask',
}
