import { describe, expect, test } from 'vitest'
import type { FabricCare } from '../src/fabric.generated.ts'
import { fibreCare, fibreOf } from '../src/fibres.ts'
import { labelOf } from '../src/label.ts'
import { type Cloth, steamingOf } from '../src/steaming.ts'

const cloth = (fibres: readonly string[], care?: FabricCare, as: Cloth['as'] = 'face'): Cloth => ({
  id: as,
  name: `${as} cloth`,
  as,
  fibres,
  ...(care ? { care } : {}),
})
const steamed = (...cloths: readonly Cloth[]) => steamingOf(cloths)
const cotton = ['cotton']

// What is published. GINETEX: care symbol tables after ISO 3758 (read; the standard was not). FTC: 16 CFR 423 (read).
test.each([
  ['GINETEX', { iron: 'three dots' }, 'allowed', 200],
  ['GINETEX', { iron: 'two dots' }, 'allowed', 150],
  ['GINETEX: without steam; steam may harm', { iron: 'one dot' }, 'none', 110],
  ['GINETEX: do not iron; some tables add: no steaming', { iron: 'crossed out' }, 'none', undefined],
  ['FTC: steam without pressing contact', { steam: 'steam only' }, 'only', undefined],
  ['FTC: none in any form', { steam: 'no steam' }, 'none', undefined],
  ['no label: 16 CFR 423 does not cover finished draperies', {}, 'unsaid', undefined],
] as const)('%s: %o is %s', (_, care, steam, plate) => {
  const label = labelOf(care)
  expect([label.steam, label.plate]).toEqual([steam, plate])
  const { steam: does, off } = steamingOf([cloth(cotton, care)])
  expect([does, off]).toEqual([steam !== 'none', steam === 'only'])
})

// Highest plate temperatures in °C: The Spruce (read), TextileTuts (read; its lower end); the lower of two that were published.
test.each([
  ['linen', 229, 210],
  ['cotton', 204, 180],
  ['viscose', 191, undefined],
  ['wool', 149, 150],
  ['silk', 149, 150],
  ['polyester', 149, undefined],
  ['acetate', 143, 130],
  ['triacetate', 199, undefined],
  ['nylon', 135, 130],
  ['acrylic', 135, 110],
  ['elastane', 135, undefined],
] as const)('%s bears the lower of what was published for it: %s and %s °C', (fibre, spruce, textile?: number) => {
  const { plate, source } = fibreCare[fibre]
  expect<number>(plate).toBe(Math.min(spruce, textile ?? spruce))
  expect(source).toBe((textile ?? spruce) < spruce ? 'finishing/source-textile' : 'finishing/source-household')
})

// How each is steamed: common practice, no source.
test.each([
  ['linen', 'generous', 'either', false, false],
  ['cotton', 'generous', 'either', false, false],
  ['viscose', 'light', 'back', true, true],
  ['wool', 'moderate', 'either', true, true],
  ['silk', 'light', 'back', true, false],
  ['polyester', 'moderate', 'either', false, false],
  ['acetate', 'low', 'back', true, false],
  ['triacetate', 'moderate', 'either', false, false],
  ['nylon', 'low', 'either', true, false],
  ['acrylic', 'least', 'either', true, true],
  ['elastane', 'light', 'either', false, false],
])('%s by itself: %s, from %s, held off %s, kept still %s', (fibre, ...how) => {
  const { level, from, off, still, by, source } = steamed(cloth([fibre]))
  expect([level, from, off, still]).toEqual(how)
  expect([by, source]).toEqual(['fibre', 'finishing/source-practice'])
})

test('fibres go by their names in English and Spanish, with or without accents and capitals', () => {
  expect(['Flax', 'Lino', 'algodón', 'ALGODON', 'rayon', 'spandex', 'poliamida', ' seda '].map(fibreOf)).toEqual([
    'linen',
    'linen',
    'cotton',
    'cotton',
    'viscose',
    'elastane',
    'nylon',
    'silk',
  ])
  expect(['jute', 'toString', ''].map(fibreOf)).toEqual([undefined, undefined, undefined])
})

