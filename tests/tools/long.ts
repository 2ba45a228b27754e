/** How much is tried where more finds more: what anybody waits for, a fixed slice in CI, or all that `npm run test:long` has time for. */
export const effort = process.env.EVENHEM_LONG === 'all' ? 'all' : process.env.EVENHEM_LONG ? 'slice' : 'few'
/** Whether the long tests run. */
export const isLong = effort !== 'few'
