// A stranger's plugin: a rail with fixed pegs along its lower edge. Written from public entries alone; nothing in Evenhem names it.
import { box, check, filled, long, member, mm } from '@evenhem/drapery'
import { floorAt, fromCasing, fromFloor, holeHeight, topOfRod as railTop, topOfPlate } from '@evenhem/drapery/arithmetic'
import * as trade from '@evenhem/drapery/facts'
import { count, inch, type Known, type Length, minus, number, plus } from '@evenhem/length'
import { checks, entries, type Kind, layers, type Plugin, parts, reckonings, rule, steps } from '@evenhem/plugin'
import schema from './peg-rail.schema.json' with { type: 'json' }

const { bearingDrop, coverage, floor, frame, hangLine, heldAtWall, holes, hookMap, hungLine, makeUp, plannedMarks, projection, reach, topOfRod } = trade
type PegRail = { readonly name: string; readonly pegs?: number } & Partial<Record<'pegDrop' | 'standsOut' | 'high' | 'screwDown', Length>>

const rail: Kind<PegRail, never> = { kind: 'peg-rail', schema }
const ends = ['left', 'right'] as const

const bearing = rule({ id: 'bearing', on: rail, needs: {}, gives: { projection, bearingDrop } }).run(({ hardware, hardwareAt }) =>
  filled(
    {
      projection: member(hardwareAt, ['standsOut'], hardware.standsOut),
      bearingDrop: member(hardwareAt, ['pegDrop'], hardware.pegDrop),
    },
    (known) => known,
  ),
)

const top = rule({ id: 'top', on: rail, needs: { hangLine, bearingDrop }, gives: { topOfRod, reckonings } }).run(({ at }, facts) => {
  const height = railTop(at, facts.hangLine.hangLine, facts.bearingDrop, 'peg-rail/peg-drop')
  return { topOfRod: height, reckonings: [height] }
})

const planned = rule({ id: 'planned', on: rail, needs: { coverage, topOfRod }, gives: { plannedMarks, reckonings } }).run(
  ({ hardware, hardwareAt, at }, facts) =>
    filled({ down: member(hardwareAt, ['screwDown'], hardware.screwDown) }, ({ down }) => {
      const plate = topOfPlate(at, facts.topOfRod, number(0) as Known<Length>)
      const marks = ends.map((side) => ({ bracket: side, x: facts.coverage[side], plate, hole: holeHeight(`${at}#planned-${side}`, plate, down) }))
      return { plannedMarks: { marks }, reckonings: [plate, ...marks.map(({ hole }) => hole)] }
    }),
)

const wanted = { coverage, plannedMarks, floor, frame, hungLine: { maybe: hungLine } }
const screws = rule({ id: 'screws', on: rail, needs: wanted, gives: { holes, reach, reckonings } }).run(({ hardware, hardwareAt, at }, facts) => {
  return filled({ down: member(hardwareAt, ['screwDown'], hardware.screwDown) }, ({ down }) => {
    const all = facts.plannedMarks.marks.map(({ bracket, x, plate: level }) => {
      const side = bracket as 'left' | 'right'
      const hung = facts.hungLine?.points.find((each) => each.bracket === side)
      const plate = hung?.plate ?? level
      const ground = hung?.floor ?? floorAt(`${at}#floor-screw-${side}`, facts.floor.points, { value: x.value, from: x.name })
      const height = holeHeight(`${at}#screw-${side}`, plate, down)
      const hole: trade.Hole = {
        id: `screw-${side}`,
        on: 'bracket',
        what: 'peg-rail/screw',
        side,
        x,
        height,
        fromFloor: fromFloor(`${at}#from-floor-screw-${side}`, height, ground),
        fromCasing: fromCasing(`${at}#screw-from-casing-${side}`, side, x, facts.frame),
      }
      return { hole, working: [...(hung?.floor ? [] : [ground]), height, hole.fromFloor, hole.fromCasing] }
    })
    const { left, right } = facts.coverage
    return { holes: all.map((each) => each.hole), reach: { left, right }, reckonings: [...all.flatMap((each) => each.working)] }
  })
})

const hung = { coverage, makeUp, heldAtWall: { maybe: heldAtWall } }
const map = rule({ id: 'pegs', on: rail, needs: hung, gives: { hookMap, reckonings } }).run(({ at }, facts) => {
  const places = facts.makeUp.panels.flatMap((panel) => {
    const outward = panel.outer === 'left' ? -1 : 1
    const wall = (facts.heldAtWall ?? []).some((held) => held.side === panel.outer)
    return panel.hooks.map((hook): trade.HookPlace => {
      const share = facts.coverage.shares.find((one) => one.panel === panel.panel)
      const x = ((share?.leading.value ?? 0) + outward * Math.min(hook.across, share?.width.value ?? hook.across)) as Length
      const where = hook.on === 'outer-edge' && wall ? { to: 'peg-rail/wall' } : { to: 'peg-rail/peg', number: hook.n }
      return { panel: panel.panel, hook, ...where, drawn: x, stacked: x }
    })
  })
  const pegs = count(`${at}#pegs`, 'peg-rail/pegs-needed', plus('peg-rail/peg', number(places.filter((place) => place.number !== undefined).length)))
  return { hookMap: { places, bearers: pegs, threading: [] }, reckonings: [pegs] }
})

