/** Correcting an entry, taking it back, moving it to the right box, moving a colony, in Spanish. */
import type { corrections as English } from '../en/corrections.ts'

export const corrections: typeof English = {
  named: (kind, day) => `${kind} (${day})`,
  correct: (what) => `Corregir ${what}`,
  change: (what) => `Cambiar ${what}`,
  saveCorrection: 'Guardar la corrección',
  saveChange: 'Guardar el cambio',
  asItStands: (tag) =>
    `La anotación de ${tag} como está ahora. Lo que decía antes se queda en el diario, tachado.`,
  notSent: (tag) => `La anotación de ${tag}, todavía sin enviar. Lo que decía antes no se guarda.`,
  waiting: 'Por enviar',
  takeBack: (what) => `Anular ${what}`,
  takeItBack: 'Anular',
  intakeBack: (tag) =>
    `Anular el ingreso saca ${tag} del apiario, como si nunca se hubiera anotado. Si solo hay algo mal en él, corregirlo.`,
  didNotHappen: 'Para lo que no ocurrió. El plan se hace otra vez sin eso.',
  anotherThan: (tag) => `No era ${tag}, era otra colmena`,
  otherBox: {
    title: (kind, day) => `${kind} (${day}) era en otra colmena`,
    button: 'Pasarlo allá',
    says: (tag) =>
      `Se anula en ${tag}, donde queda tachado en el diario, y se anota en la colmena correcta. Los dos planes se hacen otra vez.`,
    to: 'La colmena correcta',
    toHint: 'Su etiqueta',
    along: 'Lo que va con eso',
    reason: (tag) => `Era otra colmena: ${tag}`,
  },
  move: {
    title: (tag) => `${tag} a otro sitio`,
    button: 'Guardar el traslado',
    now: (place) => `Ahora en ${place}.`,
    newYard: 'Un apiario nuevo',
  },
  intake: {
    tag: 'Etiqueta en la colmena',
    whereFrom: 'De dónde',
    queenAndBrood: 'Reina y cría',
    theBox: 'La colmena',
    fromSheet: 'Lo que dice la hoja del rescate: revisarlo, o añadir algo',
    howTaken: 'Cliente; cómo y cuándo se rescató',
    seldom: 'Reina virgen, marcada o con el ala cortada; cría enfriada o muerta',
    weights: 'Peso, abejas muertas, panal sujeto, temperamento',
    noteAndPhotos: 'Nota y fotos',
    broodAlong: 'Panal con cría que llegó, en cuadros. No contado no es lo mismo que nada.',
  },
}
