import type { Words } from '@evenhem/plugin'

/** What the host itself has to say about checks that nobody could make and about what nobody read. */
const en: Words = {
  'host/waits': {
    says: 'Not checked yet: {count, plural, one {one reading is} other {# readings are}} missing.',
    help: 'Measure what the list of readings asks for; this is checked at once.',
  },
  'host/faulted': {
    says: 'Not checked: the rule {first} has a fault.',
    help: 'Everything else on this sheet stands. Tell the maker of the plugin.',
  },
  'host/not-given': {
    says: 'Not checked: nothing here knows {first}.',
    help: 'The plugin for this hardware is not here, or it does not say this. Check it by hand.',
  },
  'host/unread.kind': {
    says: 'No plugin here knows hardware of the kind “{name}”.',
    help: 'What stands there is kept as it is, and nothing is worked out from it.',
  },
  'host/unread.hardware': {
    says: 'The job has no hardware named “{name}”.',
    help: 'Ask the workroom which rod or track belongs here.',
  },
  'host/unread.with': {
    says: 'No plugin here reads the part “{name}”.',
    help: 'What stands there is kept as it is, and nothing is worked out from it.',
  },
  'host/unread.version': {
    says: 'This job needs a newer version of the plugin “{name}”.',
    help: 'Until it is there, nothing is worked out from that plugin’s parts.',
  },
}

const es: Words = {
  'host/waits': {
    says: 'Aún sin revisar: {count, plural, one {falta una medida} other {faltan # medidas}}.',
    help: 'Mida lo que pide la lista de medidas; esto se revisa en el acto.',
  },
  'host/faulted': {
    says: 'Sin revisar: la regla {first} tiene un fallo.',
    help: 'Lo demás de esta hoja vale. Avise a quien hizo el complemento.',
  },
  'host/not-given': {
    says: 'Sin revisar: aquí nada sabe {first}.',
    help: 'El complemento de este herraje no está aquí, o no lo dice. Revíselo a mano.',
  },
  'host/unread.kind': {
    says: 'Ningún complemento conoce aquí herrajes del tipo «{name}».',
    help: 'Lo que está ahí se conserva como está, y no se calcula nada con ello.',
  },
  'host/unread.hardware': {
    says: 'El trabajo no tiene un herraje llamado «{name}».',
    help: 'Pregunte al taller qué barra o riel va aquí.',
  },
  'host/unread.with': {
    says: 'Ningún complemento lee aquí la parte «{name}».',
    help: 'Lo que está ahí se conserva como está, y no se calcula nada con ello.',
  },
  'host/unread.version': {
    says: 'Este trabajo necesita una versión más nueva del complemento «{name}».',
    help: 'Mientras no esté, no se calcula nada con las partes de ese complemento.',
  },
}
export const hostWords: Readonly<Record<string, Words>> = { en, es }
