/** Signing in, in Spanish. */
import type { Words } from '../catalogue.ts'

export const signIn: Words['signIn'] = {
  title: 'Entrar',
  name: 'Nombre',
  passphrase: 'Frase de acceso',
  refused: 'No se pudo entrar',
  wrong: 'El nombre o la frase de acceso no es correcto.',
  tooMany: (seconds) =>
    `Demasiados intentos: esperar ${seconds < 90 ? `${seconds} segundos` : `${Math.ceil(seconds / 60)} minutos`} y probar de nuevo.`,
  noAccount:
    '¿Sin cuenta, o frase de acceso olvidada? Quien es responsable de este apiario puede dar un enlace para elegir una. El enlace sirve una sola vez, durante una semana; después hay que pedir otro.',
  language: 'Idioma',
  demo: {
    title: 'Este apiario es inventado',
    about:
      'Nada en él es real, y desaparece cuando la demostración termina. Se puede mirar como una de sus personas:',
    roles: {
      operator: 'responsable: ve todo y cuida de las personas y las copias de seguridad',
      beekeeper: 'apicultora: anota los ingresos desde el camión, registra y corrige',
      helper: 'ayudante: hace la ronda en Marl Hollow',
    },
  },
  again: {
    title: 'Primero hay que entrar',
    nothingSaved: 'La sesión no está abierta, o ya se cerró. No se guardó nada.',
    notLost:
      'Lo escrito no se pierde: entrar con este enlace, que se abre al lado de esta página. Luego volver aquí, ir una página atrás y guardar de nuevo.',
  },
}
