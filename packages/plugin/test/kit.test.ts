import type { Job, Treatment } from '@evenhem/job'
import { createPlanner } from '@evenhem/planner'
import { expect, test } from 'vitest'
import { type Check, checks, type Fact, layers, type Plugin, parts, type Rule, reckonings, rule, steps } from '../src/index.ts'
import { type Conformance, changed, conformance } from '../src/kit.ts'

const fact = (id: string, more: Partial<Fact> = {}) =>
  ({ id: `good/${id}@1`, of: 'treatment', many: false, schema: { type: 'integer' }, ...more }) as Fact<number, 'treatment'> & {
    readonly many: false
  }
const [width, spare] = [fact('width'), fact('spare')]
const treatment = { id: 'over', hardware: 'h', draw: 'pair', panels: [], clearance: 3 } as unknown as Treatment
const job: Job = {
  format: 'evenhem-job/1',
  units: 'in',
  job: { number: '1', name: 'Invented', country: 'US' },
  hardware: [],
  rooms: [{ id: 'r', name: 'R', windows: [{ id: 'w', name: 'W', walls: [], treatments: [treatment] }] }],
}
const clearance = '/rooms/r/windows/w/treatments/over/clearance'
const jobs = [job, changed(job, clearance, 9), changed(job, clearance)]

const gives = rule({ id: 'gives', on: 'treatment', needs: { spare: { maybe: spare } }, gives: { width } }).run(({ it, at }) =>
  it.clearance === undefined ? { ask: [`${at}/clearance`] } : { width: it.clearance * 2 },
)
const judges = rule({ id: 'judges', on: 'treatment', needs: { width }, gives: { checks }, codes: ['good/wide'] }).run(
  ({ at }, { width }) => ({
    checks: [{ code: 'good/wide', verdict: width > 10 ? 'fail' : 'pass', at, values: { width: { count: width } } }],
  }),
)
const words = { en: { 'good/wide': { says: 'It is {width} wide.' } }, es: { 'good/wide': { says: 'Mide {width}.' } } }
const good: Plugin = { contract: 1, id: 'good', format: 1, kinds: [], additions: [], upgrades: [], rules: [gives, judges], words }

/** The laws that a plugin breaks, with what is wrong. */
function broken(plugin: Plugin, more: Partial<Conformance> = {}): Readonly<Record<string, string>> {
  const failed: Record<string, string> = {}
  const note: Conformance['test'] = (name, run) => {
    try {
      run()
    } catch (error) {
      failed[name.replace('good: ', '')] = (error as Error).message.replace(/^.*\n- /, '')
    }
  }
  conformance(plugin, { test: note, createPlanner, with: [], jobs, ...more })
  return failed
}
const withRules = (...rules: readonly Rule[]): Plugin => ({ ...good, rules: [gives, judges, ...rules] })
const extra = (run: Rule['run'], more: Partial<Rule> = {}): Rule => ({
  ...rule({ id: 'extra', on: 'treatment', needs: {}, gives: { spare } }).run(() => ({})),
  run,
  ...more,
})
const check = (more: Partial<Check>) => (subject: { readonly at: string }) => ({
  checks: [{ code: 'good/wide', verdict: 'pass', at: subject.at, values: { width: { count: 1 } }, ...more }],
})

const faults = 'no rule has a fault: it changes nothing it reads and gives what it declares, as the owners of the facts say'

test('a plugin that keeps the laws passes', () => {
  expect(broken(good)).toEqual({})
})

test('a need that nobody gives is found', () => {
  const misspelt = extra(() => ({}), { needs: { width: fact('widht') } })
  expect(broken(withRules(misspelt))).toEqual({
    'every fact that it needs has a giver': 'extra needs good/widht@1, which nobody gives',
    'every rule runs in some example': 'extra never ran',
  })
})

