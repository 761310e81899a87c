/** Where each check’s window comes from, in Spanish. */
import type { Rule } from '../../recovery/index.ts'

export const sources: Record<Rule, string> = {
  'outside-look': 'Práctica común: los primeros días después de un traslado son cuando una colonia se va.',
  'queen-release':
    'Práctica común: 2 a 3 días para una reina propia, 3 a 5 para una extraña; los apicultores no coinciden (de 48 horas a 5 días).',
  'telling-visit':
    'Los huevos nacen a los 3 días, así que desde el día 4 los huevos son nuevos (Winston 1987); las celdas reales se empiezan en las 48 horas después de perder a la reina (Fell y Morse 1984).',
  'egg-frame':
    'Práctica común; una larva puede ser reina hasta 3 días después de nacer, mejor en las primeras 36 horas (Oliver 2021).',
  'cells-on-egg-frame':
    'Las celdas se ven después de 1 a 5 días (Oliver 2021; práctica común); mirar el cuadro antes del día 8, porque una reina virgen podría nacer el día 10.',
  'recheck-eggs':
    'Pasados los días en que el cuadro dado puede explicarlos (los huevos nacen a los 3 días, la cría abierta se opercula a los 9; Winston 1987).',
  'new-queen-eggs':
    'Primer huevo 10.6 días después de nacer la reina, de 4 a 22 (Szabo et al. 1987); 12.9 (Pérez-Sato y Ratnieks 2006). Previsto a los 12; después de 21 ya no se espera.',
  'buy-queen':
    'Práctica común; hay riesgo de obreras ponedoras de 3 a 4 semanas después de la última cría joven.',
  'eggs-after-introduction': 'Práctica común: huevos de 3 a 10 días después de soltarla.',
  'worker-brood':
    'La cría de obrera se opercula 9 días después del huevo (Winston 1987); solo los opérculos planos de obrera prueban una reina fecundada.',
  'cells-beside':
    'Práctica común: una celda abierta se opercula en cinco días y de una operculada nace la reina en ocho (Winston 1987), así que en tres a seis días se ve qué pasó con ellas.',
  'look-again':
    'Aritmética: los huevos nacen a los tres días (Winston 1987), así que otra revisión dos o tres días después dice cuál de las dos era la correcta. Práctica común.',
  'comb-ties':
    'Práctica común: en una o dos semanas los panales están pegados, y las ligas muchas veces roídas.',
  'mite-wash': 'Práctica común; límite de 3 ácaros por cada 100 abejas con lavado (USDA-ARS).',
  welfare:
    'Práctica común: el pequeño escarabajo y el pillaje pueden acabar con una colonia débil en dos semanas de calor.',
  'unite-or-boost':
    'Práctica común: de 3 a 5 cuadros con abejas hacen una colonia de verano que puede vivir.',
  'laying-workers':
    'Empiezan hacia los 14 días (Collison), 21 (Oliver 2021) o 30 días sin reina ni cría joven; sacudirlas lejos es discutido.',
  'move-out': 'El tiempo de espera del protocolo, y cada condición para salir cumplida.',
}
