/** Each act in five steps, in Spanish: acts in the infinitive. */
import type { Act, HowTo } from '../steps.ts'

export const steps: Record<Act, HowTo> = {
  'first-brood-check': {
    title: 'Abrir una colmena para la primera revisión de cría',
    bring: 'ahumador, palanca, un lugar donde apoyar un cuadro, una luz para los panales oscuros',
    steps: [
      'Elegir una hora cálida y sin viento. Ponerse con el sol a la espalda, para que entre en las celdas. Dos bocanadas de humo en la piquera, y esperar medio minuto.',
      'Sacar primero un cuadro de la orilla y dejarlo aparte: así los demás salen sin arrastrar abejas, ni a la reina.',
      'Ir cuadro por cuadro hasta la cría. Levantar derecho y despacio, y sostener cada cuadro sobre la colmena: si la reina cae, cae en su casa.',
      'Buscar cuatro cosas y decir algo de cada una: huevos, larvas, opérculos, celdas reales en los bordes y en la cara del panal. “Ninguno” es una respuesta; “no se miró” es otra. Media revisión no decide nada.',
      'Poner los cuadros en su orden y con la misma cara, cerrar, y tocar lo que se vio antes de seguir.',
    ],
  },
  'outside-look': {
    title: 'Mirar por fuera, con la tapa puesta',
    bring: 'nada; alimento, si el plan lo pide',
    steps: [
      'Ponerse unos minutos al lado de la piquera, fuera del paso de las abejas.',
      'Mirar: ¿vuelan, y traen polen algunas? El polen suele indicar cría, pero no prueba nada.',
      'Mirar el suelo y la tabla de vuelo: muchas muertas, abejas que se arrastran con las alas mal, peleas en la piquera, o nadie.',
      'Acercar el oído a la pared y dar un golpe: un zumbido corto que se apaga es buena señal. Levantar un poco por detrás: si pesa poco, hay hambre.',
      'Tocar “Revisada, todo bien”, o anotar lo que no estaba bien.',
    ],
  },
  'caged-queen': {
    title: 'Atender a una reina en su jaula',
    bring: 'ahumador, palanca, algo para abrir la jaula',
    steps: [
      'Un poco de humo, quitar la tapa con cuidado y mirar la jaula antes de tocarla: ¿las abejas están sueltas y la alimentan, o se aferran y muerden?',
      'Buscar celdas reales cerca de la jaula. Cortarlas todas antes de que salga, o una de ellas la mata.',
      'Jaula vacía: sacarla, no buscar hoy a la reina, y cerrar. Sus huevos se buscan después.',
      'Sigue adentro y las abejas están tranquilas: abrir la jaula abajo, entre dos cuadros, y dejar que baje sola. Se aferran: dejarla adentro y volver cuando lo diga el plan.',
      'Muerta, o la mataron: es probable que haya otra reina. Sacar la jaula y anotar solo lo que se encontró.',
    ],
  },
  'test-frame': {
    title: 'Dar un cuadro con huevos',
    bring: 'una colonia donante revisada de enfermedades, un paño húmedo, un cepillo, un marcador',
    steps: [
      'Elegir una donante sana: reina en postura, ningún signo de enfermedad, pocos ácaros, no retenida.',
      'Tomar un cuadro con huevos y las larvas más pequeñas. Ver que la reina de la donante no esté en él, y barrer las abejas con el cepillo: las sacudidas dañan huevos y larvas.',
      'Cubrirlo con el paño húmedo y llevarlo enseguida. Los huevos se secan en minutos al sol (con menos de la mitad de humedad no nació ninguno: Doull 1976).',
      'Temprano o tarde, con cuidado, ponerlo en medio de las abejas. Escribir la fecha y “huevos” en el cabezal, para encontrarlo después.',
      'Anotarlo con la etiqueta de la donante. El día que dice el plan, buscar celdas reales en este mismo cuadro.',
    ],
  },
  introduce: {
    title: 'Introducir una reina fecundada',
    bring: 'la reina en su jaula, una gota de agua para ella, alimento',
    steps: [
      'Buscar en cada cuadro una reina, una reina joven o celdas reales. ¿Se encontró una? No introducirla: anotarlo y ver qué dice el plan.',
      'Hasta entonces, tener la jaula a la sombra, tibia y seca, con una gota de agua en la malla dos veces al día.',
      'Sujetar la jaula entre dos cuadros donde hay cría, o donde la habría: la malla hacia las abejas, el extremo del candi un poco hacia arriba, sin su tapón.',
      'Cerrar. Dar jarabe ligero adentro donde entra poco: las abejas alimentadas aceptan mejor a una reina.',
      'Dejar la colmena en paz hasta el día en que el plan pida mirar la jaula. Anotar que se introdujo.',
    ],
  },
  unite: {
    title: 'Unir con otra colonia',
    bring: 'una hoja de periódico, ahumador, palanca, una cincha',
    steps: [
      'Revisar la cría de las dos por enfermedades. En la duda, parar: no se une nada enfermo ni retenido.',
      'Solo puede quedar una reina: buscar la peor reina, o todas las celdas reales, y sacarlas.',
      'Al atardecer, quitar la tapa de la colmena fuerte que tiene la reina. Poner una hoja de periódico sobre sus cuadros y hacerle dos cortes con la palanca.',
      'Poner encima la caja de la colonia débil, con su tapa y la cincha. Dejar una sola piquera, abajo, y estrecharla.',
      'Después de una semana el papel está roído: juntar los cuadros en las cajas que llenan. Anotar que la colonia se unió, y con cuál colmena.',
    ],
  },
  boost: {
    title: 'Añadir un cuadro de cría operculada',
    bring: 'una colonia donante revisada de enfermedades, palanca, un marcador',
    steps: [
      'Elegir una donante fuerte y sana, y buscar primero a su reina: ella se queda.',
      'Tomar un cuadro casi todo de opérculos planos, mejor con abejas que ya están naciendo. Las larvas necesitan muchas nodrizas: que tenga pocas.',
      'No más cría de la que la colonia pequeña puede cubrir: un cuadro cada vez. Las abejas que lo cubren van con él.',
      'Ponerlo junto a su propia cría, y sacar a cambio un cuadro vacío de la orilla.',
      'Estrechar la piquera, alimentar, y anotar el cuadro y la etiqueta de la donante.',
    ],
  },
  feed: {
    title: 'Alimentar una colonia',
    bring: 'azúcar blanca en agua, un alimentador que va adentro, algo que flote en él',
    steps: [
      '¿Hay abejas pilladoras en la piquera? Parar eso primero. Alimentar solo cuando haya terminado.',
      'Mezclar por peso: una parte de azúcar y una de agua para crecer, dos y una para guardar. Solo azúcar blanca: la miel de abejas desconocidas trae enfermedades.',
      'Al atardecer, poner el alimentador adentro, sobre las abejas, con paja o un flotador para que no se ahoguen. Si hace demasiado frío para volar: pasta de azúcar sobre los cuadros.',
      'No derramar nada. Cerrar toda rendija, y estrechar la piquera de una colonia pequeña al ancho de un dedo.',
      'Anotar cuánto. La próxima vez, sacar lo que se agrió.',
    ],
  },
  'mite-wash': {
    title: 'Lavar abejas para contar ácaros',
    bring: 'frasco con tapa de malla, medida de media taza, alcohol o agua con jabón, una bandeja blanca',
    steps: [
      'Buscar a la reina y dejar su cuadro aparte. Si no aparece: tomar abejas de un cuadro revisado por las dos caras.',
      'Sacudir las abejas de un cuadro de cría en una bandeja y tomar media taza, unas 300. Devolver las demás.',
      'Al frasco, cubrirlas con el líquido, poner la tapa y agitar en círculos un minuto. Estas abejas mueren; una colonia que no se lava puede morir.',
      'Verter por la malla en la bandeja blanca y contar los ácaros. Enjuagar otra vez y contar de nuevo.',
      'Anotar abejas y ácaros: 9 en 300 son 3 en 100. Después ver qué dice el plan; la etiqueta es la ley.',
    ],
  },
  'close-down': {
    title: 'Parar el pillaje',
    bring: 'un trozo de espuma o pasto, cinta, una sábana mojada',
    steps: [
      'Las abejas que pelean en la piquera y buscan en cada rendija son pilladoras. No abrir esta colmena, ni las vecinas.',
      'Cerrar la piquera al ancho de una abeja, con espuma, pasto o un taco.',
      'Tapar con cinta toda otra rendija. Llevarse la miel, el jarabe y los panales mojados que queden cerca.',
      'Si sigue la nube: colgar una sábana mojada sobre la colmena hasta la tarde. Las abejas de la casa encuentran la entrada por detrás.',
      'Mirar al anochecer y los dos días siguientes. Alimentar solo cuando haya terminado, al anochecer y adentro. Anotar que se vio.',
    ],
  },
  'close-up': {
    title: 'Cerrar y llamar al inspector apícola',
    bring: 'nada más de lo que se tiene; ninguna herramienta va de aquí a otra colmena',
    steps: [
      'Opérculos hundidos, oscuros o con agujeros irregulares, larvas muertas que se estiran en un hilo, mal olor: tomar una foto, devolver el cuadro y parar.',
      'Cerrar la colmena y estrechar la piquera: las pilladoras llevan la enfermedad a la siguiente.',
      'Marcar la colmena. Desde ahora no entra ni sale nada: ni abejas, ni panales, ni miel, ni cuadros.',
      'Raspar la palanca y quemarla con llama, lavarse las manos, cambiar los guantes. Terminar aquí la ronda, o seguir con herramientas limpias.',
      'Anotarla con “sospecha de enfermedad de la cría”, y llamar al inspector apícola. Si se toma muestra, se quema o se trata, lo dice él.',
    ],
  },
  'take-out-queen': {
    title: 'Buscar una reina y sacarla',
    bring: 'ahumador, palanca, una caja vacía para los cuadros, una jaula',
    steps: [
      'Ir cuando muchas abejas están volando. Casi nada de humo: la hace correr.',
      'Empezar donde están los huevos o la cría. Al levantar un cuadro, mirar primero la cara del siguiente que estaba a oscuras.',
      'Después bajar por un lado del cuadro y subir por el otro, primero los bordes. Buscar patas largas y abejas que se vuelven hacia ella.',
      'Si no está en los cuadros: mirar las paredes y el piso. Si en diez minutos no aparece: cerrar e intentar otro día.',
      'Tomarla por las alas, o enjaularla. Anotar que se sacó, y qué ponía.',
    ],
  },
  'move-out': {
    title: 'Entregar una colmena',
    bring: 'cincha, malla o espuma para la piquera, los papeles, otra persona que ayude',
    steps: [
      'Una última mirada a cada cuadro de cría por enfermedades, con luz de día. Si hay duda: se queda.',
      'Ver que la lista de lo que falta esté vacía, y que estén hechos los papeles del lugar a donde va.',
      'Cuando todas volvieron, al anochecer o antes del amanecer, cerrar la piquera de modo que entre aire. Piso, caja y tapa bajo una cincha.',
      'Levantar entre dos. En la camioneta los cuadros van en el sentido de la marcha, con aire y sin sol.',
      'En el lugar nuevo abrirla enseguida y apoyar una rama delante de la piquera, para que aprendan el sitio. Anotar a dónde fue.',
    ],
  },
}
