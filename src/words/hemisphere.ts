/** On which half of the world a time zone lies, as a first suggestion for the yard to correct. */

/** Zones of the south that keep no summer time (tz database; those on the equator are left to the north). */
const SOUTH =
  /^(Antarctica\/|Australia\/|Pacific\/(Auckland|Chatham|Fiji|Tongatapu|Apia|Tahiti|Noumea|Norfolk|Easter|Port_Moresby|Efate|Rarotonga)|Indian\/(Mauritius|Reunion|Antananarivo|Mayotte|Comoro)|Africa\/(Johannesburg|Harare|Maputo|Lusaka|Windhoek|Gaborone|Luanda|Blantyre|Maseru|Mbabane|Lubumbashi|Dar_es_Salaam)|America\/(Sao_Paulo|Bahia|Fortaleza|Recife|Manaus|Cuiaba|Campo_Grande|Lima|La_Paz|Asuncion|Montevideo|Santiago|Punta_Arenas|Argentina\/.*|Buenos_Aires)|Atlantic\/Stanley)/

/** Example: hemisphereOf('Australia/Brisbane') = 'south'. */
export const hemisphereOf = (zone: string): 'north' | 'south' => (SOUTH.test(zone) ? 'south' : 'north')
