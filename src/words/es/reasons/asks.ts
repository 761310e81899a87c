/** Why a question is asked, in Spanish. */
import type { ASKS as English } from '../../../recovery/index.ts'
import { because, causeWords, d, frameCount } from './days.ts'

export const ASKS: typeof English = {
  'first-days': () => '¿Vuelan, tienen alimento, hay abejas muertas, o se fueron? La tapa se queda puesta.',
  'load-unknown': () => '¿Cuántos ácaros por cada 100 abejas? Nadie conoce todavía la carga de esta colonia.',
  'combs-tied': () => '¿Están pegados los panales a sus cuadros? Entonces se quitan las ligas.',
  'first-brood-check': ({ lastEgg }) =>
    `¿Huevos, celdas reales, o ninguno? El último huevo de la reina anterior en este panal se puso a más tardar el ${d(lastEgg)}; desde el cuarto día los huevos solo pueden ser nuevos, y las celdas muestran si ella falta.`,
  'caged-at-removal': ({ on }) =>
    `¿Salió la reina de su jaula, y la aceptan las abejas? Se enjauló ${on === null ? 'al ingreso' : `el ${d(on)}, en el rescate`}.`,
  'caged-given': ({ on, who }) =>
    `¿Salió la reina de su jaula, y la aceptan las abejas? Una reina ${who === 'virgin' ? 'virgen' : 'fecundada'} se introdujo enjaulada el ${d(on)}.`,
  'no-young-brood': (p) =>
    `${because(p.because)}, y no vino cría joven: solo pueden criar una reina con huevos que se les den.`,
  'give-eggs': (p) =>
    `${because(p.because)}. Dar un cuadro con huevos: crían una reina de él, o muestran que ya hay una.`,
  'bought-failed-unite': (p) =>
    `${because(p.because)}. También la reina comprada fracasó: unir la colonia con otra que tenga reina.`,
  'buy-again': (p) =>
    `${because(p.because)}. Solo si todavía es fuerte y la época lo permite, en lugar de unirla: buscar una reina virgen y celdas reales, y después introducir otra reina fecundada.`,
  buy: (p) =>
    `${because(p.because)}. Buscar primero una reina virgen y celdas reales; después se introduce una reina fecundada.`,
  'did-treatment-work': ({ on }) =>
    `¿Funcionó el tratamiento del ${d(on)}? Hacer otro lavado de diez a catorce días después.`,
  'wash-again-later': ({ on, per100 }) =>
    `¿Cuántos ácaros por cada 100 abejas ahora? El lavado del ${d(on)} dio ${per100.toFixed(1)}, cuando muchos estaban todavía bajo los opérculos.`,
  'cells-on-frame': ({ on }) =>
    `¿Hay celdas reales en el cuadro con huevos dado el ${d(on)}? Con celdas: no tienen reina y crían una. Sin celdas: se portan como si tuvieran reina.`,
  'does-she-lay': ({ on }) =>
    `¿Pone huevos? Salió de la jaula el ${d(on)}; una reina en buen estado pone en diez días como mucho.`,
  'cage-and-eggs': ({ since, on }) =>
    `Se puso una reina en jaula el ${d(since)}, y el ${d(on)} había huevos. ¿Sigue ella dentro? Entonces hay dos reinas: sacar una. ¿O ya salió, y los huevos son suyos?`,
  'worker-caps': ({ on }) =>
    `Se vieron huevos nuevos el ${d(on)}: ahora los opérculos planos de obrera prueban que la reina está fecundada; los opérculos abultados de zángano en celdas de obrera muestran que no lo está.`,
  'worker-caps-later': ({ on, until }) =>
    `Se vieron huevos nuevos el ${d(on)}, pero puede haber cría operculada de antes hasta el ${d(until)}. Después de ese día, los opérculos planos de obrera prueban que la reina está fecundada.`,
  'paused-queen': ({ on, seen }) =>
    `No hay huevos el ${d(on)}, pero ${seen ? 'se vio la reina' : 'había pocas reservas'}: una reina sin alimento o sin floración deja de poner por un tiempo. Alimentar, y revisar otra vez en siete a diez días.`,
  'laying-workers-found': (p) =>
    `Obreras ponedoras: ${causeWords(p.because)}. No gastar una reina en ellas; unir con una colonia fuerte que tenga reina. Sacudirlas lejos es discutido: las ponedoras regresan volando.`,
  'several-eggs-look-again': ({ on }) =>
    `Varios huevos por celda el ${d(on)}: una reina que acaba de empezar puede hacerlo algunos días. Revisar otra vez: un huevo por celda y opérculos de obrera muestran que la reina está bien.`,
  'half-a-look': ({ on }) =>
    `No hay huevos el ${d(on)} en una colonia cuya reina pone, y no se dijo nada de celdas reales. ¿Hay huevos ahora, y hay celdas?`,
  'no-cells-on-frame': ({ on }) =>
    `No hay celdas reales en el cuadro con huevos dado el ${d(on)}: se portan como si tuvieran reina, fecundada o no. ¿Hay huevos cuando ya no cuentan los del cuadro?`,
  'cells-torn-down': ({ on, early }) =>
    `Las celdas reales estaban destruidas el ${d(on)}${early ? ', antes de que pudiera nacer una reina' : ''}: puede haber una reina. ¿Hay huevos?`,
  'cells-were-gone': ({ on }) =>
    `Las celdas reales ya no estaban el ${d(on)}, antes de que pudiera nacer una reina. ¿Hay huevos?`,
  'new-queen': ({ from, to }) =>
    `¿Hay huevos de la reina nueva? Nace entre el ${d(from)} y el ${d(to)}, y luego necesita de 8 a 21 días para madurar, fecundarse y poner. Si no hay después del último día, fracasó.`,
  'seen-no-eggs': ({ on }) => `La reina se vio el ${d(on)} pero no había huevos: ¿pone ahora?`,
  'seen-not-yet': ({ on }) => `La reina se vio el ${d(on)} pero todavía no ponía: ¿pone ahora?`,
  insurance: ({ lastYoung }) =>
    `No hay prueba de una reina en postura, y la última cría joven se puso a más tardar el ${d(lastYoung)}. Un cuadro con huevos dice en cuatro días si hay reina: si no hacen celdas en él, la hay. También frena a las obreras ponedoras, y les permite empezar de nuevo.`,
  'watch-for-laying-workers': ({ lastYoung }) =>
    `¿Hay señales de obreras ponedoras? No hay prueba de una reina y la última cría joven se puso a más tardar el ${d(lastYoung)}; el riesgo empieza tres semanas después.`,
  'what-of-the-cells': ({ on, from, to }) =>
    `¿Qué pasó con las celdas reales vistas el ${d(on)}? Si se dejan, una reina virgen nace entre el ${d(from)} y el ${d(to)} y la reina es reemplazada, o enjambran. Cortarlas todas, o dejar una, y anotar cuál.`,
  'under-strength': ({ frames, on, minimum }) =>
    `${frameCount(frames)} el ${d(on)}, menos del mínimo de ${minimum}: unir la colonia, o añadir un cuadro de cría operculada.`,
  welfare: ({ last }) =>
    `¿Reservas, pillaje, escarabajos, polilla, fuerza? La última visita fue el ${d(last)}.`,
  'has-moved-on': () => 'La colonia ya se entregó.',
  'may-go': () =>
    'El tiempo de espera terminó y se cumple todo: una última revisión de enfermedades, y puede irse.',
  'expected-to-go': () => 'Es lo esperado según lo visto; el tiempo de espera es solo el mínimo.',
}