test('a rule that changes what it reads is found', () => {
  expect(
    broken(
      withRules(
        extra((subject) => {
          subject.it.clearance = 1
          return {}
        }),
      ),
    )[faults],
  ).toMatch(/Unexpected error in good\/extra: Cannot (assign|add)/)
})

test('a fact that its schema refuses is found, also when the giver declares another schema', () => {
  expect(broken(withRules(extra(() => ({ spare: 1.5 }))))[faults]).toMatch(
    /^Unexpected value of good\/spare@1 from good\/extra: {2}must be integer/,
  )
  const stranger: Plugin = {
    ...good,
    id: 'stranger',
    words: {},
    rules: [extra(() => ({ own: 'wide' }), { gives: { own: fact('spare', { schema: {} }) } })],
  }
  expect(broken(stranger, { with: [good] })[`stranger: ${faults}`]).toMatch(/must be integer/)
})

test('what the host collects has a schema too', () => {
  expect(
    broken(
      withRules(extra(check({ values: { width: { count: 1, mass: 2 } as never } }), { gives: { checks }, codes: ['good/wide'] })),
    )[faults],
  ).toMatch(/host\/checks@1.*must NOT have more than 1 properties/)
  expect(broken(withRules(extra(() => ({ parts: [{ what: 'no code', count: 1 }] }), { gives: { parts } })))[faults]).toMatch(
    /host\/parts@1.*must match pattern/,
  )
})

test('a rule with a memory is found', () => {
  let n = 0
  expect(broken(withRules(extra(() => ({ spare: n++ }))))['a rule answers the same twice']).toBe(
    'extra answers differently the second time',
  )
})

test('an answer that JSON would change is found', () => {
  const date = extra(() => ({ spare: new Date(0) }), { gives: { spare: fact('spare', { schema: {} }) } })
  expect(broken(withRules(date))['a rule answers the same after its input went through JSON']).toBe(
    'extra: its answer/spare is no plain data',
  )
})

test('a rule that looks at what JSON does not keep is found', () => {
  const byIdentity = extra((subject) => ({ spare: subject.window.treatments[0] === subject.it ? 1 : 0 }))
  expect(broken(withRules(byIdentity))['a rule answers the same after its input went through JSON']).toBe(
    'extra answers differently after its input went through JSON',
  )
})

test('a rule that can’t do without what it may do without is found', () => {
  const needy = extra((_, { width }) => ({ parts: [{ what: 'good/wide', count: width.valueOf() }] }), {
    needs: { width: { maybe: width } },
    gives: { parts },
  })
  expect(broken(withRules(needy), { jobs: jobs.slice(0, 2) })['a rule bears that nobody gives what it may do without']).toMatch(
    /^extra throws without width: /,
  )
})

test('a place that holds a value and is asked for is found', () => {
  expect(broken(withRules(extra(() => ({ ask: [clearance] }))))['a rule asks only for places that are empty']).toBe(
    `extra asks for ${clearance}, which holds a value`,
  )
})

test('codes without words are found: of checks, steps, cautions, parts, reckonings, captions and values', () => {
  const rules = [
    extra(
      () => ({
        steps: [
          {
            id: 's',
            stage: 'hang',
            code: 'good/step',
            cautions: ['good/caution'],
            tools: ['good/tool'],
            numbers: [{ what: 'good/number', value: 1, of: 'x' }],
          },
        ],
        parts: [{ what: 'good/part', count: 1 }],
        reckonings: [
          {
            name: '#r',
            what: 'good/sum',
            value: 1,
            unit: 'count',
            how: 'sum',
            terms: [{ what: 'good/term', sign: 1, value: 1, from: 'number:1' }],
          },
        ],
        layers: [
          {
            view: 'plan',
            depth: 1,
            marks: [{ kind: 'group', id: 'g', marks: [{ kind: 'caption', role: 'mark', at: [0, 0], code: 'good/caption' }] }],
          },
        ],
      }),
      { gives: { steps, parts, reckonings, layers } },
    ),
    extra(check({ says: 'good/says', values: { side: { code: 'other/left' } } }), {
      id: 'more',
      gives: { checks },
      codes: ['good/wide'],
    }),
  ]
  const found = broken({ ...withRules(...rules), words: { en: words.en } })[
    'every code that it gives has words in all its languages'
  ]
  for (const name of ['says', 'step', 'number', 'caution', 'tool', 'part', 'sum', 'term', 'caption'])
    expect(found).toContain(`"good/${name}" of good/`)
  expect(found).toContain('"other/left" of good/more has no words in "en"')
})

