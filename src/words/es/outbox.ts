/** What waits on a phone, and pages that need signal, in Spanish. */
import type { outbox as English } from '../en/outbox.ts'

export const outbox: typeof English = {
  title: 'Sin señal',
  nothing: 'No hay nada por enviar',
  allIn: 'Todo lo que se anotó en este navegador está en el libro del apiario.',
  saveCopy: 'Guardar una copia como archivo',
  sendNow: 'Enviar ahora',
  signIn: 'Entrar',
  signInFirst: 'Entrar, y se envían',
  ended: 'La sesión se cerró. Nada se pierde: espera aquí hasta que vuelva a entrar.',
  how: {
    title: 'Trabajar sin señal',
    once: (intakes) =>
      `Abrir Hoy una vez con señal. Desde entonces la ronda funciona sin ella: Hoy, las colmenas, anotar${intakes ? ', los ingresos' : ''}. El plan se hace de nuevo en el teléfono cada día.`,
    waits: 'Lo que se anota espera aquí y se envía cuando vuelve la señal. Espera lo que haga falta.',
    install:
      'Poner Resettle en la pantalla de inicio (“Instalar” o “Agregar a la pantalla de inicio” en el menú del navegador). Un navegador puede borrar lo que guarda una simple página tras unos días sin visitarla.',
    https:
      'Hace falta una dirección que empiece por https:// . En una dirección http:// de la red local los navegadores no guardan nada, y todo necesita señal.',
  },
  theirs: (owner) => `Se envía cuando ${owner} entre en este teléfono.`,
  stuck: (owner) => `No aceptada: ${owner} tiene que corregirla en este teléfono.`,
  notAccepted: 'No aceptada',
  it: 'La anotación',
  tag: 'Etiqueta',
  colony: 'Colonia',
  kept: (when, by) => `Guardada: ${when}; firmada: ${by}.`,
  resting: 'Se envía cuando esté corregida la otra de la que depende.',
  doubt: {
    asks: (on) => `¿Fue el ${on}?`,
    says: (phone, yard) =>
      `Este teléfono decía ${phone} cuando en el apiario era ${yard}. Se envía en cuanto se confirme.`,
    yes: (on) => `Sí, ${on}`,
    of: (tag) => `, de ${tag}`,
  },
  mend: 'Corregirla',
  change: 'Cambiarla',
  again: 'Enviarla como está',
  takeOut: 'Quitarla',
  takeBack: 'Anularla',
  sheet: {
    theirs: (owner, kills) => `Una hoja de rescate de ${owner}${kills && `: ${kills}`}.`,
    what: (kills) => `Hoja de rescate${kills && `: ${kills}`}`,
    kept: (when) => `Guardada aquí desde ${when}.`,
    again: 'Se envía otra vez cuando haya señal.',
    over: 'Reemplazar la otra con la mía',
    takeOut: (what) => (what ? `Quitar lo mío: ${what}` : what === null ? 'Quitar la mía' : 'Dejarlo así'),
    out: (what) =>
      what === null
        ? 'Se quita lo que escribió en ella.'
        : `Se quita lo suyo: ${what}. Queda lo del colmenar.`,
    stays: (found) => (found === '' ? 'Lo demás queda y se envía.' : `Esto queda y se envía: ${found}.`),
  },
  takingOut: {
    back: 'Por enviar',
    asks: '¿Quitarla sin enviarla?',
    gone: 'Solo este teléfono la conoce. Una vez quitada no se puede recuperar.',
    leave: 'Dejarla',
  },
  signingOut: {
    title: '¿Salir?',
    stays: 'Si sale ahora, se queda en este teléfono: nadie más puede enviarlo.',
    sendFirst: 'Enviarlas primero',
    anyway: 'Salir de todos modos',
  },
  unlisted: {
    says: 'Lo que espera aparece aquí, y se envía, en cuanto el apiario le diga a este teléfono quién entró.',
    again: 'Mirar otra vez',
    job: 'Puede ser de este trabajo. La página se abre cuando llegue la ronda.',
  },
  noSignal: {
    title: 'Sin señal',
    heading: 'Esta página necesita señal',
    keeps:
      'El servidor del apiario no responde, y este teléfono guarda solo la ronda: las colmenas del apiario, y lo que se anota.',
    session: 'Si el servidor responde pero la sesión se cerró, para entrar también hace falta señal.',
    whatWaits: 'Lo que espera por enviar',
  },
  notKept: {
    title: 'No se guardó',
    heading: 'Esto no se guardó',
    says: 'El servidor del apiario no responde, y este teléfono no tenía espacio para guardarlo, o no puede. Volver atrás: lo escrito sigue en el formulario. Hacer espacio en el teléfono, o probar otra vez con señal.',
  },
}
