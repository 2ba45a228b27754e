import {
  check,
  filled,
  type HungPanel,
  hungPanels,
  member,
  outerSide,
  perhaps,
  stackOf,
  stacksOf,
  stackWidth,
  unbent,
} from '@evenhem/drapery'
import { type CarrierPlace, carrierPlaces, carriersNeeded, hooksAlong, type Takers } from '@evenhem/drapery/arithmetic'
import { coverage, type HookPlace, heldAtWall, hookMap, makeUp, type Side, stackRules } from '@evenhem/drapery/facts'
import { count, type Known, minus, number, plus, type Reckoning } from '@evenhem/length'
import { type Check, checks, type Place, reckonings, rule } from '@evenhem/plugin'
import type { Carriers } from './facts.ts'
import { carriers as carriersFact } from './facts.ts'
import { traverseRod } from './kind.ts'

/** A panel and where each of its hooks goes. */
interface Mapped {
  readonly panel: HungPanel
  readonly to: readonly CarrierPlace[]
}
const taken = (to: readonly CarrierPlace[], ...where: readonly CarrierPlace['to'][]): Known<number> =>
  number(to.filter((one) => where.includes(one.to)).length)

/** How many carriers each panel needs. */
const needs = ({ panel: { place, pleats }, to }: Mapped): Reckoning =>
  carriersNeeded(
    place,
    { value: pleats, from: member(place, ['pleats'], undefined).from },
    { master: taken(to, 'master'), end: taken(to, 'end', 'back', 'only'), wall: taken(to, 'wall') },
  )

/** Hook by hook: master carrier, carriers without a gap, end bracket, wall. Stationary panels have no master carriers. */
export const map = rule({
  id: 'hook-map',
  on: traverseRod,
  needs: { coverage, makeUp, stackRules, heldAtWall: { maybe: heldAtWall } },
  gives: { hookMap, carriers: carriersFact, reckonings },
}).run(({ it, at, hardware, hardwareAt }, facts) => {
  const isMoved = it.draw !== 'stationary'
  const members = {
    width: member(hardwareAt, ['carrier', 'width'], hardware.carrier.width),
    endHoles: member(hardwareAt, ['bracket', 'hookHoles'], hardware.bracket.hookHoles),
    masterHoles: isMoved ? member(hardwareAt, ['master', 'holes'], hardware.master?.holes) : { value: 0, from: 'number:0' },
  }
  return filled(members, ({ width, endHoles, masterHoles }) => {
    const takers = { masterHoles: masterHoles.value, endHoles: endHoles.value as Takers['endHoles'] }
    const mapped = hungPanels(it, at, facts).map((panel): Mapped => ({ panel, to: carrierPlaces(panel, takers) }))
    const needed = mapped.map(needs)
    const all = count(`${at}#carriers`, 'traverse/carriers', ...needed.map((one) => plus('drapery/carriers-needed', one)))
    const stacks = mapped.map(({ panel }, i) => stackOf(it, at, panel, needed[i]?.value ?? 0, width, facts.stackRules))
    const { toRod, toWalls } = unbent(facts.coverage)
    const places = mapped.flatMap(({ panel, to }, i) => {
      const { share, leadingFlat, outerFlat } = panel
      const flats = { ...panel, leadingFlat: leadingFlat.value, outerFlat: outerFlat?.value }
      return hooksAlong(flats, toRod(share.leading.value), toRod(share.end.value), stackWidth(stacks[i] ?? [])).map(
        ({ atEnd: _, drawn, stacked, ...hook }, n): HookPlace => ({
          ...hook,
          drawn: toWalls(drawn),
          stacked: toWalls(stacked),
          ...destination(to[n] as CarrierPlace),
        }),
      )
    })
    return {
      hookMap: {
        places,
        bearers: all,
        threading: [],
        drawnAs: 'carriers',
        stacks: stacksOf(
          mapped.map(({ panel }) => panel),
          stacks,
        ),
      },
      carriers: mapped.map(({ panel }, i) => ({ outer: panel.outer, needed: needed[i] as Reckoning })),
      reckonings: [...needed, all, ...stacks.flat()],
    }
  })
})

/** The end bracket holds the return where it takes hooks. */
export const held = rule({ id: 'held', on: traverseRod, needs: {}, gives: { heldAtWall } }).run(({ hardware, it }) => ({
  heldAtWall:
    (hardware.bracket.hookHoles ?? 0) > 0
      ? it.panels
          .filter((panel) => (panel.return ?? 0) > 0)
          .map((panel) => ({ side: outerSide(it, panel.id), by: 'end bracket', takesHook: false }))
      : [],
}))

const destination = (place: CarrierPlace): Pick<HookPlace, 'to' | 'number'> =>
  'number' in place ? { to: `traverse/to-${place.to}`, number: place.number } : { to: `traverse/to-${place.to}` }

const carrier = 'traverse/part-carrier'

/** The carriers of one side, or of both counted together, against those that the panels need; more are no fault. */
function ofSide(at: Place, side: Side | 'both', list: Carriers, packed: Known<number>, comesOut: boolean) {
  const own = list
    .filter(({ outer }) => side === 'both' || outer === side)
    .map(({ needed }) => plus('drapery/carriers-needed', needed))
  const needed = count(`${at}#carriers-${side}`, 'drapery/carriers-needed', ...own)
  const over = count(
    `${at}#carriers-over-${side}`,
    'traverse/carriers-over',
    plus('traverse/carriers-packed', packed),
    minus('drapery/carriers-needed', needed),
  )
  const values = {
    side,
    packed: { count: packed.value },
    needed: { count: needed.value },
    over: { count: Math.abs(over.value) },
    out: comesOut ? 'yes' : 'no',
  }
  const found: Check = check('traverse/carriers-enough', over.value < 0 ? 'fail' : 'pass', packed.from, values, 'hang')
  return { needed, over, check: found }
}

/** Carriers against hooks, side by side: missing ones stop the hanging, more are taken out or parked. */
export const carrierCount = rule({
  id: 'carriers',
  on: traverseRod,
  needs: { carriers: carriersFact },
  gives: { checks, reckonings },
  codes: ['traverse/carriers-enough'],
}).run(({ it, mine, mineAt, at, hardware }, facts) => {
  const came = perhaps(member(at, ['found', 'came', carrier], it.found?.came?.[carrier]))
  if (came) {
    const all = ofSide(at, 'both', facts.carriers, came, hardware.carrier.comesOut === true)
    return { checks: [all.check], reckonings: [all.needed, all.over] }
  }
  const sides = (['left', 'right'] as const).filter((side) => facts.carriers.some(({ outer }) => outer === side))
  const members = sides.map((side) => member(mineAt, ['carriers', side], mine?.carriers?.[side]))
  const empty = members.filter(({ value }) => value === undefined)
  if (empty.length > 0) return { ask: empty.map(({ from }) => from) }
  const each = sides.map((side, i) =>
    ofSide(
      at,
      side,
      facts.carriers,
      perhaps(members[i] as (typeof members)[number]) as Known<number>,
      hardware.carrier.comesOut === true,
    ),
  )
  return { checks: each.map((one) => one.check), reckonings: each.flatMap(({ needed, over }) => [needed, over]) }
})
