import { below } from '@evenhem/job'
import { type Length, minus, plus, sum } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { overFloor, settles } from '../arithmetic/index.ts'
import { pinsAllowed, ruleOf } from '../defaults.ts'
import { coverage, hangLine, makeUp, type PanelMakeUp, panelWeights, swapped, topOfRod } from '../facts/index.ts'
import { check, long, magnitude, panelAt } from '../given.ts'

const panelWord = (panel: PanelMakeUp) => ({ code: `drapery/panel-${panel.outer}` })

/** Cloth that lies on the floor hangs still, or the customer wants it so. */
export const breaks = rule({ id: 'break', on: 'treatment', needs: {}, gives: { checks }, codes: ['drapery/break'] }).run(
  ({ it, at }) => {
    if (it.clearance === undefined || it.clearance >= 0) return {}
    const isMeant = it.draw === 'stationary' || it.breakAgreed === true
    const place = below(at, 'clearance')
    const how = it.draw === 'stationary' ? 'stationary' : 'agreed'
    return {
      checks: [check('drapery/break', isMeant ? 'pass' : 'warn', place, { lies: magnitude({ value: it.clearance }), how })],
    }
  },
)

/** Pins must sit in the heading, above its lower edge: told of the panel where they come nearest to it. */
export const pinInHeading = rule({
  id: 'pin-in-heading',
  on: 'treatment',
  needs: { makeUp },
  gives: { checks },
  codes: ['drapery/pin-in-heading'],
}).run(({ it }, facts) => {
  const each = facts.makeUp.panels.flatMap((panel) => {
    const height = it.panels.find((one) => one.id === panel.panel)?.heading?.height
    return height === undefined ? [] : [{ panel, height, left: height - panel.pin.value }]
  })
  const [worst] = [...each].sort((a, b) => a.left - b.left)
  if (!worst) return {}
  const values = { panel: panelWord(worst.panel), pin: long(worst.panel.pin), height: { length: worst.height } }
  return { checks: [check('drapery/pin-in-heading', worst.left > 0 ? 'pass' : 'fail', worst.panel.pin.from, values, 'mark')] }
})

/** The pins of the panels of a treatment, which are meant to be alike. */
export const pinsAlike = rule({
  id: 'pins-alike',
  on: 'treatment',
  needs: { makeUp },
  gives: { checks, reckonings },
  codes: ['drapery/pins-alike'],
}).run(({ at, job }, facts) => {
  const [first, ...others] = facts.makeUp.panels
  if (!first || others.length === 0) return {}
  const far = others.reduce((a, b) => (Math.abs(b.pin.value - first.pin.value) > Math.abs(a.pin.value - first.pin.value) ? b : a))
  const apart = sum(`${at}#pins-apart`, 'drapery/pins-apart', plus('drapery/pin', far.pin), minus('drapery/pin', first.pin))
  const near = pinsAllowed(job)
  const isApart = Math.abs(apart.value) > near.value
  // A longer panel hangs as high with deeper pins.
  const taken = isApart && Math.abs(apart.value - (far.finishedLength.value - first.finishedLength.value)) <= near.value
  const verdict = isApart && !taken ? 'warn' : 'pass'
  const values = { first: long(first.pin), far: long(far.pin), apart: magnitude(apart), near: long(near), panel: panelWord(far) }
  const put = verdict === 'warn' ? { put: [{ at: far.pin.from, value: { length: first.pin.value } }] } : {}
  const says = taken ? { says: 'drapery/pins-alike.taken' } : {}
  return { checks: [{ ...check('drapery/pins-alike', verdict, far.pin.from, values), ...says, ...put }], reckonings: [apart] }
})

/** Spaces between pleats that are wide sag, and unlike ones of a pair look unlike; pleat counts may differ. */
export const spaces = rule({
  id: 'spaces',
  on: 'treatment',
  needs: { makeUp, swapped: { maybe: swapped } },
  gives: { checks },
  codes: ['drapery/pleat-spaces'],
}).run(({ it, at, job }, facts) => {
  const [most, agree] = [ruleOf(job, 'spaceMost'), ruleOf(job, 'spacesAgree')]
  const widest = facts.makeUp.panels.reduce<PanelMakeUp | undefined>(
    (a, b) => (!a || b.space.value > a.space.value ? b : a),
    undefined,
  )
  // Panels in each other's bags are named as that.
  if (!widest || facts.swapped) return {}
  const all = facts.makeUp.panels.map((panel) => panel.space.value)
  const apart = Math.max(...all) - Math.min(...all)
  const isWide = widest.space.value > most.value
  const isUnlike = it.draw === 'pair' && apart > agree.value
  const values = {
    widest: long(widest.space),
    most: long(most),
    apart: { length: apart as Length },
    agree: long(agree),
    how: isWide ? 'wide' : 'unlike',
  }
  return {
    checks: [
      check('drapery/pleat-spaces', isWide || isUnlike ? 'warn' : 'pass', isWide ? panelAt(at, widest.panel) : at, values),
    ],
  }
})

