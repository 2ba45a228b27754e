import { inches, type Length } from '@evenhem/length'
import type { Job } from '../src/index.ts'
import { type Extensions, extensionsOf, readJob } from '../src/read.ts'

/** A length in inches, as a test says it. */
export const inch = (value: number): Length => inches(value)

/** No plugins at all. */
export const bare: Extensions = { kinds: {}, additions: [], formats: {} }

const length = { $ref: 'https://evenhem.example/job/1/length.schema.json' }
const hardware = { $ref: 'https://evenhem.example/job/1/job.schema.json#/$defs/hardware' }
const closed = (properties: object) => ({ type: 'object', properties, unevaluatedProperties: false })

/** An invented plugin: hardware of a rope on pulleys, and a part of a treatment. */
export const pulleys = {
  id: 'pulleys',
  format: 3,
  kinds: [
    {
      kind: 'pulley',
      schema: { ...hardware, ...closed({ kind: { const: 'pulley' }, rope: length, turns: { type: 'number', multipleOf: 0.5 } }) },
      part: closed({ knots: { type: 'integer', exclusiveMaximum: 9 }, drop: length }),
    },
  ],
  additions: [{ to: 'room', schema: closed({ colour: { type: 'string', minLength: 3, maxLength: 5 } }) }],
}
export const withPulleys = extensionsOf([pulleys])

/** A job of one room and one window, as text. What is given takes the place of its members. */
export function jobText(more: object = {}): string {
  const panel = (id: string) => ({ id, finishedLength: '84', pleats: 7 })
  const treatment = { id: 'over', hardware: 'rope', draw: 'pair', panels: [panel('left'), panel('right')] }
  const window = { id: 'w1', name: 'Window', walls: [{ id: 'a', openings: [{ id: 'o' }] }], treatments: [treatment] }
  const job = {
    format: 'evenhem-job/1',
    uses: { pulleys: 3 },
    units: 'in',
    job: { number: '1', name: 'A house', country: 'US' },
    hardware: [{ id: 'rope', kind: 'pulley', name: 'Rope', rope: '1/2' }],
    rooms: [{ id: 'den', name: 'Den', windows: [window] }],
  }
  return JSON.stringify({ ...job, ...more }, null, 2)
}

/** Reads such a job; throws when something is wrong with it. */
export function jobOf(more: object = {}): Job {
  const { job, diagnostics } = readJob(jobText(more), withPulleys)
  if (!job) throw new Error(JSON.stringify(diagnostics, null, 1))
  return job
}

/** The codes of what is said, and the text that each is about. */
export const codes = (text: string | Uint8Array, extensions = withPulleys): readonly string[] =>
  readJob(text, extensions).diagnostics.map(({ code }) => code)
