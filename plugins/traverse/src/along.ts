import { filled, member, perhaps, supportsOf } from '@evenhem/drapery'
import { finialTip } from '@evenhem/drapery/arithmetic'
import { coverage, reach, rod, stand } from '@evenhem/drapery/facts'
import { type LengthReckoning, minus, plus, sum } from '@evenhem/length'
import { reckonings, rule } from '@evenhem/plugin'
import { traverseRod } from './kind.ts'

/** The rod runs from cover end to cover end; its end brackets stand inside them by their inset, supports where the order puts them. */
export const alongWall = rule({
  id: 'along',
  on: traverseRod,
  needs: { coverage },
  gives: { stand, rod, reach, reckonings },
}).run(({ hardware, hardwareAt, it, at }, facts) =>
  filled({ inset: member(hardwareAt, ['bracket', 'inset'], hardware.bracket.inset) }, ({ inset }) => {
    const { left: first, right: last } = facts.coverage
    const bracket = (side: 'left' | 'right'): LengthReckoning =>
      sum(
        `${at}#bracket-${side}`,
        `drapery/bracket-${side}`,
        plus(`drapery/cover-${side}`, facts.coverage[side]),
        (side === 'left' ? plus : minus)('traverse/inset', inset),
      )
    const supports = supportsOf(it, at)
    const [left, right] = [bracket('left'), bracket('right')]
    const span = perhaps(member(hardwareAt, ['rod', 'span'], hardware.rod.span))
    const finial = perhaps(member(hardwareAt, ['finial', 'length'], hardware.finial?.length))
    const tips = finial && { left: finialTip(at, 'left', first, finial), right: finialTip(at, 'right', last, finial) }
    return {
      stand: { left, right, supports },
      rod: { left: first, right: last, held: [left, ...supports.map(({ x }) => x), right], ...(span ? { span } : {}) },
      reach: tips ?? { left: first, right: last },
      reckonings: [left, right, ...supports.map(({ x }) => x), ...(tips ? [tips.left, tips.right] : [])],
    }
  }),
)
