import { below, type Place } from '@evenhem/job'
import { minus, plus, sum } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { ruleOf } from '../defaults.ts'
import { type HangLine, hangLine, unlined } from '../facts/index.ts'
import { check, long, magnitude } from '../given.ts'

/** Whether the cloth of a treatment has no lining, as a sheer has none. What is lined is a drapery of its own and is not judged against the next. */
export const linedRule = rule({ id: 'unlined', on: 'treatment', needs: {}, gives: { unlined } }).run(({ fabric }) =>
  fabric ? { unlined: !fabric.lining && !fabric.interlining } : {},
)

/** Whether two hems can be compared: both clear the same thing. One that lies on the floor, or ends at the sill before one that goes down, is meant so. */
const areAlike = (inner: HangLine, outer: HangLine): boolean =>
  inner.hemAt === outer.hemAt && [...inner.panels, ...outer.panels].every(({ clears }) => clears.value > 0)

/**
 * The hem of a sheer behind a drapery: 1/4 to 1/2 in higher, so that it does not show below (common practice, no source; how much from memory). As near as
 * heights must agree is near enough; it may only warn, since pins take it up.
 */
export const layerHems = rule({
  id: 'layer-hems',
  on: 'window',
  needs: { hung: { each: hangLine }, lightly: { each: unlined } },
  gives: { checks, reckonings },
  codes: ['drapery/layer-hems'],
}).run(({ it, at, job }, { hung, lightly }) => {
  const [least, most, near] = [ruleOf(job, 'hemAboveLeast'), ruleOf(job, 'hemAboveMost'), ruleOf(job, 'heightsAgree')]
  const lineOf = (place: Place) => hung.find((one) => one.at === place)?.value
  const isUnlined = (place: Place) => lightly.some((one) => one.at === place && one.value)
  const each = it.treatments.slice(0, -1).flatMap(({ id }, i) => {
    const [inner, outer] = [below(at, 'treatments', id), below(at, 'treatments', it.treatments[i + 1]?.id ?? '')]
    const [behind, front] = [lineOf(inner), lineOf(outer)]
    if (!behind || !front || !isUnlined(inner) || !areAlike(behind, front)) return []
    const above = sum(
      `${inner}#hem-above`,
      'drapery/hem-above',
      plus('drapery/hem', behind.hem),
      minus('drapery/hem-in-front', front.hem),
    )
    const isOff = above.value < least.value - near.value || above.value > most.value + near.value
    const values = {
      above: magnitude(above),
      way: above.value === 0 ? 'level' : above.value < 0 ? 'lower' : 'higher',
      least: long(least),
      most: long(most),
    }
    return [{ above, check: check('drapery/layer-hems', isOff ? 'warn' : 'pass', inner, values) }]
  })
  return { checks: each.map((one) => one.check), reckonings: each.map(({ above }) => above) }
})
