import { type Known, type Length, type LengthReckoning, number, plus, sum, times } from '@evenhem/length'

/**
 * A new cord for a one-way corded rod: twice the rod and the drop to the lower pulley, and 6 in to tie (How to Restring a One-Way Traverse Rod, general
 * how-to article, step 1; read; case cord-01). Re-cording ends with the tension device fixed again. Last, after its parts.
 */
export function cordFor(name: string, rod: Known<Length>, drop: Known<Length>, tie: Known<Length>): readonly LengthReckoning[] {
  const once = sum(`${name}-once`, 'drapery/cord-once', plus('drapery/rod-width', rod), plus('drapery/cord-drop', drop))
  const there = times(`${name}-twice`, 'drapery/cord-twice', plus('drapery/cord-once', once), plus('drapery/twice', number(2)))
  return [once, there, sum(name, 'drapery/cord-length-new', plus('drapery/cord-twice', there), plus('drapery/cord-tie', tie))]
}
