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
export const hostWords: Readonly<Record<string, Words>> = { en }
