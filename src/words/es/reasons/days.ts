/** Days within sentences, and the clauses that stand in them. */
import type { Day } from '../../../days.ts'

import {
  type Cause,
  type Deed,
  type CAUSES as EnglishCauses,
  type DEEDS as EnglishDeeds,
  wordsOf,
} from '../../../recovery/index.ts'
import { capital } from '../../capital.ts'
import { dates } from '../dates.ts'

/** 'dom 10 may' */
export const d = (day: Day): string => dates.dayAlone(day)

const GIFT: Record<string, string> = {
  'egg-frame': 'un cuadro con huevos',
  'open-brood': 'un cuadro de cría abierta',
  'capped-brood': 'un cuadro de cría operculada',
  combs: 'panales',
  bees: 'abejas',
  'queen-cell': 'una celda real',
}

const cage = (how: 'dead' | 'rejected'): string =>
  how === 'dead' ? 'se encontró muerta' : 'fue rechazada por las abejas'

const CAUSES: typeof EnglishCauses = {
  'given-queen-lost': ({ how, on }) => `la reina que se introdujo ${cage(how)} el ${d(on)}`,
  'bought-queen-lost': ({ how, on }) => `la reina comprada ${cage(how)} el ${d(on)}`,
  'own-queen-lost-late': ({ how, on }) =>
    `su propia reina ${cage(how)} el ${d(on)}, demasiado tarde para la cría que vino con ellas`,
  'queen-lost': ({ how, on }) => `la reina ${cage(how)} el ${d(on)}`,
  'another-likely': () =>
    '. Es probable que haya otra reina: buscar huevos, una reina virgen y celdas reales antes de dar un cuadro con huevos',
  'trap-takes-foragers': () => 'una trampa recoge pecoreadoras, y nadie vio entrar a una reina',
  'lost-at-removal': () => 'la reina se perdió en el rescate',
  'stopped-laying': ({ about }) =>
    `la reina que puso hasta alrededor del ${d(about)} dejó de poner o ya no está`,
  'drone-layer': () =>
    'solo hay cría de zángano en celdas de obrera: la reina no está fecundada, o está mal fecundada. Buscarla y sacarla. ¿Hay también opérculos planos de obrera, una mancha de cría mezclada, como la de una reina que acaba de empezar? Entonces revisar otra vez en una semana antes de hacerlo',
  'test-frame-and-no-eggs': ({ on }) => `no hay celdas en el cuadro con huevos, ni huevos el ${d(on)}`,
  neither: ({ on }) => `no hay huevos ni celdas reales el ${d(on)}`,
  'no-living-brood': ({ on }) => `, y el ${d(on)} no quedaba cría joven viva`,
  'no-cells': ({ on }) => `, y no hay celdas reales el ${d(on)}`,
  'raised-not-laying': ({ on }) =>
    `la reina criada aquí no había puesto huevos el ${d(on)}, pasado el último día en que se esperaban`,
  'cells-gone': ({ on }) =>
    `las celdas reales ya no estaban el ${d(on)}, antes de que pudiera nacer una reina, y no había huevos`,
  'cells-dead': ({ on }) => `las celdas reales están muertas, todavía cerradas el ${d(on)}`,
  'finished-seen': ({ on, days }) =>
    `la reina se vio el ${d(on)}, no ha puesto nada en los ${days} días desde el rescate y ya no sirve. Buscarla y sacarla`,
  finished: ({ days }) =>
    `la reina puso hasta el rescate, no ha puesto nada en los ${days} días desde entonces y ya no sirve`,
  'seen-not-laying': ({ since }) =>
    `la reina vista desde el ${d(since)} no ha puesto huevos. Buscarla y sacarla`,
  'let-out-not-laying': ({ bought, out, by }) =>
    `${bought ? 'la reina comprada' : 'su reina'} salió de la jaula el ${d(out)} y no había huevos el ${d(by)}`,
  'drone-caps': ({ on }) =>
    `opérculos abultados de zángano en celdas de obrera el ${d(on)}, y no se vio reina`,
  'several-eggs-again': ({ on }) => `otra vez varios huevos por celda el ${d(on)}`,
  'several-eggs': ({ on }) => `varios huevos por celda el ${d(on)}, y ninguna reina puede estar poniendo`,
}

const DEEDS: typeof EnglishDeeds = {
  got: ({ what, tag }) => `recibió ${GIFT[what] ?? what} de ${tag}`,
  gave: ({ what, tag }) => `dio ${GIFT[what] ?? what} a ${tag}`,
  'took-in': ({ tag }) => `se unió con ${tag}, que entró en ella`,
  'united-into': ({ tag }) => `se unió a ${tag}`,
  'stood-beside': ({ tag }) => `estuvo junto a ${tag} mientras había pillaje`,
  'as-said': ({ how }) => how,
}

/** Why there is no queen, as a clause. */
export const causeWords = (causes: readonly Cause[]): string => causes.map((c) => wordsOf(CAUSES, c)).join('')

/** The same at the beginning of a sentence. */
export const because = (causes: readonly Cause[]): string => capital(causeWords(causes))

/** What bound it to another: 'dio un cuadro con huevos a W-7'. */
export const deedWords = (deed: Deed): string => wordsOf(DEEDS, deed)

/** '2.5 cuadros con abejas' */
export const frameCount = (n: number): string =>
  `${Math.round(n * 4) / 4} ${n === 1 ? 'cuadro' : 'cuadros'} con abejas`
