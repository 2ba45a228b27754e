import type { Job, Treatment } from '@evenhem/job'
import { createPlanner } from '@evenhem/planner'
import { expect, test } from 'vitest'
import {
  type Check,
  checks,
  type Fact,
  type Kind,
  layers,
  type Plugin,
  parts,
  type Rule,
  reckonings,
  rule,
  steps,
} from '../src/index.ts'
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

test('rules that cannot fit are told once, and nothing else is tried', () => {
  const found = broken(withRules(extra(() => ({}), { needs: { width }, gives: { width } })))
  const { 'its rules fit together': told, ...others } = found
  expect(told).toContain('unexpected second giver of good/width@1')
  expect(new Set(Object.values(others))).toEqual(
    new Set(['Not tried, since the plugins do not fit together; see “its rules fit together”']),
  )
})

test('a need that nobody gives is found', () => {
  const misspelt = extra(() => ({}), { needs: { width: fact('widht') } })
  expect(broken(withRules(misspelt))).toEqual({
    'every fact that it needs has a giver':
      'extra needs good/widht@1, which nobody gives; give it, need { maybe: … }, or try it with the plugin that does',
    'every rule runs in some example':
      'extra never ran to its end: it needs good/widht@1; add a job in which the rules that give it have all that they ask for',
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
    /^Unexpected value of good\/spare@1 from good\/extra: must be integer/,
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
    'extra answers differently the second time; answer from what it is given alone',
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
    `extra asks for ${clearance}, which holds a value; ask for what is empty`,
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
    '"good/wide" of good/judges: says in "en" needs {height}; give it among its values, or say another code there',
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
    '"good/more" has no words in "es"; add them to words.es\n- "good/wide": says in "es" has {ancho}, in "en" {width}',
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
  expect(broken(good, { jobs: [job, changed(job, clearance)] })[exampled]).toBe(
    '"good/wide" has no example of warn or fail; add a job in which it is so',
  )
  expect(broken(good, { jobs: [job, changed(job, clearance)], verdicts: { 'good/wide': ['pass'] } })).toEqual({})
})

test('a check that is not among the codes of its rule is found', () => {
  expect(broken(withRules(extra(check({}), { gives: { checks } })))[exampled]).toBe(
    'good/extra gives "good/wide", which is not among its codes; add it',
  )
})

test('a rule that no example runs is found', () => {
  expect(broken(withRules(extra(() => ({}), { on: { kind: 'pole', schema: {} } })))).toEqual({
    'its names are names': 'extra is on the kind "pole", which the plugin does not list; add it to `kinds`',
    'every rule runs in some example': 'extra never ran to its end: no job has hardware of the kind "pole"; add one',
  })
})

test('a rule that throws everywhere is told with what it threw, one that gives nothing without a throw of ours', () => {
  const throws = extra(() => {
    throw new Error('boom')
  })
  expect(broken(withRules(throws))['every rule runs in some example']).toBe(
    'extra never ran to its end: Unexpected error in good/extra: boom; mend that first',
  )
  expect(Object.values(broken(withRules(extra(() => undefined as never)))).join()).not.toContain('Cannot read properties')
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

test('a name that no job file could hold, and a code that is none, are found', () => {
  const found = broken({ ...good, id: 'Good rod', rules: [{ ...judges, codes: ['wide'] }] })['Good rod: its names are names']
  expect(found).toBe(
    'Unexpected id "Good rod", expected small letters, digits and hyphens; rename it\n- Unexpected code "wide" of judges, expected one like "Good rod/long-enough"; rename it',
  )
})

const numbered = 'its format is a number with an upgrade to each'
test('a format that no job can name, or that no upgrade leads to, is found', () => {
  expect(broken({ ...good, format: 1.5 })[numbered]).toBe(
    'Unexpected format 1.5, expected a whole number from 1 up; begin with 1',
  )
  expect(broken({ ...good, format: 2 })[numbered]).toBe(
    'Unexpected format 2 without an upgrade to 2; add { to: 2, because, up } to `upgrades`',
  )
  expect(broken({ ...good, upgrades: [{ to: 2, because: 'x', up: (item) => item }] })[numbered]).toMatch(
    /^Unexpected upgrade to 2/,
  )
})

test('a schema that is open, silent about a member or leads nowhere is found', () => {
  const inner = {
    type: 'object',
    description: 'Size.',
    properties: { high: { $ref: 'https://evenhem.example/job/1/lenght.schema.json' } },
  }
  const pole: Kind = {
    kind: 'pole',
    schema: { properties: { size: inner }, unevaluatedProperties: false },
    part: { type: 'object' },
  }
  const found = broken({ ...good, kinds: [pole] })['its schemas are closed, and every member says what it is for']
  expect(found?.split('\n- ').map((line) => line.slice(0, 70))).toEqual([
    'The schema of the kind "pole" does not begin with "$ref": "https://eve',
    'The schema of the kind "pole" at "size" is open; close it with "uneval',
    'The schema of the kind "pole" at "size" does not say what "high" is fo',
    'The schema of the kind "pole" at "size" at "high" refers to https://ev',
    'The schema of the part of the kind "pole" is open; close it with "unev',
  ])
})

test('a plugin that speaks one language is found', () => {
  expect(broken({ ...good, words: { en: words.en } })).toEqual({
    'it speaks English and Spanish': 'It has no words in "es"; add words.es with the same codes',
  })
})

test('a fact that is declared and never given is found', () => {
  expect(broken(withRules(extra(() => ({}))))['every fact that it declares is given in some example']).toBe(
    'extra declares good/spare@1 and never gives it; add a job in which it does, or leave it out of `gives`',
  )
})

const opened = 'every number has its working, which a person can open'
test('a number whose working does not hold is found', () => {
  const sum = (value: number, from: string) => ({
    ...{ name: '#twice', what: 'good/wide', value, unit: 'count', how: 'sum' },
    terms: [{ what: 'good/wide', sign: 1, value: 3, from }],
  })
  const says = (value: number, from: string) =>
    broken(withRules(extra(() => ({ reckonings: [sum(value, from)] }), { gives: { reckonings } })), { jobs: jobs.slice(0, 2) })[
      opened
    ]
  expect(says(4, 'number:3')).toMatch(/^Unexpected value 4 of #twice, expected 3 \(sum of 3\)/)
  expect(says(3, clearance)).toBe(
    `Unexpected term good/wide 3 of #twice, expected 9 as at ${clearance}; read it there, or name where it is from`,
  )
  expect(says(3, '/nowhere')).toMatch(
    /^Unexpected term good\/wide of #twice from \/nowhere, where nothing stands; name the place/,
  )
})

test('a number inside a fact that nobody can open is found', () => {
  const hidden = { name: '#hidden', what: 'good/wide', value: 1, unit: 'count', how: 'sum', terms: [] }
  expect(broken(withRules(extra(() => ({ spare: hidden }), { gives: { spare: fact('spare', { schema: {} }) } })))[opened]).toBe(
    'extra gives a fact that holds #hidden, which is not among the reckonings; give it there too',
  )
})

test('a drawing in nanometres is found', () => {
  const bar = { kind: 'rect', role: 'rod', at: [0, 0], width: 2_000_000_000, height: 25_000_000 }
  const drawing = extra(() => ({ layers: [{ view: 'elevation', depth: 1, marks: [bar] }] }), { gives: { layers } })
  expect(broken(withRules(drawing))['what it draws is in millimetres']).toBe(
    'good/extra draws at 2000000000 in the view "elevation", expected millimetres; make them with `mm` of @evenhem/drapery',
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
