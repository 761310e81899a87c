/** What pages say while one types, and what a phone reports, in Spanish. */
import type { islands as English } from '../en/islands.ts'

export const islands: typeof English = {
  showThem: 'Mostrar',
  newer: 'Llegaron anotaciones más nuevas: mostrarlas',
  iSee: 'Entendido',
  signInTheyGo: (waiting) => `${waiting}: entrar, y se envían.`,
  roundNotHere: 'La ronda todavía no está en este teléfono: abrir Hoy con señal.',
  roundAsOf: (when) => `Este teléfono tiene la ronda del ${when}.`,
  promised: 'El navegador prometió conservarla.',
  mayClear: 'El navegador puede borrarla cuando le falta espacio; en la pantalla de inicio está más segura.',
  newerVersion: 'Hay una versión nueva lista. Lo que espera ser enviado pasa a ella.',
  useIt: 'Usarla',
  iKnow: 'Entendido',
  clearedNothing:
    'Este navegador borró lo que el teléfono guardaba. No había nada por enviar; la ronda se bajó otra vez.',
  cleared: (unsent, when) =>
    `Este navegador borró lo que el teléfono guardaba. ${unsent === 1 ? 'Se perdió 1 anotación' : `Se perdieron ${unsent} anotaciones`} sin enviar${when === null ? '' : `, la última del ${when}`}. Hay que ${unsent === 1 ? 'anotarla' : 'anotarlas'} otra vez. En la pantalla de inicio Resettle está más seguro.`,
  draftSaved:
    'Esto ya está guardado. Guardarlo otra vez no cambia nada; para cambiarlo, corregirlo en el diario.',
  draftBack: (when, photos) =>
    `Lo escrito ${when} está de vuelta${photos ? ', sin sus fotos: elegirlas otra vez' : ''}.`,
  emptyForm: 'Empezar con un formulario vacío',
  smaller: (n) => (n === 1 ? 'Haciéndola más pequeña…' : `Haciendo ${n} más pequeñas…`),
  unread: (names) => `Este navegador no puede leer como foto: ${names}.`,
  over: (most, over) => `Una anotación lleva ${most} fotos; ${over} quedaron fuera.`,
  photo: (n) => `Foto ${n}`,
  leaveOut: 'Quitar',
  copied: 'Copiado',
  notCopied: 'Este navegador no deja copiarlo',
  scan: {
    label: 'Leer una etiqueta',
    itsLabel: 'Leer su etiqueta',
    reading: 'Leyendo la etiqueta…',
    unread:
      'No se pudo leer ninguna etiqueta. Sostener el teléfono derecho sobre el código, tan cerca que llene media foto.',
    notOurs: 'Esa etiqueta no es de este libro.',
    right: (tag) => `✓ La etiqueta dice ${tag}: es la colmena correcta.`,
    wrong: (tag, wanted) => `Alto: la etiqueta dice ${tag}, y este es el formulario de ${wanted}. `,
    instead: (tag) => `Anotar mejor en ${tag}`,
  },
  photoSize: (n, kb) =>
    `${n === 1 ? '1 foto' : `${n} fotos`}, ${kb} kB. El lugar donde se tomaron ya no está en ellas.`,
}
