/** What went wrong, and working without signal, in Spanish. */
import type { trouble as English } from '../en/trouble.ts'

export const trouble: typeof English = {
  today: 'Hoy',
  theYard: 'El apiario',
  noPage: {
    title: 'Página inexistente',
    heading: 'No hay tal página',
    why: 'Puede que la dirección esté mal escrita o sea de una versión anterior.',
  },
  notYours: {
    title: 'No se puede abrir',
    heading: (whose) => `Esta página es ${whose}`,
    why: (name) =>
      `La sesión abierta es de ${name}. Si hace falta, pedirla a un responsable de este apiario.`,
    beekeepers: 'para apicultores y responsables',
    operators: 'para responsables',
  },
  noEntry: {
    title: 'Anotación inexistente',
    heading: 'No hay tal anotación en el diario',
    why: 'Las anotaciones nunca se borran, así que la dirección debe estar mal. Buscar la colonia, y la anotación en su diario.',
  },
  noColony: {
    title: 'Colonia inexistente',
    heading: (tag) => `Ninguna colonia tiene la etiqueta “${tag}”`,
    nothingLike:
      'Ninguna etiqueta de este libro se parece. Revisar lo pintado en la colmena, o anotar su ingreso si todavía no lo tiene.',
    didYouMean: '¿Se quiso decir una de estas?',
    left: ' (dejó el apiario)',
    all: 'Todas las colonias',
    log: 'Anotar un ingreso',
  },
  tooLarge: {
    title: 'Demasiado de una vez',
    heading: 'Es demasiado de una vez',
    why: 'Lo enviado es más grande de lo que este servidor acepta de un navegador. No se guardó nada.',
    shorten: 'Acortar la nota, y guardar otra vez.',
  },
  broken: {
    title: 'Algo falló',
    heading: 'Algo falló de nuestro lado',
    posted:
      'Lo enviado no se guardó. Volver atrás: el formulario conserva lo escrito, y guardarlo otra vez no lo duplica.',
    notMade: 'No se pudo hacer la página. El diario no cambia por esto.',
    full: 'El disco del servidor está lleno. No se guardó nada. Hacer espacio y guardar otra vez: lo guardado antes está a salvo.',
    busy: 'Otro programa está escribiendo el libro ahora mismo. No se guardó nada. Probar otra vez en un momento.',
    damaged:
      'El archivo del libro no se puede leer o escribir bien. Parar el servidor y ejecutar “resettle verify”.',
    bug: 'El registro del servidor dice qué pasó.',
  },
  noSignal: {
    title: 'Sin señal',
    heading: 'Esta página necesita señal',
    why: 'El servidor del apiario no responde, y este teléfono solo guarda la ronda: las colmenas del apiario, y anotar.',
    signIn: 'Si el servidor responde pero la sesión se cerró, entrar también necesita señal.',
    waits: 'Lo que espera ser enviado',
  },
  notKept: {
    title: 'No se guardó',
    heading: 'Esto no se guardó',
    why: 'El servidor del apiario no responde, y este teléfono no tuvo espacio para guardarlo, o no puede. Volver atrás: lo escrito sigue en el formulario. Hacer espacio en el teléfono, o probar otra vez con señal.',
  },
}
