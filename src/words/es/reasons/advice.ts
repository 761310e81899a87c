/** Why an advice is given, in Spanish. */
import type { ADVICE as English, Few, PressingSign, Sought } from '../../../recovery/index.ts'
import { d, deedWords, frameCount } from './days.ts'

const SIGN: Record<PressingSign, string> = {
  robbing: 'Pillaje',
  beetles: 'Pequeño escarabajo de la colmena',
  moths: 'Polilla de la cera',
  'deformed-wings': 'Alas deformes',
}

export const REMEDY: Record<PressingSign, string> = {
  robbing:
    'Pillaje: cerrar hoy la piquera al ancho de una abeja, tapar toda rendija, no dejar miel ni jarabe a la vista y no abrir la colmena. Alimentar solo al anochecer, adentro, cuando haya parado',
  beetles:
    'Pequeño escarabajo de la colmena: aplastar los que se vean, poner trampas, sacar los panales que las abejas no cubren y reducir el espacio; el panal baboso se saca de inmediato',
  moths:
    'Polilla de la cera: sacar los panales que las abejas no cubren y congelarlos, raspar las telas y reducir la colmena a lo que ellas llenan',
  'deformed-wings':
    'Alas deformes: es lo que hacen los ácaros. Hacer ahora un lavado de abejas, diga lo que diga el último, y tratar según la etiqueta si pasan del límite',
}

const LEFT_OUT: Record<Sought, string> = {
  eggs: 'si hay huevos',
  'queen cells': 'si hay celdas reales',
  'capped brood': 'si hay cría operculada de obrera',
}

const LOST = { 'no-bees': 'sin abejas', dead: 'muerta', gone: 'abandonada' } as const

const FEW: Record<Few, string> = {
  layer:
    'muy pocos para mantener caliente la cría, aun con una reina en postura. Unir la colonia con otra que tenga reina y quedarse con la mejor reina, o añadir abejas y un cuadro de cría operculada.',
  nucleus:
    'una reina en postura con un núcleo de abejas. Añadir un cuadro de cría operculada con sus abejas, alimentar y mantener el espacio pequeño; no unirla.',
  queen:
    'aquí hay una reina. Añadir un cuadro de cría operculada con sus abejas y alimentar, y ver primero si pone.',
  raising:
    'muy pocos para criar bien una reina. Cortar las celdas reales y unir la colonia con otra que tenga reina, o añadir un cuadro de cría operculada.',
  mating:
    'bastan para que una virgen se fecunde. Añadir ahora un cuadro de cría operculada, antes del tiempo de calma.',
  unproven:
    'y no hay prueba de una reina. Unir la colonia con otra que tenga reina, o añadir un cuadro de cría operculada.',
  queenless: 'unir la colonia con otra que tenga reina, o añadir un cuadro de cría operculada.',
}

const inCage = (on: string, days: number): string =>
  `Sigue en su jaula el ${d(on)}, ${days} días después de ponerla`

