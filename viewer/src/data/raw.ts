import { inch, type Length, millimetre } from '@evenhem/length'

/** A length as it is written into the log: with its unit, so that another unit of the job changes nothing, and exact. */
export function rawLength(length: Length): string {
  const sixtyFourths = length / (inch / 64)
  if (!Number.isInteger(sixtyFourths)) return `${length / millimetre} mm`
  const size = Math.abs(sixtyFourths)
  let [above, below] = [size % 64, 64]
  while (above > 0 && above % 2 === 0) [above, below] = [above / 2, below / 2]
  const whole = Math.floor(size / 64)
  const parts = [...(whole > 0 || above === 0 ? [String(whole)] : []), ...(above > 0 ? [`${above}/${below}`] : [])]
  return `${length < 0 ? '-' : ''}${parts.join(' ')} in`
}