/** Cloth that grows longer on the rod than it clears the floor will lie on it: said with the order, before it is cut. */
export const settling = rule({
  id: 'settling',
  on: 'treatment',
  needs: { makeUp, hangLine },
  gives: { checks, reckonings },
  codes: ['drapery/settling'],
}).run(({ it, at, fabric }, facts) => {
  if (fabric?.settling === undefined || facts.hangLine.hemAt === 'apron' || (it.clearance ?? 0) < 0) return {}
  const percent = { value: fabric.settling, from: `/fabrics/${fabric.id}/settling` }
  const each = facts.makeUp.panels.map((panel) => settles(`${panelAt(at, panel.panel)}#settles`, panel.finishedLength, percent))
  const least = Math.min(...facts.hangLine.panels.map((panel) => panel.clears.value))
  const most = each.reduce((a, b) => (b.value > a.value ? b : a))
  const values = { settles: long(most), clearance: { length: least as Length } }
  return { checks: [check('drapery/settling', most.value > least ? 'warn' : 'pass', percent.from, values)], reckonings: each }
})

/** NIOSH lifting equation, load constant 23 kg (51 lb), for one person under the best conditions; from memory. */
const onePersonKg = 23
/** A panel that one person should not lift. */
export const lift = rule({
  id: 'lift',
  on: 'treatment',
  needs: { panelWeights: { maybe: panelWeights } },
  gives: { checks },
  codes: ['drapery/lift'],
}).run(({ it, at }, facts) => {
  const [first] = [...(facts.panelWeights ?? [])].sort((a, b) => b.weight.value - a.weight.value)
  if (!first) return {}
  const panel = panelAt(at, first.panel)
  const isSaid = it.panels.find(({ id }) => id === first.panel)?.weight !== undefined
  const values = { mass: { mass: first.weight.value }, most: { mass: onePersonKg } }
  const verdict = first.weight.value > onePersonKg ? 'warn' : 'pass'
  return { checks: [check('drapery/lift', verdict, isSaid ? below(panel, 'weight') : panel, values)] }
})

/** Work at heights that one person on a ladder should not do. */
export const ladder = rule({
  id: 'ladder',
  on: 'treatment',
  needs: { topOfRod, hangLine },
  gives: { checks, reckonings },
  codes: ['drapery/ladder'],
}).run(({ at, job }, facts) => {
  const most = ruleOf(job, 'ladderHeight')
  const height = overFloor(`${at}#working-height`, 'drapery/working-height', facts.topOfRod, facts.hangLine.highestFloor)
  const values = { height: long(height), most: long(most) }
  return { checks: [check('drapery/ladder', height.value > most.value ? 'warn' : 'pass', at, values)], reckonings: [height] }
})

/** The repeat of the cloth that came against the one that was ordered. */
export const repeatReceived = rule({
  id: 'repeat-received',
  on: 'treatment',
  needs: {},
  gives: { checks },
  codes: ['drapery/repeat-received'],
}).run(({ fabric }) => {
  const { vertical, received } = fabric?.repeat ?? {}
  if (!fabric || vertical === undefined || received === undefined) return {}
  const values = { ordered: { length: vertical }, received: { length: received } }
  return {
    checks: [
      check('drapery/repeat-received', vertical === received ? 'pass' : 'warn', `/fabrics/${fabric.id}/repeat/received`, values),
    ],
  }
})

/** Where the ceiling decides the height, one reading of it is not enough. */
export const ceilingRead = rule({
  id: 'ceiling-read',
  on: 'treatment',
  needs: { coverage },
  gives: { checks },
  codes: ['drapery/ceiling-read'],
}).run(({ it, at, window }) => {
  if (it.rod?.belowCeiling === undefined) return {}
  const count = window.ceiling?.length ?? 0
  return {
    checks: [check('drapery/ceiling-read', count < 2 ? 'warn' : 'pass', below(at, 'rod', 'belowCeiling'), { count: { count } })],
  }
})
