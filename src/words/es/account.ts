/** One’s own account, in Spanish. */
import type { Role } from '../../people/index.ts'
import type { Words } from '../catalogue.ts'

const ROLES: Record<Role, string> = {
  operator: 'Responsable',
  beekeeper: 'Apicultor o apicultora',
  helper: 'Ayudante',
}

const keys = (n: number): string =>
  n === 1 ? '1 clave o dirección de calendario' : `${n} claves y direcciones de calendario`

export const account: Words['account'] = {
  title: 'Su cuenta',
  signedIn: (role, browsers) =>
    `${ROLES[role]}, con sesión abierta ${browsers === 1 ? 'solo en este navegador' : `en ${browsers} navegadores`}. En un navegador que no se usa durante un mes, la sesión se cierra.`,
  changed: 'La frase de acceso ya se cambió. En todos los demás navegadores se cerró la sesión.',
  keysBack: 'Las claves y las direcciones de calendario están anuladas.',
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
