import { box, mm } from '@evenhem/drapery'
import { bearingDrop, coverage, hangLine, projection, topOfRod } from '@evenhem/drapery/facts'
import { below, type Hardware } from '@evenhem/job'
import { type Length, minus, plus, sum } from '@evenhem/length'
import { checks, type Kind, layers, type Plugin, parts, reckonings, rule } from '@evenhem/plugin'
import { words } from './words.ts'

/** An entry under `hardware` of this kind: what its maker prints, and how long it was cut. Members may be missing: then rules ask. */
interface PlainPole extends Hardware {
  readonly projection?: Length
  readonly drop?: Length
  readonly thick?: Length
  readonly cut?: Length
}
const length = { $ref: 'https://evenhem.example/job/1/length.schema.json' }
const pole: Kind<PlainPole> = {
  kind: 'plain-pole',
  schema: {
    $ref: 'https://evenhem.example/job/1/job.schema.json#/$defs/hardware',
    type: 'object',
    description: 'A plain pole, cut to length.',
    properties: {
      kind: { const: 'plain-pole', description: 'A plain pole, cut to length.' },
      projection: { ...length, description: 'From the wall to where the hooks bear.' },
      drop: { ...length, description: 'From the top of the pole down to where the hooks bear.' },
      thick: { ...length, description: 'How thick the pole is.' },
      cut: { ...length, description: 'How long the pole was cut.' },
    },
    unevaluatedProperties: false,
  },
}

/** What drapery wants to know of any hardware. A member that is not there is asked for. */
const bearing = rule({ id: 'bearing', on: pole, needs: {}, gives: { projection, bearingDrop } }).run(
  ({ hardware, hardwareAt }) => {
    const [out, down] = [below(hardwareAt, 'projection'), below(hardwareAt, 'drop')]
    if (hardware.projection === undefined || hardware.drop === undefined)
      return { ask: [...(hardware.projection === undefined ? [out] : []), ...(hardware.drop === undefined ? [down] : [])] }
    return { projection: { value: hardware.projection, from: out }, bearingDrop: { value: hardware.drop, from: down } }
  },
)

/** How high the pole is: above where the hooks bear. Checks, marks and drawings follow from this one number. */
const height = rule({ id: 'height', on: pole, needs: { hangLine, bearingDrop }, gives: { topOfRod, reckonings } }).run(
  ({ at }, facts) => {
    const bears = plus('plain-pole/bears', facts.hangLine.hangLine)
    const top = sum(`${at}#top-of-rod`, 'plain-pole/top', bears, plus('plain-pole/drop', facts.bearingDrop))
    return { topOfRod: top, reckonings: [top] }
  },
)

/** What is drawn, in millimetres, and what is packed. */
const shown = rule({ id: 'shown', on: pole, needs: { topOfRod, coverage }, gives: { layers, parts } }).run(
  ({ hardware, hardwareAt }, facts) => {
    if (hardware.thick === undefined) return { ask: [below(hardwareAt, 'thick')] }
    const { left, right } = facts.coverage
    const top = mm(facts.topOfRod.value)
    const drawn = box('rod', [mm(left.value), top], [mm(right.value), top - mm(hardware.thick)])
    return {
      layers: [{ view: 'elevation' as const, depth: 40, marks: [drawn] }],
      parts: [{ what: 'plain-pole/pole', count: 1, hardware: hardwareAt }],
    }
  },
)

/** The pole against what the closed drapery covers. */
const longEnough = rule({
  id: 'long-enough',
  on: pole,
  needs: { coverage },
  gives: { checks, reckonings },
  codes: ['plain-pole/long-enough'],
}).run(({ hardware, hardwareAt, at }, facts) => {
  const cut = below(hardwareAt, 'cut')
  if (hardware.cut === undefined) return { ask: [cut] }
  const { left, right } = facts.coverage
  const covers = sum(`${at}#pole-covers`, 'plain-pole/covers', plus('plain-pole/right', right), minus('plain-pole/left', left))
  const pole = plus('plain-pole/cut', { value: hardware.cut, from: cut })
  const spare = sum(`${at}#pole-spare`, 'plain-pole/spare', pole, minus('plain-pole/covers', covers))
  const verdict = spare.value < 0 ? 'fail' : 'pass'
  const values = { cut: { length: hardware.cut }, covers: { length: covers.value } }
  return {
    checks: [
      {
        code: 'plain-pole/long-enough',
        says: `plain-pole/long-enough.${verdict}`,
        verdict,
        at: hardwareAt,
        values,
        stops: 'mount',
      },
    ],
    reckonings: [covers, spare],
  }
})

export const plainPole: Plugin = {
  contract: 1,
  id: 'plain-pole',
  format: 1,
  kinds: [pole],
  additions: [],
  upgrades: [],
  rules: [bearing, height, longEnough, shown],
  words,
}