test('a sentence that lacks a value, or counts by what is no number, is found', () => {
  const texts = { en: { 'good/wide': { says: '{width} of {height}', help: '{width, plural, other {#}}' } } }
  expect(broken({ ...good, words: texts })['every sentence gets the values that it needs']).toBe(
    '"good/wide" of good/judges: says in "en" needs {height}',
  )
  const lengthy = extra(check({ values: { width: { length: 1 as never }, height: 'high' } }), {
    gives: { checks },
    codes: ['good/wide'],
  })
  expect(broken({ ...withRules(lengthy), words: texts })['every sentence gets the values that it needs']).toContain(
    '"good/wide" of good/extra: help in "en" needs {width, as a number}',
  )
})

test('languages that differ are found', () => {
  const uneven = { en: { ...words.en, 'good/more': { says: 'More.' } }, es: { 'good/wide': { says: 'Mide {ancho}.' } } }
  expect(broken({ ...good, words: uneven })['its languages have the same codes with the same arguments']).toBe(
    '"good/more" has no words in "es"\n- "good/wide": says in "es" has {ancho}, in "en" {width}',
  )
})

test('a sentence that can’t be read is found', () => {
  expect(
    broken({ ...good, words: { en: { 'good/wide': { says: 'It is {width' } } } })[
      'its languages have the same codes with the same arguments'
    ],
  ).toMatch(/^"good\/wide": says in "en" can't be read: /)
})

const exampled = 'every check has an example that passes and one that does not'
test('a check without examples is found, one that can only warn may say so', () => {
  expect(broken(good, { jobs: [job, changed(job, clearance)] })[exampled]).toBe('"good/wide" has no example of warn or fail')
  expect(broken(good, { jobs: [job, changed(job, clearance)], verdicts: { 'good/wide': ['pass'] } })).toEqual({})
})

test('a check that is not among the codes of its rule is found', () => {
  expect(broken(withRules(extra(check({}), { gives: { checks } })))[exampled]).toBe(
    'good/extra gives "good/wide", which is not among its codes',
  )
})

test('a rule that no example runs is found', () => {
  expect(broken(withRules(extra(() => ({}), { on: { kind: 'pole', schema: {} } })))).toEqual({
    'every rule runs in some example': 'extra never ran',
  })
})

test('a rule that throws where its neighbours are not is found', () => {
  const neighbour: Plugin = { ...good, id: 'neighbour', rules: [extra(() => ({ spare: 1 }))], words: {} }
  const leans = extra(
    (_, { spare }) => {
      if (spare === undefined) throw new Error('alone')
      return {}
    },
    { id: 'leans', needs: { spare: { maybe: spare } }, gives: {} },
  )
  const more: Plugin = { ...good, id: 'more', rules: [], words: {} }
  expect(broken(withRules(leans), { with: [more, neighbour] })['it stands alone']).toMatch(
    /^Unexpected error in good\/leans: alone/,
  )
})

test('a value is put in a copy of a job, or taken out', () => {
  expect([
    changed(job, clearance, 5).rooms[0]?.windows[0]?.treatments[0]?.clearance,
    job.rooms[0]?.windows[0]?.treatments[0]?.clearance,
  ]).toEqual([5, 3])
  expect('clearance' in (changed(job, clearance).rooms[0]?.windows[0]?.treatments[0] ?? {})).toBe(false)
  expect(changed(job, clearance, 5).hardware).toBe(job.hardware)
})
