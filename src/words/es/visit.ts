/** At the box, in Spanish. */
import type { visit as English } from '../en/visit.ts'

const nothingNew = (what: string, day: string): string =>
  `${what} no prueba nada nuevo hasta después del ${day}: puede venir de cría que llegó con ellas o que se dio.`

export const visit: typeof English = {
  proof: {
    suspected:
      'Se sospecha una enfermedad de la cría. Nada está probado, pero la colonia queda retenida: no se mueve, no se une y no se saca nada de ella hasta que alguien anote quién la descartó.',
    eggsUntil: (day) =>
      `Los huevos no prueban nada nuevo hasta después del ${day}: pueden venir de cría que llegó con ellas o que se dio.`,
    openUntil: (day) => nothingNew('La cría abierta', day),
    cappedUntil: (day) => nothingNew('La cría operculada de obrera', day),
    phase: (now, before) => `${now}. Antes de esta visita: ${before}.`,
    spans: {
      emergence: 'La reina sale de su celda',
      firstEgg: 'Primer huevo',
      workerBroodProof: 'Prueba por cría operculada de obrera',
    },
    answers: (names) => `Responde: ${names}.`,
    next: (name, days) => `Después: ${name}, ${days}.`,
  },
  cautions: {
    suspected:
      'Sospecha de enfermedad de la cría: dejarla cerrada, limpiar herramientas y guantes antes de la siguiente colmena, no sacar panal ni cría.',
    fierce: (temper) =>
      `Brava la última vez (${temper} de 5): velo completo y guantes, y alguien al alcance de la voz. Donde hay abejas africanizadas deciden las normas locales.`,
    quiet:
      'Dejar la tapa puesta: una reina joven puede estar saliendo de su celda, o volando para fecundarse.',
    sprayed: 'Rociada antes del rescate: no guardar su panal ni su miel, ni dárselos a las abejas.',
    buyQueen:
      'Buscar primero una virgen y celdas reales, y cortar las celdas: cualquiera de ellas mata a una reina comprada.',
    giveFrame: 'Tomar el cuadro de una colonia en la que se buscaron enfermedades de la cría y no se vieron.',
    unite:
      'Revisar primero ambas por enfermedades de la cría. Las obreras ponedoras matan a una reina: unir solo con una colonia fuerte que tenga reina.',
    hasQueen: {
      'awaiting-release': 'tiene una reina en jaula',
      'awaiting-eggs': 'tiene reina',
      laying: 'tiene una reina en postura',
      queenright: 'tiene una reina en postura',
      rearing: 'está criando una reina',
      'awaiting-new-queen': 'puede tener una reina joven',
      'queen-unknown': 'puede tener reina',
    },
    uniting: (tag, has) =>
      `${tag} ${has}. Si la colonia a la que se une también tiene una, sacar la peor antes de unirlas, y las celdas también: dos reinas pelean, y las dos pueden perderse.`,
    warmth: (full, short) => `Revisión completa desde ${full}; una corta desde ${short}.`,
  },
  moving: {
    foragers: (distance) =>
      `A menos de ${distance}, más o menos, las pecoreadoras regresan al sitio viejo y se pierden. Mover al anochecer, con la colmena cerrada, y poner ramas delante de la piquera para que aprendan el lugar de nuevo.`,
    youngQueen: (days) =>
      `Una reina joven que ya aprendió el lugar viejo puede no regresar de su vuelo: ${days === null ? 'mover antes de que vuele, o esperar a que ponga' : `no mover en estos días, si puede esperar: ${days}`}.`,
    treatingCaged:
      'Hay una reina en jaula ahí dentro: el ácido fórmico, el timol y similares pueden matarla. Atenderla primero.',
    treatingYoung:
      'Puede haber una reina joven ahí dentro: el ácido fórmico, el timol y similares pueden costarle la vida. Esperar a que ponga, a menos que los ácaros no puedan esperar.',
    treated: (day, product) => `Tratada el ${day}${product === undefined ? '' : ` (${product})`}.`,
    washAgain: (days) => `Otro lavado: ${days}.`,
    noWithdrawal: 'No está anotado el tiempo de retiro: lo dice la etiqueta.',
    withdrawal: (day) => `Retiro hasta el ${day}.`,
  },
  doubt: {
    correct: 'corregirla en su diario',
    tell: 'avisar a un apicultor',
    ifWrong: (way) => `Si una anotación está equivocada, ${way}.`,
    lookAgain: (days, way) => `Revisar una vez más ${days}; o si una anotación está equivocada, ${way}.`,
  },
  bound: (from, how) =>
    `Ligada a ${from}, en la que se sospecha una enfermedad de la cría: ${how}. Retenida.`,
}
