import { check, filled, long, magnitude, member, openingOf, panelAt, windowOf } from '@evenhem/drapery'
import { ringPlaces, ringsNeeded, ringsOver, spaceLeft, stackOfPair } from '@evenhem/drapery/arithmetic'
import { coverage, type HookPlace, heldAtWall, hookMap, makeUp, reach } from '@evenhem/drapery/facts'
import type { Length } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { rod } from './kind.ts'

/** Hook by hook: which ring takes it, which ring parks outside its bracket, and the order in which the rings go on the rod. */
export const map = rule({
  id: 'hook-map',
  on: rod,
  needs: { coverage, makeUp, heldAtWall: { maybe: heldAtWall } },
  gives: { hookMap, reckonings },
}).run(({ it, at, hardware, hardwareAt }, facts) => {
  const members = {
    rodWidth: member(at, ['rod', 'width'], it.rod?.width),
    ringWidth: member(hardwareAt, ['ring', 'width'], hardware.ring.width),
  }
  return filled(members, ({ rodWidth, ringWidth }) => {
    const panels = facts.makeUp.panels.map((panel) => ({
      ...panel,
      atWall: (facts.heldAtWall ?? []).some((held) => held.side === panel.outer),
      pleatsKnown: { value: panel.pleats, from: member(panelAt(at, panel.panel), ['pleats'], panel.pleats).from },
    }))
    const rings = ringsNeeded(
      at,
      panels.map((panel) => ({ panel: panel.panel, pleats: panel.pleatsKnown, atWall: panel.atWall })),
    )
    const stacks = panels.map((panel, i) => stackOfPair(panelAt(at, panel.panel), rodWidth, rings[i]?.value ?? 0, ringWidth))
    const placed = panels.flatMap((panel, i) =>
      ringPlaces(
        { ...panel, leadingFlat: panel.hooks[1]?.across ?? (0 as Length) },
        facts.coverage.meets.value,
        facts.coverage[panel.outer].value,
        stacks[i]?.at(-1)?.value ?? (0 as Length),
      ),
    )
    const places = placed.map(
      ({ ring, parksOutside, ...place }): HookPlace =>
        ring === undefined
          ? { ...place, to: 'rod-and-ring/to-wall' }
          : {
              ...place,
              to: 'rod-and-ring/to-ring',
              number: ring,
              ...(parksOutside ? { note: 'rod-and-ring/past-bracket' } : {}),
            },
    )
    const outside = (side: 'left' | 'right') =>
      placed.filter((place) => place.parksOutside && panels.some((panel) => panel.panel === place.panel && panel.outer === side))
        .length
    const bearers = rings.at(-1) as (typeof rings)[number]
    const threading = [
      { what: 'rod-and-ring/thread-outside-left', count: outside('left') },
      { what: 'rod-and-ring/thread-between', count: bearers.value - outside('left') - outside('right') },
      { what: 'rod-and-ring/thread-outside-right', count: outside('right') },
    ]
    return { hookMap: { places, bearers, threading }, reckonings: [...rings, ...stacks.flat()] }
  })
})

/** Rings that were packed against hooks that need one: missing ones stop the work, more are spare. */
export const ringCount = rule({
  id: 'rings',
  on: rod,
  needs: { hookMap },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/rings'],
}).run(({ mine, mineAt, at }, facts) =>
  filled({ rings: member(mineAt, ['rings'], mine?.rings) }, ({ rings }) => {
    const over = ringsOver(at, rings, facts.hookMap.bearers)
    const values = {
      needed: { count: facts.hookMap.bearers.value },
      ordered: { count: rings.value },
      over: { count: Math.abs(over.value) },
      hooks: { count: facts.hookMap.places.length },
    }
    return {
      checks: [check('rod-and-ring/rings', over.value < 0 ? 'fail' : 'pass', mineAt, values, 'mount')],
      reckonings: [over],
    }
  }),
)

/** The hardware against the free wall on each side, finials included. */
export const wallSpace = rule({
  id: 'wall-space',
  on: rod,
  needs: { reach },
  gives: { checks, reckonings },
  codes: ['rod-and-ring/wall-space'],
}).run(({ at, window }, facts) => {
  const { wall, wallAt, opening, openingAt } = openingOf(window, windowOf(at))
  const members = {
    casing: member(openingAt, ['casing', 'width'], opening.casing?.width),
    left: member(wallAt, ['space', 'left'], wall.space?.left),
    right: member(wallAt, ['space', 'right'], wall.space?.right),
  }
  return filled(members, (known) => {
    const over = {
      left: spaceLeft(at, 'left', facts.reach.left, known.left, known.casing),
      right: spaceLeft(at, 'right', facts.reach.right, known.right, known.casing),
    }
    const worse = over.left.value <= over.right.value ? ('left' as const) : ('right' as const)
    const values = {
      left: long(over.left),
      right: long(over.right),
      short: magnitude(over[worse]),
      side: { code: `drapery/${worse}` },
      space: long(known[worse]),
    }
    return {
      checks: [check('rod-and-ring/wall-space', over[worse].value < 0 ? 'fail' : 'pass', wallAt, values, 'mark')],
      reckonings: [over.left, over.right],
    }
  })
})

/** What else must be known of the rings and the wall, asked for at once and not only when all before it is filled. */
export const wanted = rule({ id: 'wanted', on: rod, needs: {}, gives: {} }).run(({ mine, mineAt, at, window }) => {
  const { wall, wallAt } = openingOf(window, windowOf(at))
  return filled(
    {
      rings: member(mineAt, ['rings'], mine?.rings),
      left: member(wallAt, ['space', 'left'], wall.space?.left),
      right: member(wallAt, ['space', 'right'], wall.space?.right),
    },
    () => ({}),
  )
})
