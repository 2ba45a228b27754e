import { rule } from '@evenhem/plugin'
import { fabrics, fasteners, units } from '../facts/index.ts'

/** What is said once for the whole job and a treatment wants to know: its fabrics, its fasteners, and the units it is written in. */
export const jobRule = rule({ id: 'job', on: 'job', needs: {}, gives: { fabrics, fasteners, units } }).run(({ it }) => ({
  units: it.units,
  ...(it.fabrics ? { fabrics: it.fabrics } : {}),
  ...(it.fasteners ? { fasteners: it.fasteners } : {}),
}))
