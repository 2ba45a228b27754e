const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0
/** Days of a month, 1 to 12, of the Gregorian calendar. */
const daysOf = (year: number, month: number): number =>
  month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31

/** The day so many days after a date such as `2026-11-30`, written in the same way; 0 is that day itself. Gregorian, with no clock and no time zone. */
export function daysAfter(date: string, days: number): string {
  let [year, month, day] = date.split('-').map(Number) as [number, number, number]
  day += days
  while (day > daysOf(year, month)) {
    day -= daysOf(year, month)
    month = (month % 12) + 1
    if (month === 1) year += 1
  }
  return [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-')
}
