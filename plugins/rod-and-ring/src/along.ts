import { filled, member, perhaps, supportsOf } from '@evenhem/drapery'
import { endBracket, finialTip, halvesBeside, leadingBracket, rodEnd } from '@evenhem/drapery/arithmetic'
import { type Coverage, coverage, drawnEnds, reach, type Side, rod as wholeRod } from '@evenhem/drapery/facts'
import type { Known, Length } from '@evenhem/length'
import { type Place, reckonings, rule } from '@evenhem/plugin'
import { along } from './facts.ts'
import { rod } from './kind.ts'

interface Sizes {
  readonly room: Known<Length>
  readonly width: Known<Length>
  readonly finial: Known<Length>
  /** Needed at the leading end of a one-way draw only. */
  readonly plate?: Known<Length> | undefined
}

/** One end of the rod: its bracket, where the rod ends, how far the finial reaches, and where the closed cloth really ends. */
function endOf(at: Place, side: Side, found: Coverage, how: 'symmetric' | 'reach', { room, width, finial, plate }: Sizes) {
  const coverEnd = found[side]
  if (found.leadingEnd !== side || !plate) {
    const bracket = endBracket(at, side, coverEnd, room)
    const [half, end] = rodEnd(at, side, { coverEnd }, width)
    const tip = finialTip(at, side, end, finial)
    return { bracket, rodEnd: end, tip, drawn: coverEnd, working: [bracket, half, end, tip] }
  }
  const halves = halvesBeside(at, side, plate, width)
  const { bracket, drawn, working } = leadingBracket(at, side, how, coverEnd, room, halves[2])
  const [half, end] = rodEnd(at, side, { bracket, ringRoom: room }, width)
  const tip = finialTip(at, side, end, finial)
  return { bracket, rodEnd: end, tip, drawn, working: [...halves, ...working, half, end, tip] }
}

/** Brackets stand inside the cover ends by the ring room, supports where the order puts them; the rod ends half a ring beyond the parked ring, and there the finial starts. */
export const alongWall = rule({
  id: 'along',
  on: rod,
  needs: { coverage },
  gives: { along, reach, drawnEnds, rod: wholeRod, reckonings },
}).run(({ hardware, hardwareAt, it, at }, facts) => {
  const members = {
    room: member(hardwareAt, ['ring', 'room'], hardware.ring.room),
    width: member(hardwareAt, ['ring', 'width'], hardware.ring.width),
    finial: member(hardwareAt, ['finial', 'length'], hardware.finial?.length),
    ...(facts.coverage.leadingEnd ? { plate: member(hardwareAt, ['bracket', 'width'], hardware.bracket.width) } : {}),
  }
  return filled(members, (sizes) => {
    const how = it.leadingEnd ?? 'symmetric'
    const [left, right] = [endOf(at, 'left', facts.coverage, how, sizes), endOf(at, 'right', facts.coverage, how, sizes)]
    const span = perhaps(member(hardwareAt, ['rod', 'span'], hardware.rod.span))
    const supports = supportsOf(it, at)
    return {
      along: {
        left: { bracket: left.bracket, rodEnd: left.rodEnd },
        right: { bracket: right.bracket, rodEnd: right.rodEnd },
        supports,
      },
      reach: { left: left.tip, right: right.tip },
      drawnEnds: { left: left.drawn, right: right.drawn },
      rod: {
        left: left.rodEnd,
        right: right.rodEnd,
        held: [left.bracket, ...supports.map((support) => support.x), right.bracket],
        ...(span ? { span } : {}),
      },
      reckonings: [...left.working, ...right.working, ...supports.map((support) => support.x)],
    }
  })
})
