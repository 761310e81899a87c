/** Pages that say what went wrong, in Spanish. */
import type { errors as English } from '../en/errors.ts'

export const errors: typeof English = {
  theYard: 'El apiario',
  noPage: {
    title: 'Página no encontrada',
    heading: 'Esta página no existe',
    says: 'La dirección puede estar mal escrita o ser de una versión anterior.',
  },
  notYours: {
    beekeepers: 'para apicultores y responsables',
    operators: 'para responsables',
    title: 'No se puede abrir',
    heading: () => 'Esta página es de otras personas del apiario',
    says: (name) =>
      `La sesión es de ${name}. Si hace falta esta página, pedirla a quien es responsable del apiario.`,
  },
  noEntry: {
    title: 'Anotación no encontrada',
    heading: 'Esta anotación no está en el diario',
    says: 'Las anotaciones nunca se borran: la dirección debe de estar mal. Buscar la colonia, y la anotación en su diario.',
  },
  noColony: {
    title: 'Colonia no encontrada',
    heading: (tag) => `Ninguna colonia tiene la etiqueta “${tag}”`,
    nothingLike:
      'Ninguna etiqueta de este libro se le parece. Mirar qué está pintado en la colmena, o anotar su ingreso si todavía no lo tiene.',
    didYouMean: '¿Es una de estas?',
    left: '(dejó el apiario)',
    all: 'Todas las colonias',
    logIntake: 'Anotar un ingreso',
  },
  tooMany: {
    title: 'Demasiados intentos',
    says: (wait) =>
      `Desde su red se abrieron muchos enlaces que no sirven, así que este no se buscó. ${wait} Un enlace que sirve se abre de todos modos: revisar que esté copiado entero.`,
  },
  elsewhere: {
    title: 'Abrir la dirección del apiario',
    heading: 'Esto se envió desde otra dirección',
    says: [
      'No se guardó nada. Este apiario solo acepta lo escrito en sus propias páginas, en ',
      '. Abrir esa dirección y hacerlo ahí otra vez.',
    ],
    proxy:
      'Si no es la dirección que se usa, hay un proxy en medio: quien maneja este servidor pone en RESETTLE_URL la dirección que se usa, y lo arranca de nuevo.',
    open: (address) => `Abrir ${address}`,
  },
  tooLarge: {
    title: 'Demasiado de una vez',
    heading: 'Es demasiado de una vez',
    says: 'Lo que se envió es más grande de lo que este servidor acepta de un navegador. No se guardó nada.',
    fields: (most) => `El formulario tiene más de ${most} campos, así que no se leyó. No se guardó nada.`,
    shorten: 'Acortar la nota, y guardar otra vez.',
  },
  broken: {
    title: 'Algo falló',
    heading: 'Algo falló de nuestro lado',
    posted:
      'Lo enviado no se guardó. Volver atrás: el formulario todavía tiene lo escrito, y guardarlo otra vez no lo duplica.',
    notMade: 'La página no se pudo hacer. El diario no se tocó.',
    full: 'El disco del servidor está lleno. No se guardó nada. Hacer espacio en él y guardar otra vez: lo guardado antes está a salvo.',
    busy: 'Otro programa está escribiendo en el libro en este momento. No se guardó nada. Probar otra vez en un momento.',
    damaged:
      'El archivo del libro no se puede leer o escribir bien. Parar el servidor y ejecutar en él “resettle verify”.',
    bug: 'El registro del servidor dice qué pasó.',
  },
}