export const ADVICE: typeof English = {
  'left-the-yard': ({ on }) => `La colonia dejó el apiario el ${d(on)}.`,
  'found-lost': ({ how, on }) =>
    `Se encontró ${LOST[how]} el ${d(on)}: un apicultor la mira, cierra la piquera para que no la pillen y anota cómo se perdió (murió o se fue). Los panales de una colonia muerta no pasan a otra antes de revisar la cría por enfermedades.`,
  'disease-suspected': ({ on, cleanSince }) =>
    `El ${d(on)} se sospechó una enfermedad de la cría${cleanSince ? ', y una revisión limpia posterior no la descarta' : ''}: cerrar, no moverla ni unirla, no sacar cría de ella y llamar al inspector apícola. Deciden las normas locales.`,
  bound: ({ how, on, from, opens, closes }) =>
    `Esta colonia ${deedWords(how)} el ${d(on)}, y en ${from} se sospecha una enfermedad de la cría: no moverla ni unirla, y no sacar de ella cría, abejas ni panal. Revisar cada cuadro de cría, sin abejas encima, entre el ${d(opens)} y el ${d(closes)}, y anotar las señales.`,
  remedy: ({ sign, on }) => `${REMEDY[sign]} (visto el ${d(on)}).`,
  'sign-not-over': ({ sign, on }) =>
    `${SIGN[sign]} el ${d(on)}, y desde entonces nadie anotó que se acabó: mirar.`,
  'look-again-on': ({ on }) => `Mirar otra vez el ${d(on)}.`,
  'is-it-over': () => 'Mirar si ya se acabó.',
  'robbed-and-hungry': () => 'Hay pocas reservas: primero cerrar, después alimentar al anochecer, adentro.',
  'cut-cells-before-release': () =>
    'Hay celdas reales: cortarlas todas antes de que ella salga, o dejar una sola y sacar a la reina.',
  'two-queens': ({ still }) =>
    `Dos reinas: una en la jaula, todavía el ${d(still)}, y otra que pone. Sacar una hoy: la enjaulada si los huevos son buenos.`,
  'cage-forgotten': () => 'Nadie ha mirado en días: buscar también celdas reales, por si está muerta.',
  'virgin-still-caged': ({ on, days }) =>
    `${inCage(on, days)}: soltarla a mano, porque una virgen tiene que volar en sus primeras tres semanas.`,
  'long-caged': ({ on, days }) =>
    `${inCage(on, days)}: soltarla a mano si las abejas sobre la jaula están tranquilas; si se aferran y muerden, buscar otra reina o celdas.`,
  'still-caged': ({ on, days }) =>
    `${inCage(on, days)}: soltarla a mano si las abejas sobre la jaula están tranquilas; si se aferran y muerden, esperar un día.`,
  'laying-workers-unite': () =>
    'Obreras ponedoras: unir con una colonia fuerte que tenga reina, después de revisar por enfermedades de la cría. A una reina comprada la matarían.',
  'few-bees': ({ frames, few }) => `Solo ${frameCount(frames)}: ${FEW[few]}`,
  'disease-first': () => 'Revisar primero por enfermedades de la cría.',
  'mates-out-of-season': ({ about }) =>
    `Una reina criada ahora volaría a fecundarse alrededor del ${d(about)}, cuando aquí las reinas no se fecundan.`,
  'raised-out-of-season': ({ about }) =>
    `La reina joven volaría a fecundarse alrededor del ${d(about)}, cuando aquí las reinas no se fecundan. Cortar las celdas reales, o buscar a la virgen y sacarla.`,
  'unite-on-a-mild-day': () => 'Unir la colonia con otra que tenga reina en un día templado.',
  'buy-or-unite': () =>
    'Buscar una virgen y celdas, y después introducir una reina fecundada; o unir la colonia.',
  'order-today': ({ days }) =>
    `No hay ninguna a mano: pedir una hoy${days === null ? '' : `, tarda ${days} días en llegar`}.`,
  'no-donor': () =>
    'Ninguna colonia puede dar un cuadro con huevos. Buscar una virgen y celdas, y después introducir una reina fecundada.',
  'eggs-may-be-ignored': () =>
    'Más de un mes sin cría joven: pueden no hacer caso de un cuadro con huevos. Buscar una virgen y celdas, y después introducir una reina fecundada.',
  'swarm-may-bring-virgin': () => 'Un enjambre puede haber traído una virgen: buscarla.',
  'give-gently': () => 'Darlo temprano o tarde en el día, con cuidado: puede haber una virgen.',
  'left-out': ({ what }) => `No se ha dicho ${what.map((w) => LEFT_OUT[w]).join(', ni ')}: eso lo decide.`,
  'virgin-by-now': () =>
    'Ya puede haber una virgen dentro (más o menos en una colmena de cada cuatro): ir temprano o tarde en el día, con cuidado, o mirar solo por fuera.',
  'ready-until': ({ until }) =>
    `El tiempo de espera terminó y se cumple todo: una última revisión de enfermedades, y puede irse. Las revisiones y el lavado valen hasta el ${d(until)}.`,
  'leave-quiet': ({ until, sure }) =>
    `Dejarla en paz${until === null ? '' : ` hasta el ${d(until)}`}, con la tapa puesta: una reina joven ${sure ? 'está' : 'puede estar'} naciendo, madurando o fecundándose.`,
  'nothing-asked': () => 'Ahora no se pide nada de esta colonia.',
  'leave-alone': ({ until }) => `Dejarla en paz hasta el ${d(until)}.`,
  'lid-on-quiet': ({ until }) => `Dejar la tapa puesta: tiempo de calma hasta el ${d(until)}.`,
  'lid-on-cold': () =>
    'Dejar la tapa puesta: hace demasiado frío para abrir. Levantar un poco la colmena por atrás para sentir el peso, mirar la piquera y dar fondant si está liviana.',
  'order-ahead': ({ days }) =>
    `Es probable que aquí haga falta una reina fecundada y no hay ninguna a mano${days === null ? '' : `; tarda ${days} días en llegar`}: pedir una ahora. Si al final crían la suya, otra colonia necesitará la comprada.`,
}
