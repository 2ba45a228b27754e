const two = (n: number): string => String(n).padStart(2, '0')

/** A moment by the clock on the wall here, with its offset from UTC (RFC 3339): people read it as it is written. */
export function momentHere(at: Date): string {
  const ahead = -at.getTimezoneOffset()
  const size = Math.abs(ahead)
  const offset = `${ahead < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`
  return `${day}T${two(at.getHours())}:${two(at.getMinutes())}:${two(at.getSeconds())}${offset}`
}

/** The time of day of a moment as it was written: `9:12`; empty where there is none. */
export const clockOf = (when: string | undefined): string => /T(\d\d:\d\d)/.exec(when ?? '')?.[1]?.replace(/^0/, '') ?? ''
/** `2026-11-25, 9:12` of `2026-11-25T09:12:33-05:00`. */
export const dayAndTime = (when: string): string => [when.slice(0, 10), clockOf(when)].filter(Boolean).join(', ')
