/** A colony’s page, in Spanish. */
import type { colony as English } from '../en/colony.ts'

/** 'Juno e Isolde': before the sound of an i, y becomes e. */
const and = (names: readonly string[]): string => {
  const last = names.at(-1) ?? ''
  return names.length < 2
    ? last
    : `${names.slice(0, -1).join(', ')} ${/^h?[ií](?![aeou])/i.test(last) ? 'e' : 'y'} ${last}`
}

export const colony: typeof English = {
  day: (n) => `Día ${n}`,
  stayed: (n, until) => `Estuvo ${n} días, hasta el ${until}`,
  cameIn: (type, day) => `${type}, llegó el ${day}`,
  doesNotFit: 'Esto no concuerda',
  onThisPage: 'En esta página',
  jumps: { journal: 'Diario', checks: 'Revisiones', dates: 'Fechas', likely: 'Probabilidades y fuerza' },
  quietTime: (days) => `Tiempo de calma ${days}: mirar solo por fuera.`,
  itLives: 'Está viva: anotar una visita',
  recordVisit: 'Anotar una visita',
  itLeft: 'Dejó el apiario',
  otherStand: 'Otro sitio',
  note: 'Nota',
  addNote: 'Añadir una nota',
  forOutside: 'Para los de afuera',
  letter: 'Carta al cliente',
  keeperSheet: 'Hoja para quien la recibe',
  moveRecord: 'Registro de salida',
  howNow: '¿Cómo está ahora?',
  health: 'Sanidad y alimento',
  changes: 'Historial de cambios',
  removalSheet: 'Hoja del rescate',
  checks: {
    count: (now, toCome) => `${now} ahora, ${toCome} por venir`,
    past: (n) => `Respondidas o que ya no se preguntan (${n})`,
    notWhileShut: (from) => `No mientras la tapa se queda puesta: desde el ${from}.`,
    shutFrom: (day, from) => `La tapa se queda puesta desde el ${day}: hacerlo antes, o desde el ${from}.`,
  },
  ready: {
    fold: 'La salida, y las fechas',
    yes: 'Lista para salir',
    notYet: 'Todavía no está lista para salir',
    missing: 'Todavía falta:',
    undated: ' (todavía no se puede decir una fecha)',
    today: ' (se puede cumplir hoy)',
    earliest: (day) => ` (no antes del ${day})`,
    expected: (span) => `Solo por las fechas de la cría, salida: ${span}.`,
    dayThirty:
      'El día 30 por sí solo no prueba nada: una colonia que crió su propia reina suele tener cría operculada de obrera apenas hacia el día 32 a 34. Una revisión limpia tampoco descarta nada: más o menos una de cada cinco colonias que llevan loque la muestra en un mes. Las normas para mover abejas son locales.',
  },
  dates: {
    title: 'Lo que dicen las fechas',
    cellsUntil: 'Todavía se pueden empezar celdas reales hasta el',
    emergence: 'La reina sale de su celda',
    firstEgg: 'Primer huevo',
    workerBroodProof: 'Cría operculada de obrera como prueba',
    layingWorkerRisk: 'Riesgo de obreras ponedoras',
    broodless: 'Sin cría operculada (días para tratar contra ácaros)',
    provesNothing: {
      eggs: (until) => `Hasta el ${until}, los huevos no prueban nada nuevo`,
      open: (until) => `Hasta el ${until}, la cría abierta no prueba nada nuevo`,
      capped: (until) => `Hasta el ${until}, la cría operculada no prueba nada nuevo`,
    },
    otherBrood:
      'Puede venir de otra cría: la que llegó con ellas, o la que se dio. En panal construido desde el ingreso prueba de todos modos que una reina pone.',
    treatment:
      'Un tratamiento en esos días alcanza a los ácaros, que no pueden esconderse en las celdas. Respirador, guantes, y la etiqueta del producto registrado en el lugar: la etiqueta es la ley.',
  },
  saved: {
    onStandToo: (tags, stand) =>
      `En el sitio ${stand} ${tags.length === 1 ? 'está' : 'están'} también ${and(tags)}.`,
    unsent: 'Guardado en este teléfono, todavía sin enviar:',
    inBook: 'En el libro:',
    signed: (what, when, by) => `${what}, ${when}, firmado por ${by}.`,
    backToToday: 'Volver a hoy',
    logAnother: 'Anotar otro',
    correctIt: 'Corregirlo',
    offTheRound: (tag) => `${tag} ya no está en la ronda.`,
    nextPapers: 'Lo que sigue: sus papeles para quien la recibe, y una carta al cliente.',
    nextCustomer: 'Lo que sigue: avisar al cliente.',
    sayNow: 'Decirlo ahora',
    planNow: (action) => `El plan ahora: ${action}.`,
    lidFirst: (day) => `La tapa se quita por primera vez el ${day}.`,
    beforeThat: 'Lo que viene antes se mira por fuera.',
    step: (name, days, best) => `${name}: ${days}, mejor el ${best}`,
    afterQuiet: (name, from) => `${name}: desde el ${from}, cuando se puede volver a quitar la tapa`,
  },
  shared: {
    looked: (names, day) =>
      `${['', '', 'Dos', 'Tres', 'Cuatro', 'Cinco'][names.length] ?? names.length} personas la miraron el ${day}: ${and(names)}.`,
    whatNow:
      'Lo que vieron todas está en el plan. Si era la misma mirada anotada dos veces, anular una de ellas.',
  },
  held: {
    suspected: 'Retenida: se sospecha una enfermedad de la cría',
    bound: (tag) => `Retenida: ligada a ${tag}`,
    boundSuspected: (tag) => `Retenida: ligada a ${tag}, en la que se sospecha una enfermedad de la cría`,
    untilCleared:
      'Hasta que esté anotado quién descartó la enfermedad, aquí no se acepta un traslado, una salida ni una unión.',
    untilThen: 'Hasta entonces aquí no se acepta un traslado, una salida ni una unión.',
    did: (day, deed) => `${day}: ${deed}`,
    look: (days) =>
      `No moverla, no unirla y no dar nada de ella. Revisar cada cuadro de cría, sin abejas encima, ${days}, y anotar las señales: eso la libera.`,
  },
  journal: {
    title: 'Diario',
    older: (n) => `${n} ${n === 1 ? 'anotación anterior' : 'anotaciones anteriores'}`,
    joined: (tag) => `${tag} se unió a ella`,
    as: ', como cuenta ',
    journalOf: (tag) => `el diario de ${tag}`,
    tells: '.',
    entered: (by, on) => `anotado${by === null ? '' : ` por ${by}`}${on === null ? '' : ` el ${on}`}`,
    correction: 'una corrección',
    waits: 'Espera en este teléfono para enviarse',
    takenBack: (by, on, reason) => `Anulado por ${by}, ${on}${reason === null ? '' : `: ${reason}`}`,
    corrected: (by, on) => `Corregido por ${by}, ${on}`,
    correct: 'Corregir',
    takeBack: 'Anular',
    which: (title, day) => `: ${title}, ${day}`,
  },
  photo: {
    title: (tag) => `${tag}, foto`,
    heading: (tag) => `Foto de ${tag}`,
    of: (kind, day, by) => `Con ${kind} del ${day}, de ${by}`,
    nth: (n, all) => `; ${n} de ${all}`,
    alt: (tag, day) => `${tag}, ${day}; no está aquí sin señal`,
    others: 'Fotos de la misma anotación',
    before: 'Foto anterior',
    next: 'Foto siguiente',
    back: (tag) => `Volver a ${tag}`,
  },
}
