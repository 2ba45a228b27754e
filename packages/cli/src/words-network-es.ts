import type { networkEnglish } from './words-network.ts'

/** The same in Spanish. */
export const networkSpanish: Readonly<Record<keyof typeof networkEnglish, string>> = {
  '--network': 'Sirve también a las tabletas de esta red. Cada una se enlaza una vez, con un código.',
  '--name.network': 'Con --network: cómo se llama allí esta máquina, por ejemplo studio.local.',
  '--cert': 'Con --network: el certificado de esta máquina en PEM, para servir https. Necesita --key.',
  '--key': 'La clave de ese certificado, en PEM.',
  'serving-many': 'Se {count, plural, one {sirve # trabajo} other {sirven # trabajos}} de {folder}.',
  'practice-many': '--practice inesperado con los trabajos de {folder}, se esperaba un solo trabajo; nombre su carpeta',
  'only-with': '{option} inesperado sin {needs}, se esperaban ambos; escriba también {needs}',
  'cannot-read': '{option} {file} inesperado, se esperaba un archivo que se pueda leer; {why}',
  'bad-certificate':
    'Contenido inesperado de --cert {cert} o --key {key}, se esperaba un certificado y su propia clave en PEM; el sistema dice {error}',
  'bad-name': '--name {got} inesperado, se esperaba cómo se llama esta máquina en la red; escríbalo como studio.local',
  'devices-broken':
    'Contenido inesperado de {file}, se esperaba la lista de tabletas enlazadas; corríjalo, o quítelo de allí y enlace otra vez cada tableta',
  'pair-first':
    'Para enlazar una tableta, abra en ella {link}, o cualquier dirección de arriba y escriba {code}. El código sirve una vez, durante {count, plural, one {# minuto} other {# minutos}}; en {address} hay más.',
  'no-addresses': 'Esta máquina no está ahora en ninguna red; las tabletas la encuentran cuando lo esté.',
  'plain-http':
    'Esto es http sin cifrar: otros en esta red pueden leer lo que se envía, y una tableta necesita este servidor para volver a abrir la página. Con --cert y --key no ocurre ni lo uno ni lo otro.',
  devices: 'Lista las tabletas enlazadas con el servidor de una carpeta, o retira una.',
  'devices.more':
    'La carpeta es la que sirve evenhem serve --network. Una tableta retirada ya no entra, tampoco en un servidor que ya está en marcha; lo que anotó se queda.',
  '--revoke': 'Retira la tableta con este nombre o id.',
  'no-devices': 'Todavía no hay ninguna tableta enlazada con {folder}; evenhem serve {folder} --network enlaza una.',
  'device-revoked': '{name} queda retirada.',
  'no-device': 'Tableta inesperada {name}, se esperaba una de {names}; {hint}',
  'no-device-at-all': 'Tableta inesperada {name}, no se esperaba ninguna: no hay tabletas enlazadas con {folder}',
  'several-devices': 'Nombre inesperado {name}, se esperaba uno que tenga una sola tableta; escriba su id: {names}',
  'device-name': 'nombre',
  'device-id': 'identificador',
  'device-since': 'desde',
  'device-seen': 'vista por última vez',
  'device-unseen': 'nunca',
}
