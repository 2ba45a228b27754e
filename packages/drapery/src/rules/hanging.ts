import { rule, type Step, steps } from '@evenhem/plugin'
import { ruleOf } from '../defaults.ts'
import { held, holes, hookMap, overlap, reach, rod } from '../facts/index.ts'
import { filled, magnitude, member, windowOf } from '../given.ts'
import { brackets, drilling } from './brackets.ts'
import { shownCaptures } from './hand-over.ts'
import { hemCaptures, hooksSaid } from './true-up-steps.ts'

const ladder = 'drapery/caution-ladder'

/** Hang from the leading edge outward, read the hem, and finish what the length has proven. */
export const hanging = rule({
  id: 'hanging',
  on: 'treatment',
  needs: {
    ...{ hookMap, holes, overlap: { maybe: overlap }, rod: { maybe: rod } },
    ...{ reach: { maybe: reach }, held: { maybe: held } },
  },
  gives: { steps },
}).run(({ it, at, window, job }, facts) =>
  filled({ clearance: member(at, ['clearance'], it.clearance) }, ({ clearance }) => {
    const oneScrew = drilling(it, brackets(facts.holes), window, windowOf(at), facts.held) === 'wood'
    const draw = it.draw === 'pair' || it.draw === 'stationary' ? it.draw : 'one'
    const trial: Step = {
      id: 'trial',
      stage: 'hang',
      code: 'drapery/trial',
      cautions: [ladder, 'drapery/caution-lift'],
      tools: ['drapery/tape'],
    }
    const list: readonly Step[] = [
      ...(oneScrew ? [] : [trial]),
      {
        id: 'hang',
        stage: 'hang',
        after: oneScrew ? [] : ['trial'],
        code: 'drapery/hang',
        values: { draw, count: { count: facts.hookMap.places.length } },
        cautions: [ladder, 'drapery/caution-lift'],
      },
      {
        id: 'read-hem',
        stage: 'true-up',
        code: 'drapery/read-hem',
        values: {
          draw,
          to: it.hemAt ?? 'floor',
          lies: clearance.value < 0 ? 'yes' : 'no',
          clearance: magnitude(clearance),
          ...hooksSaid(it, facts.hookMap),
        },
        numbers: [{ what: 'drapery/clearance', value: clearance.value, of: clearance.from }],
        tools: ['drapery/tape'],
        captures: hemCaptures(it, at, facts.hookMap, clearance, ruleOf(job, 'hemEven')),
      },
      {
        id: 'all-screws',
        stage: 'true-up',
        after: ['read-hem', 'set-pins'],
        code: oneScrew ? 'drapery/all-screws' : 'drapery/look-over-screws',
        cautions: [ladder],
      },
      {
        id: 'hand-over',
        stage: 'hand-over',
        code: 'drapery/hand-over',
        values: { draw },
        captures: shownCaptures(it, at, job, facts),
      },
    ]
    return { steps: list }
  }),
)
