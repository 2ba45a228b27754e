import type { Known, Length } from '@evenhem/length'
import { checks, reckonings, rule } from '@evenhem/plugin'
import { coverLess, makeUp as makeUpOf, widthAllowed } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { coverage, makeUp, swapped } from '../facts/index.ts'
import { check, filled, long, magnitude, member, outerSide, panelAt, perhaps } from '../given.ts'

/** How each panel is made up. */
export const makeUpRule = rule({ id: 'make-up', on: 'treatment', needs: {}, gives: { makeUp, reckonings } }).run(({ it, at }) => {
  const members = Object.fromEntries(
    it.panels.flatMap((panel) =>
      (
        [
          'finishedLength',
          'pleats',
          'leadingFlat',
          'firstToLast',
          'return',
          'pin',
          ...(panel.return === 0 ? (['outerFlat'] as const) : []),
        ] as const
      ).map((name) => [`${panel.id}/${name}`, member(panelAt(at, panel.id), [name], panel[name])]),
    ),
  )
  return filled(members, (known) => {
    const panels = it.panels.map((panel) => {
      const of = (name: string) => known[`${panel.id}/${name}`] as never
      const sizes = makeUpOf(panelAt(at, panel.id), {
        pleats: of('pleats'),
        leadingFlat: of('leadingFlat'),
        firstToLast: of('firstToLast'),
        return: of('return'),
        outerFlat: known[`${panel.id}/outerFlat`] as Known<Length> | undefined,
        flatWidth: perhaps(member(panelAt(at, panel.id), ['flatWidth'], panel.flatWidth)),
      })
      return {
        sizes,
        made: {
          panel: panel.id,
          outer: outerSide(it, panel.id),
          pleats: panel.pleats as number,
          hooks: sizes.hooks,
          space: sizes.space,
          finishedWidth: sizes.finishedWidth,
          leadingFlat: of('leadingFlat'),
          firstToLast: of('firstToLast'),
          return: of('return'),
          ...(known[`${panel.id}/outerFlat`] ? { outerFlat: of('outerFlat') } : {}),
          finishedLength: of('finishedLength'),
          pin: of('pin'),
        },
      }
    })
    return { makeUp: { panels: panels.map((each) => each.made) }, reckonings: panels.flatMap((each) => each.sizes.working) }
  })
})

/** Each panel against its share of the rod: never a gap where a pair meets. */
export const panelWidth = rule({
  id: 'panel-width',
  on: 'treatment',
  needs: { coverage, makeUp, swapped: { maybe: swapped } },
  gives: { checks, reckonings },
  codes: ['drapery/panel-width'],
}).run(({ it, at, job }, facts) => {
  // Panels in each other's bags are named as that.
  if (it.draw === 'stationary' || facts.swapped) return {}
  const each = it.panels.flatMap((panel) => {
    const place = panelAt(at, panel.id)
    const made = facts.makeUp.panels.find((one) => one.panel === panel.id)
    const share = facts.coverage.shares.find((one) => one.panel === panel.id)
    if (!made || !share) return []
    const less = coverLess(place, made.leadingFlat, made.firstToLast, made.outerFlat, share.width)
    const off = widthAllowed(place, share.width, ruleOf(job, 'widthOff'))
    const verdict = less.value < 0 ? 'fail' : less.value > off.value ? 'warn' : 'pass'
    const values = {
      panel: { code: `drapery/panel-${share.outer}` },
      share: long(share.width),
      less: magnitude(less),
      off: long(off),
      way: less.value < 0 ? 'short' : 'over',
    }
    return [{ working: [off, less], check: check('drapery/panel-width', verdict, place, values, 'hang') }]
  })
  return { checks: each.map((one) => one.check), reckonings: each.flatMap((one) => one.working) }
})
