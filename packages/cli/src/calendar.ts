/** A day on which something is to be done. */
export interface Visit {
  /** The same for the same visit however often it is written. */
  readonly uid: string
  /** When something about it was last put, RFC 3339. */
  readonly stamp: string
  /** `2026-12-04`. */
  readonly day: string
  readonly summary: string
  readonly description: string
  readonly place?: string
}

/** Text as a value of iCalendar (RFC 5545, 3.3.11): what ends a value or a line is escaped, other control characters are left out. */
const escaped = (text: string): string =>
  text
    .replaceAll(/\r\n?/g, '\n')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what must go
    .replaceAll(/[\u0000-\u0008\u000b-\u001f\u007f]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '')
    .replaceAll(/[\\;,]/g, (one) => `\\${one}`)
    .replaceAll('\n', '\\n')

const longest = 75
/** A line in pieces of 75 octets at most, each after the first begun with a space (RFC 5545, 3.1). No character is cut. */
export function folded(line: string): string {
  const pieces: string[] = ['']
  let taken = 0
  for (const character of line) {
    const octets = Buffer.byteLength(character)
    if (taken + octets > longest) {
      pieces.push(' ')
      taken = 1
    }
    pieces[pieces.length - 1] += character
    taken += octets
  }
  return pieces.join('\r\n')
}

const utc = (milliseconds: number): string => new Date(milliseconds).toISOString().replaceAll(/[-:]|\.\d+/g, '')
const dayOf = (day: string): string => day.replaceAll('-', '')
const dayAfter = (day: string): string => utc(Date.parse(`${day}T00:00:00Z`) + 86_400_000).slice(0, 8)

const event = ({ uid, stamp, day, summary, description, place }: Visit): readonly string[] => [
  'BEGIN:VEVENT',
  `UID:${escaped(uid)}`,
  `DTSTAMP:${utc(Date.parse(stamp))}`,
  `DTSTART;VALUE=DATE:${dayOf(day)}`,
  `DTEND;VALUE=DATE:${dayAfter(day)}`,
  `SUMMARY:${escaped(summary)}`,
  `DESCRIPTION:${escaped(description)}`,
  ...(place ? [`LOCATION:${escaped(place)}`] : []),
  'TRANSP:TRANSPARENT',
  'END:VEVENT',
]

/** Visits as a calendar (iCalendar, RFC 5545), each a whole day. The same visits are the same bytes. */
export const calendarOf = (visits: readonly Visit[]): string =>
  [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Evenhem//Punch list//EN',
    'CALSCALE:GREGORIAN',
    ...visits.flatMap(event),
    'END:VCALENDAR',
  ]
    .map((line) => `${folded(line)}\r\n`)
    .join('')
