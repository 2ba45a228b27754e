import { figuresOf } from '@evenhem/drawing'
import { tapes } from '@evenhem/length'
import { describe, expect, test } from 'vitest'
import { reportOf, type Said } from '../src/index.ts'
import { example, outlined } from './example.ts'

const order = example('will-it-hold')
const { closing } = outlined(order)
const at = (name: string) => {
  const own = closing.technical.of.find(({ window }) => window.text.endsWith(name))
  if (!own) throw new Error(`Unexpected report without ${name}, expected it`)
  return own
}
const lines = (name: string) =>
  (at(name).loads?.brackets.of ?? []).map(({ name, says }) => `${text(name ?? [])}: ${says.map(text).join('; ')}`)
const text = (says: Said): string => says.map((one) => (typeof one === 'string' ? one : one.written.text)).join('')

describe('the next installer’s page', () => {
  test('tells of each bracket what it carries, what holds it and how much of that is used, then the sag', () => {
    expect(lines('Small brackets')).toEqual([
      'Left bracket: 15 lb, in wood, with No. 10 × 3 wood screw; 22 % used; 30 % with one screw; 125 % of what its maker allows',
      'Support: 23.1 lb, in wood, with No. 10 × 3 wood screw; 36 % used; 47 % with one screw; 193 % of what its maker allows',
      'Right bracket: 15 lb, in wood, with No. 10 × 3 wood screw; 22 % used; 30 % with one screw; 125 % of what its maker allows',
      'Worst sag: 0, allowed 1/8, partly drawn',
    ])
  })
  test('says what is not known, and why', () => {
    expect(lines('No margin in the listing')[0]).toContain('not known: by what its ultimate load is divided')
  })
  test('says what was taken for granted and that it is an estimate', () => {
    expect(at('Steady').loads).toMatchObject({ estimate: expect.stringContaining('not an engineer’s certificate') })
    expect(at('Steady').loads?.granted.says).toContain('Screws are reckoned for a load that stays')
  })
  test('draws it with every load, and says the same to who cannot see it', () => {
    const { drawing, small, alternative } = at('Small brackets').loads ?? {}
    for (const scene of [drawing, small])
      expect([scene && figuresOf(scene).filter(({ figure }) => figure.mass !== undefined).length, scene?.leftOut]).toEqual([
        3,
        [],
      ])
    expect(alternative).toContain('support: 23.1 lb, worked out')
  })
  test('has nothing of it where nobody knows what brackets carry', () => {
    expect(outlined(example('tern-hollow')).closing.technical.of.map(({ loads }) => loads)).toEqual([undefined])
    expect(reportOf(example('tern-hollow')).html).not.toContain('<section class="loads">')
  })
  test('tells loads in kilograms to who reads millimetres', () => {
    const metric = outlined({ ...order, language: 'es', tape: tapes.wholeMillimetres }).closing.technical.of
    expect(JSON.stringify(metric.map(({ loads }) => loads?.brackets))).toContain('10.5 kg, en madera')
  })
})
