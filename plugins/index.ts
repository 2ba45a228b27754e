import { drapery } from '@evenhem/drapery'
import type { Plugin } from '@evenhem/plugin'
import { finishing } from '@evenhem/plugin-finishing'
import { punchList } from '@evenhem/plugin-punch-list'
import { returns } from '@evenhem/plugin-returns'
import { rodAndRing } from '@evenhem/plugin-rod-and-ring'
import { traverse } from '@evenhem/plugin-traverse'

/** The plugins that ship with Evenhem. Their order means nothing. */
export const plugins: readonly Plugin[] = [drapery, rodAndRing, traverse, returns, finishing, punchList]
