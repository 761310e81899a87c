/** Pages for a new helper, in Spanish. */
import type { how as English } from '../en/how.ts'

export const how: typeof English = {
  title: 'Cómo se hace',
  toHand: (what) => `A mano: ${what}.`,
  ownPage: 'En una página aparte',
  alsoOnPhone: 'Estas páginas están también en este teléfono, sin señal.',
  words: 'Palabras y dibujos',
  firstRoundTitle: 'La primera ronda',
  walk: 'Hacer la ronda',
  groups: {
    cells: 'En las celdas',
    queens: 'Reinas y celdas reales',
    plan: 'Lo que dice el plan',
    strength: 'Fuerza, alimento y problemas',
    came: 'Cómo llegaron las abejas',
  },
  terms: {
    eggs: {
      term: 'Huevos',
      means:
        'Granos blancos, uno de pie en cada celda. Son huevos durante tres días: una reina los puso en estos días.',
    },
    'open-brood': {
      term: 'Cría abierta',
      means: 'Larvas en celdas abiertas, de tres a nueve días después de la postura.',
    },
    'capped-brood': {
      term: 'Cría operculada de obrera',
      means: 'Celdas con opérculos planos. Solo una reina fecundada las da: es la mejor prueba que hay.',
    },
    'drone-brood': {
      term: 'Cría de zángano',
      means:
        'Opérculos abultados, como balas. En celdas pequeñas de obrera indican que no pone ninguna reina fecundada.',
    },
    'laying-workers': {
      term: 'Obreras ponedoras',
      means:
        'Tras semanas sin reina ni cría ponen las obreras: varios huevos por celda, algunos en las paredes, y de ellos solo nacen zánganos.',
    },
    'fresh-comb': {
      term: 'Panal nuevo',
      means:
        'Panal hecho desde que llegó la colmena. Lo que hay puesto en él no puede ser de nadie de antes.',
    },
    'comb-ties': {
      term: 'Ligas de los panales',
      means: 'Ligas que sujetan el panal cortado en su cuadro, hasta que las abejas lo pegan.',
    },
    cup: {
      term: 'Copa',
      means:
        'El comienzo vacío de una celda real. Las abejas las hacen en cualquier momento: no prueba nada.',
    },
    'open-cell': {
      term: 'Celda real abierta',
      means: 'Más larga, cuelga hacia abajo, con una larva en jalea blanca: están criando una reina.',
    },
    'capped-cell': {
      term: 'Celda real operculada',
      means: 'Larga como un cacahuate y cerrada: en ocho días como mucho nace una reina.',
    },
    'emerged-cell': {
      term: 'Celda real nacida',
      means: 'La punta cortada en redondo, como una tapa: hay, o hubo, una reina joven en la colmena.',
    },
    'torn-cell': {
      term: 'Celda real destruida',
      means: 'Abierta por un lado y vacía: la mató una reina, o la limpiaron las abejas.',
    },
    virgin: {
      term: 'Virgen',
      means: 'Una reina joven antes de su vuelo de fecundación: delgada, rápida, fácil de pasar por alto.',
    },
    'mated-queen': {
      term: 'Reina fecundada',
      means: 'Una reina que ya voló y puede dar obreras: cuerpo largo, paso lento.',
    },
    drone: {
      term: 'Zángano',
      means: 'El macho: grueso, romo, de ojos grandes. Quien busca una reina lo toma a menudo por ella.',
    },
    queenright: {
      term: 'Con reina',
      means:
        'Está probado que tiene una reina fecundada en postura. Huérfana: no tiene ninguna, ni celda real.',
    },
    'queenless-roar': {
      term: 'Zumbido de colonia sin reina',
      means: 'Un zumbido fuerte y desigual que no se apaga al quitar la tapa. Una señal, no una prueba.',
    },
    accepted: {
      term: 'Aceptada, rechazada',
      means:
        'Una reina introducida a la que alimentan y siguen; o a la que muerden, encierran en una bola y matan.',
    },
    'first-brood-check': {
      term: 'Primera revisión de cría',
      means:
        'La visita, algunos días después de llegar las abejas, en la que huevos, celdas reales o ninguno dicen cómo está la colonia. Solo dice algo dentro de sus días.',
    },
    'lid-on': {
      term: 'Tapa puesta, mirar por fuera',
      means: 'No se abre nada: mirar la piquera, escuchar, levantar un poco la colmena por atrás.',
    },
    'quiet-time': {
      term: 'Tiempo de calma',
      means:
        'Días en que una reina joven nace, vuela y se fecunda. Abrir la colmena puede costarle la vida: la tapa se queda puesta.',
    },
    'frame-of-eggs': {
      term: 'Cuadro con huevos, cuadro de prueba',
      means:
        'Un cuadro con huevos y larvas pequeñas de otra colonia. Celdas reales en él dicen que no hay reina; y sin reina, les da una.',
    },
    donor: {
      term: 'Donante',
      means: 'Una colonia sana del apiario que da cuadros con huevos o con cría.',
    },
    boost: {
      term: 'Reforzar',
      means:
        'Dar a una colonia pequeña un cuadro de cría operculada, para que nazcan en ella abejas jóvenes.',
    },
    unite: {
      term: 'Unir',
      means: 'Juntar dos colonias, para que una viva bien en lugar de dos mal.',
    },
    'mite-wash': {
      term: 'Lavado para ácaros',
      means: 'Media taza de abejas lavadas en alcohol, y los ácaros contados: cuántos en 100 abejas.',
    },
    hold: {
      term: 'El tiempo de espera',
      means: 'Los días que una colonia rescatada se queda, por lo menos, antes de entregarse.',
    },
    held: {
      term: 'Retenida',
      means:
        'No entra ni sale nada: se sospecha una enfermedad de la cría aquí, o donde estuvieron antes sus abejas o cuadros.',
    },
    'frame-of-bees': {
      term: 'Cuadro con abejas',
      means:
        'Un cuadro de cámara de cría cubierto por las dos caras. En ellos se cuenta la fuerza de una colonia.',
    },
    stores: {
      term: 'Reservas',
      means: 'Miel y jarabe en los panales. Pocas: menos de un cuadro lleno.',
    },
    dearth: {
      term: 'Escasez',
      means: 'Días en que no hay flores: las reinas paran, llegan las pilladoras.',
    },
    robbing: {
      term: 'Pillaje',
      means: 'Abejas ajenas entran peleando y se llevan la miel. Reducir la piquera, no abrir nada.',
    },
    chalkbrood: {
      term: 'Cría de cal',
      means: 'Momias duras, blancas o grises, sueltas en las celdas. No hace falta llamar a nadie.',
    },
    foulbrood: {
      term: 'Loque',
      means:
        'Opérculos hundidos y oscuros con agujeros irregulares, larvas que se estiran en un hilo, mal olor. Cerrar y llamar al inspector apícola.',
    },
    'deformed-wings': {
      term: 'Alas deformes',
      means: 'Muñones arrugados en lugar de alas: demasiados ácaros.',
    },
    beetles: {
      term: 'Pequeños escarabajos de la colmena',
      means: 'Escarabajos oscuros que huyen de la luz. Sus larvas convierten el panal en baba.',
    },
    moths: {
      term: 'Polilla de la cera',
      means: 'Larvas y telas en panales que las abejas no cubren.',
    },
    swarm: {
      term: 'Enjambre primario, secundario',
      means: 'El primario trae a su reina en postura; el secundario, una virgen. Ninguno trae cría.',
    },
    'trap-out': {
      term: 'Trampa de salida',
      means:
        'Abejas a las que se dejó salir de una pared y no volver a entrar. Casi siempre su reina se quedó adentro.',
    },
    nucleus: {
      term: 'Núcleo',
      means:
        'Una colonia pequeña a propósito: una reina y unos cuadros con abejas. Pequeña no quiere decir perdida.',
    },
  },
  firstRound: [
    {
      title: 'Antes de salir',
      says: [
        'Decir a dónde se va y cuándo se vuelve. Saber quién es alérgico y dónde está la medicina. La primera vez, ir siempre con alguien.',
        'Velo, guantes, ahumador y agua. Abrir Hoy una vez con señal: desde entonces este teléfono conoce todas las colmenas y funciona sin ella.',
        'Hoy muestra las colmenas que hay que atender, una línea por colmena. La que está primero va primero.',
      ],
    },
    {
      title: 'En cada colmena',
      says: [
        'Leer la etiqueta de la colmena y la del teléfono. Son la misma, o esta no es la colmena.',
        'Leer lo que se pide. “Dejar la tapa puesta” va en serio: abrir una colmena puede costarle la reina a la colonia.',
        'Hacer lo que se pide y nada más. “Cómo se hace” tiene cinco pasos para cada tarea; “Cómo se ve” tiene dibujos de cada respuesta.',
        'Tocar lo que se vio antes de seguir. “No hay” quiere decir que se miró y no había. ¿No se miró? No decir nada.',
        'La barra de abajo dice qué hacer ahora. Puede cambiar al tocar: hacerlo antes de poner la tapa.',
      ],
    },
    {
      title: 'Si hay duda',
      says: [
        'Opérculos hundidos, oscuros o rotos, mal olor: cerrar enseguida y llamar. No ir a la siguiente colmena con la misma herramienta.',
        '¿No está claro qué se vio? Tomar una foto del panal y decirlo en la nota. A nadie le molesta una pregunta.',
        '“Favor de mirar esto” en una nota pone la colmena en la lista de un apicultor.',
        '¿Se tocó algo equivocado, o era otra colmena? “Corregirlo” está en cada anotación. Nada se pierde y nada es secreto.',
        'Falta de aire, hinchazón o mareo después de una picadura: dejarlo todo y pedir ayuda de inmediato.',
      ],
    },
    {
      title: 'Al final',
      says: [
        'Colmenas a las que no se llegó: decirlo. Mañana van primero, y nadie lo toma a mal.',
        '¿Sin señal? Lo que se escribió espera en este teléfono y se envía solo. La línea de arriba dice cuánto es.',
      ],
    },
  ],
}
