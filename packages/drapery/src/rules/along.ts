import { checks, reckonings, rule } from '@evenhem/plugin'
import { coverLess, makeUp as makeUpOf, pairCoverage, pastCasing, widthAllowed } from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import { coverage, makeUp } from '../facts.ts'
import { check, filled, long, magnitude, member, openingOf, outerSide, panelAt, perhaps, windowOf } from '../given.ts'

/** Where the closed drapery begins, meets and ends. */
export const coverageRule = rule({ id: 'coverage', on: 'treatment', needs: {}, gives: { coverage, reckonings } }).run(
  ({ it, at, window }) => {
    const { opening, openingAt } = openingOf(window, windowOf(at))
    const members = {
      casing: member(openingAt, ['casing', 'width'], opening.casing?.width),
      rodWidth: member(at, ['rod', 'width'], it.rod?.width),
    }
    return filled(members, ({ casing, rodWidth }) => {
      const { working, left, right, meets, share } = pairCoverage(at, {
        casing,
        rodWidth,
        pastLeft: perhaps(member(at, ['rod', 'pastLeft'], it.rod?.pastLeft)),
      })
      const shares = it.panels.map((panel) => ({ panel: panel.id, width: share, outer: outerSide(it, panel.id) }))
      return { coverage: { left, right, meets, shares }, reckonings: working }
    })
  },
)

/** How each panel is made up. */
export const makeUpRule = rule({ id: 'make-up', on: 'treatment', needs: {}, gives: { makeUp, reckonings } }).run(({ it, at }) => {
  const members = Object.fromEntries(
    it.panels.flatMap((panel) =>
      (['finishedLength', 'pleats', 'leadingFlat', 'firstToLast', 'return', 'pin'] as const).map((name) => [
        `${panel.id}/${name}`,
        member(panelAt(at, panel.id), [name], panel[name]),
      ]),
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
          finishedLength: of('finishedLength'),
          pin: of('pin'),
        },
      }
    })
    return { makeUp: { panels: panels.map((each) => each.made) }, reckonings: panels.flatMap((each) => each.sizes.working) }
  })
})

/** The closed drapery against the casing: it must reach past it on both sides. */
export const coverageCheck = rule({
  id: 'coverage-check',
  on: 'treatment',
  needs: { coverage },
  gives: { checks, reckonings },
  codes: ['drapery/coverage'],
}).run(({ at, window }, facts) => {
  const { opening, openingAt } = openingOf(window, windowOf(at))
  return filled({ casing: member(openingAt, ['casing', 'width'], opening.casing?.width) }, ({ casing }) => {
    const past = pastCasing(at, facts.coverage.left, facts.coverage.right, casing)
    const short = past.left.value < 0 || past.right.value < 0
    const worse = past.left.value <= past.right.value ? ('left' as const) : ('right' as const)
    const values = {
      left: long(past.left),
      right: long(past.right),
      short: magnitude(past[worse]),
      side: { code: `drapery/${worse}` },
    }
    return {
      checks: [check('drapery/coverage', short ? 'fail' : 'pass', at, values, 'mark')],
      reckonings: [past.left, past.right],
    }
  })
})

/** Each panel against its share of the rod: never a gap where a pair meets. */
export const panelWidth = rule({
  id: 'panel-width',
  on: 'treatment',
  needs: { coverage, makeUp },
  gives: { checks, reckonings },
  codes: ['drapery/panel-width'],
}).run(({ it, at, job }, facts) => {
  const each = it.panels.flatMap((panel) => {
    const place = panelAt(at, panel.id)
    const made = facts.makeUp.panels.find((one) => one.panel === panel.id)
    const share = facts.coverage.shares.find((one) => one.panel === panel.id)
    if (!made || !share) return []
    const less = coverLess(place, made.leadingFlat, made.firstToLast, share.width)
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
