const days = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const
const isLeap = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
const daysOf = (year: number, month: number): number => (month === 2 && isLeap(year) ? 29 : (days[month - 1] ?? 0))

/** A day of the calendar as RFC 3339 writes it (full-date): `2026-11-30`. */
export function isDate(text: string): boolean {
  const [, year, month, day] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(text)?.map(Number) ?? []
  return year !== undefined && month !== undefined && day !== undefined && day >= 1 && day <= daysOf(year, month)
}

/** A moment as RFC 3339 writes it (date-time), with its offset from UTC: `2026-11-30T09:12:00-05:00`. A leap second is one at 23:59:60 UTC. */
export function isDateTime(text: string): boolean {
  const [, date = '', ...rest] =
    /^(\d{4}-\d\d-\d\d)[Tt](\d\d):(\d\d):(\d\d)(?:\.\d+)?(?:[Zz]|([-+])(\d\d):(\d\d))$/.exec(text) ?? []
  if (!isDate(date)) return false
  const [hour, minute, second, , hours, minutes] = rest.map((part) => Number(part ?? 0)) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ]
  if (hour > 23 || minute > 59 || second > 60 || hours > 23 || minutes > 59) return false
  const ahead = rest[3] === '-' ? -1 : 1
  const inUtc = (hour * 60 + minute - ahead * (hours * 60 + minutes) + 2880) % 1440
  return second < 60 || inUtc === 1439
}