describe('the most delicate rules', () => {
  test('of a blend the fibre, however little of it there is', () => {
    expect(steamed(cloth(['cotton', 'acrylic']))).toMatchObject({ fibre: 'acrylic', level: 'least', off: true })
    expect(steamed(cloth(['cotton', 'elastane']))).toMatchObject({ fibre: 'elastane', level: 'light' })
  })
  test('of a lined drapery the lining, and its label too', () => {
    expect(steamed(cloth(cotton), cloth(['acetate'], undefined, 'lining'))).toMatchObject({ cloth: 'lining cloth', level: 'low' })
    expect(steamed(cloth(cotton), cloth(cotton, { iron: 'one dot' }, 'lining'))).toMatchObject({ steam: false, by: 'one' })
  })
  test('a label overrides what is usual for fibres: dots let acetate be steamed, one dot stops linen', () => {
    expect(steamed(cloth(['acetate'], { iron: 'two dots' }))).toMatchObject({ steam: true, by: 'two', level: 'low' })
    expect(steamed(cloth(['linen'], { iron: 'one dot' }))).toMatchObject({ steam: false, by: 'one' })
  })
  test('what forbids comes before what allows, even in one label and against the order', () => {
    const both = cloth(['wool'], { iron: 'crossed out', steam: 'steam only' })
    expect(steamingOf([both], true)).toMatchObject({ steam: false, by: 'crossed', source: 'finishing/source-symbols' })
    expect(steamingOf([cloth(cotton, { iron: 'three dots', steam: 'no steam' })], true)).toMatchObject({
      steam: false,
      by: 'none',
    })
  })
})

describe('what is not known stays careful', () => {
  test('without fibres or label it is not steamed; nor with a fibre that nobody here knows, whatever else is in it', () => {
    expect(steamed(cloth([]))).toMatchObject({ steam: false, by: 'unknown' })
    expect(steamed(cloth(['cotton', 'jute']))).toMatchObject({ steam: false, by: 'unknown', fibre: 'unknown' })
    expect(steamed()).toMatchObject({ steam: false, by: 'unnamed' })
  })
  test('a label that allows steam lets it be steamed least, from the back, held off', () =>
    expect(steamed(cloth([], { iron: 'two dots' }))).toMatchObject({
      steam: true,
      level: 'least',
      from: 'back',
      off: true,
      still: true,
    }))
})

describe('pile, coating, water', () => {
  const velvet = cloth(cotton, { pile: 'velvet', iron: 'two dots' })
  test('velvet is never steamed on its face, and is known by its name too', () => {
    expect(steamed(velvet)).toMatchObject({ steam: true, from: 'back', off: true, level: 'light', pile: true })
    expect(steamed({ ...cloth(cotton), name: 'Terciopelo verde' })).toMatchObject({ from: 'back', pile: true })
    expect(steamed({ ...cloth(cotton, { pile: 'none' }), name: 'Velvet print' })).toMatchObject({ from: 'either', pile: false })
  })
  test('a coated lining is steamed from the face; before it velvet and silk have no side left', () => {
    const coated = cloth(['polyester'], { coated: true }, 'lining')
    expect(steamed(cloth(cotton), coated)).toMatchObject({ steam: true, from: 'face', level: 'least', off: true })
    for (const face of [velvet, cloth(['silk'])]) expect(steamed(face, coated)).toMatchObject({ steam: false, by: 'side' })
  })
  test('silk spots unless its supplier says that it does not; a mark ends the steaming', () => {
    expect(steamed(cloth(['silk'])).spots).toBe(true)
    expect(steamed(cloth(['silk'], { waterSpots: false })).spots).toBe(false)
    expect(steamed(cloth(cotton, { waterSpots: true }))).toMatchObject({ spots: true, from: 'back', level: 'light' })
    expect(steamingOf([cloth(cotton)], true, 'mark')).toMatchObject({ steam: false, by: 'marked' })
    expect(steamingOf([cloth(cotton)], true, 'no mark').steam).toBe(true)
  })
  test('a relaxer is used only where every cloth allows it', () => {
    const allowed = cloth(cotton, { relaxer: 'allowed' })
    expect(steamed(allowed).relaxer).toBe('allowed')
    expect(steamed(allowed, cloth(cotton, undefined, 'lining')).relaxer).toBe('unsaid')
    expect(steamed(allowed, cloth(cotton, { relaxer: 'not allowed' }, 'lining')).relaxer).toBe('not allowed')
  })
})
