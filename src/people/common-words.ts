/**
 * What people choose first when a passphrase is asked of them. Our own list, from memory of what such lists have in common
 * everywhere (names of seasons and feelings, "let me in", famous sentences) and of what this trade would add; no published
 * list was copied.
 */

/** Parts that count for nothing, alone, together, or with digits around them. Lower case, four letters at least. */
export const COMMON_WORDS: readonly string[] =
  `admin administrator access account alpha angel apple april asdf august autumn baby banana baseball basketball batman
  beautiful beloved blink blue buddy bumble butterfly cats change changeme charlie cheese chocolate christmas coffee
  computer cookie daddy default december diamond dogs dragon eagle enter family february flower football forever forget
  forgot freedom friday friend friends garden guest guitar happy heaven hello hockey hunter iloveyou internet january
  jesus july june justin killer king lamp letmein lion lord love lovely loveyou lucky magic march master matrix mommy
  monday money monkey mother mustang myself naruto network ninja nothing november october open orange pass passphrase
  passwd password passwort phoenix please prince princess purple qwerty rainbow root samsam saturday secret september
  server shadow silver soccer spider spring star starwars summer sunday sunflower sunshine superman system temp tennis
  test testing thunder thursday tiger trustno tuesday user wednesday welcome what whatever winter wizard world yellow
  apiary apiculture beehive beehives beekeeper beekeepers beekeeping beeline bees beeswax brood bumblebee buzz colonies
  colony comb drone drones frame frames hive hives honey honeybee honeybees honeycomb honeypot keeper mite mites nectar
  nuc nucs pollen propolis queen queenbee queens removal rescue resettle smoker sting super supers swarm swarms varroa
  yard`
    .split(/\s+/)
    .filter((w) => w.length >= 4)

/** Whole ones that are known everywhere although no part of them is. Letters and digits alone, lower case. */
export const COMMON_PHRASES: ReadonlySet<string> = new Set(
  `correct horse battery staple
  the quick brown fox
  the quick brown fox jumps over the lazy dog
  to be or not to be
  to be or not to be that is the question
  may the force be with you
  i love you forever
  i love you so much
  i love my family
  i love my wife
  i love my husband
  i love my kids
  i love my dog
  in god we trust
  god is good
  god bless america
  jesus is lord
  thank you jesus
  once upon a time
  twinkle twinkle little star
  mary had a little lamb
  happy birthday to you
  open sesame
  abracadabra
  let it be let it be
  i dont know
  i dont remember
  i forgot my password
  this is my password
  this is a password
  this is a secret
  this is a passphrase
  my password is password
  my secret password
  my voice is my password
  no password needed
  not a password
  please let me in
  let me in please
  let me in now
  do not enter
  do or do not there is no try
  live long and prosper
  winter is coming
  one ring to rule them all
  you shall not pass
  i am your father
  hasta la vista baby
  elementary my dear watson
  houston we have a problem
  all you need is love
  carpe diem
  memento mori
  veni vidi vici
  cogito ergo sum
  rosebud rosebud
  four score and seven years ago
  we the people
  one small step for man
  it was the best of times
  call me ishmael
  all work and no play
  an apple a day
  a penny saved is a penny earned
  busy as a bee
  busy busy busy bee
  the bees knees
  queen of the hive
  save the bees
  save the honey bees
  not the bees
  to bee or not to bee
  float like a butterfly
  sting like a bee
  three little pigs
  one two three four
  one two three four five
  uno dos tres cuatro
  eins zwei drei vier
  un deux trois quatre
  ich liebe dich
  te quiero mucho
  je taime pour toujours
  red green blue yellow
  monday tuesday wednesday
  january february march`
    .split('\n')
    .map((line) => line.replaceAll(' ', '')),
)