const about = { id: 'enough', on: rail, needs: { hookMap }, gives: { checks, reckonings }, codes: ['peg-rail/enough'] } as const
const enough = rule(about).run(({ hardware, hardwareAt, at }, facts) =>
  filled({ pegs: member(hardwareAt, ['pegs'], hardware.pegs) }, ({ pegs }) => {
    const over = count(`${at}#pegs-over`, 'peg-rail/pegs-over', plus('peg-rail/pegs-there', pegs), minus('peg-rail/pegs-needed', facts.hookMap.bearers))
    const values = { pegs: { count: pegs.value }, needed: { count: facts.hookMap.bearers.value } }
    return {
      checks: [check('peg-rail/enough', over.value < 0 ? 'fail' : 'pass', hardwareAt, values, 'drill')],
      reckonings: [over],
    }
  }),
)

const seen = { layers, steps, parts, entries }
const shown = rule({ id: 'shown', on: rail, needs: { coverage, topOfRod, hookMap }, gives: seen }).run(({ hardware, hardwareAt }, facts) =>
  filled({ high: member(hardwareAt, ['high'], hardware.high), drop: member(hardwareAt, ['pegDrop'], hardware.pegDrop) }, ({ high, drop }) => {
    const [y, left, right] = [mm(facts.topOfRod.value), mm(facts.coverage.left.value), mm(facts.coverage.right.value)]
    const pegs = facts.hookMap.places
      .filter((place) => place.number !== undefined)
      .map((place) => ({ kind: 'circle', role: 'ring', at: [mm(place.drawn), y - mm(drop.value)], radius: mm(inch / 4) }) as const)
    return {
      layers: [{ view: 'elevation' as const, depth: 40, marks: [box('rod', [left, y - mm(high.value)], [right, y]), ...pegs] }],
      steps: [{ id: 'fix', stage: 'mount' as const, code: 'peg-rail/fix', cautions: ['drapery/caution-ladder'] }],
      parts: [{ what: 'peg-rail/rail', count: 1, hardware: hardwareAt }],
      entries: [{ section: 'what-hangs-here' as const, code: 'peg-rail/entry', values: { rail: hardware.name, high: long(high) } }],
    }
  }),
)

// In English and in Spanish, then the help in both.
const texts: Readonly<Record<string, readonly string[]>> = {
  'peg-rail/peg-drop': ['peg drop', 'caída de la clavija'],
  'peg-rail/screw': ['screw of the rail', 'tornillo del listón'],
  'peg-rail/wall': ['wall', 'pared'],
  'peg-rail/peg': ['peg', 'clavija'],
  'peg-rail/pegs-needed': ['pegs needed', 'clavijas que hacen falta'],
  'peg-rail/pegs-there': ['pegs of the rail', 'clavijas del listón'],
  'peg-rail/pegs-over': ['pegs over', 'clavijas de sobra'],
  'peg-rail/rail': ['rail with pegs', 'listón de clavijas'],
  'peg-rail/enough': ['{pegs} pegs for {needed} hooks.', '{pegs} clavijas para {needed} ganchos.'],
  'peg-rail/enough.fail': [
    'The rail has {pegs} pegs, {needed} hooks need one each.',
    'El listón tiene {pegs} clavijas; {needed} ganchos necesitan una cada uno.',
    'Take a rail with more pegs.',
    'Tome un listón con más clavijas.',
  ],
  'peg-rail/enough.unknown': ['Not known yet whether the pegs are enough.', 'Aún no se sabe si bastan las clavijas.'],
  'peg-rail/fix': ['Fix the rail.', 'Fije el listón.'],
  'peg-rail/fix.done': ['Rail is fixed', 'El listón está fijo'],
  'peg-rail/fix.why': ['Its pegs point up.', 'Sus clavijas miran hacia arriba.'],
  'peg-rail/entry': ['Rail: {rail}, {high} high', 'Listón: {rail}, de {high} de alto'],
}
const wordsOf = (n: 0 | 1) => Object.fromEntries(Object.entries(texts).map(([code, each]) => [code, { says: each[n] ?? '', help: each[n + 2] }]))

/** The stranger's plugin. */
export const pegRail: Plugin = {
  contract: 1,
  id: 'peg-rail',
  format: 1,
  kinds: [rail],
  additions: [],
  upgrades: [],
  rules: [bearing, top, planned, screws, map, enough, shown],
  words: { en: wordsOf(0), es: wordsOf(1) },
}
