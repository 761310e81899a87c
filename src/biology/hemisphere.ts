/** On which side of the equator a time zone lies: a season's name hangs on it. */

/** Zones whose whole group lies south. */
const SOUTHERN_GROUPS = ['Australia/', 'Antarctica/', 'Indian/', 'America/Argentina/']

/** In these groups some do not. */
const NORTHERN = new Set(['Indian/Maldives'])

/** The others, from zone.tab of the IANA time zone database (coordinates with a minus sign; public domain). */
const SOUTHERN = new Set(
  `Africa/Blantyre Africa/Brazzaville Africa/Bujumbura Africa/Dar_es_Salaam Africa/Gaborone Africa/Harare
  Africa/Johannesburg Africa/Kigali Africa/Kinshasa Africa/Luanda Africa/Lubumbashi Africa/Lusaka Africa/Maputo
  Africa/Maseru Africa/Mbabane Africa/Nairobi Africa/Windhoek America/Araguaina America/Asuncion America/Bahia
  America/Belem America/Buenos_Aires America/Campo_Grande America/Coyhaique America/Cuiaba America/Eirunepe
  America/Fortaleza America/Guayaquil America/La_Paz America/Lima America/Maceio America/Manaus America/Montevideo
  America/Noronha America/Porto_Velho America/Punta_Arenas America/Recife America/Rio_Branco America/Santarem
  America/Santiago America/Sao_Paulo Asia/Dili Asia/Jakarta Asia/Jayapura Asia/Makassar Asia/Pontianak
  Atlantic/South_Georgia Atlantic/St_Helena Atlantic/Stanley Pacific/Apia Pacific/Auckland Pacific/Bougainville
  Pacific/Chatham Pacific/Easter Pacific/Efate Pacific/Fakaofo Pacific/Fiji Pacific/Funafuti Pacific/Galapagos
  Pacific/Gambier Pacific/Guadalcanal Pacific/Kanton Pacific/Marquesas Pacific/Nauru Pacific/Niue Pacific/Norfolk
  Pacific/Noumea Pacific/Pago_Pago Pacific/Pitcairn Pacific/Port_Moresby Pacific/Rarotonga Pacific/Tahiti
  Pacific/Tongatapu Pacific/Wallis`.split(/\s+/),
)

/** Example: hemisphereOf('Pacific/Auckland') = 'south'. An unknown zone counts as north. */
export function hemisphereOf(zone: string): 'north' | 'south' {
  if (NORTHERN.has(zone)) return 'north'
  return SOUTHERN.has(zone) || SOUTHERN_GROUPS.some((g) => zone.startsWith(g)) ? 'south' : 'north'
}
