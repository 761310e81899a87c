/** Signing in, and one's own account, in Spanish. */
import type { Role } from '../../people/index.ts'
import type { Words } from '../catalogue.ts'

const ROLES: Record<Role, string> = {
  operator: 'Responsable',
  beekeeper: 'Apicultor o apicultora',
  helper: 'Ayudante',
}

const keys = (n: number): string =>
  n === 1 ? '1 clave o dirección de calendario' : `${n} claves y direcciones de calendario`

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

export const account: Words['account'] = {
  title: 'Su cuenta',
  signedIn: (role, browsers) =>
    `${ROLES[role]}, con sesión abierta ${browsers === 1 ? 'solo en este navegador' : `en ${browsers} navegadores`}. En un navegador que no se usa durante un mes, la sesión se cierra.`,
  changed: 'La frase de acceso ya se cambió. En todos los demás navegadores se cerró la sesión.',
  keysBack: 'Las claves y las direcciones de calendario están anuladas.',
  signOut: 'Salir',
  signOutEverywhere: 'Salir en todas partes',
  takeBack: (n) =>
    `Anular también ${keys(n)}: si no, ${n === 1 ? 'sigue funcionando' : 'siguen funcionando'}`,
  language: {
    title: 'Idioma',
    hint: 'Para las páginas de la ronda; las demás están en inglés.',
    save: 'Leer en este idioma',
    fromBrowser: 'El del navegador',
    saved: 'Desde ahora las páginas de la ronda están en este idioma.',
  },
  change: 'Cambiar la frase de acceso',
  notChanged: 'Todavía no está cambiada',
  old: 'Frase de acceso actual',
  next: 'Frase de acceso nueva',
  nextHint:
    'Al menos 12 caracteres. Tres o cuatro palabras que no tienen nada que ver entre sí son fáciles de recordar y difíciles de adivinar.',
  again: 'Frase de acceso nueva, otra vez',
  notTheSame: 'no es igual a la de arriba',
  save: 'Cambiarla',
}

export const invite: Words['invite'] = {
  hello: (name) => `Hola, ${name}`,
  can: {
    helper: 'Como ayudante se ve qué colmenas hay que abrir hoy y por qué, y se anota lo que se encuentra.',
    beekeeper:
      'Como apicultor o apicultora se anotan ingresos, visitas y salidas, y se corrige lo que está mal en el diario.',
    operator:
      'Como responsable se puede hacer todo aquí, también lo de las personas, las reglas y las copias de seguridad.',
  },
  choose: 'Elegir una frase de acceso',
  again: 'La misma, otra vez',
  notChosen: 'Todavía no está elegida',
  comeIn: 'Elegirla y entrar',
  after: (name) =>
    `Se entra con el nombre ${name}. En este teléfono la sesión queda abierta un mes después de cada visita. Una vez elegida la frase, el enlace de la invitación ya no sirve.`,
}
