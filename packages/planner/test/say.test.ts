import { inches, tapes } from '@evenhem/length'
import type { Words } from '@evenhem/plugin'
import { expect, test } from 'vitest'
import { createSay, wordsOf } from '../src/say.ts'
import { pluginOf } from './invented.ts'

const en: Words = {
  'p/plain': { says: 'A plain sentence.', help: 'Do it {side}.' },
  'p/left': { says: 'on the left' },
  'p/rod': { says: 'The rod {side} is {top}.' },
  'p/rings': { says: '{count, plural, one {# ring} other {# rings}}' },
  'p/way': { says: '{way, select, short {too short} other {too long}}' },
  'p/share': { says: '{share, number, percent}' },
  'p/less': { says: 'less than <{n}> & <b>so</b>' },
  'p/broken': { says: 'Open {brace' },
  'p/only-here': { says: 'English' },
}
const words = [{ en, es: { 'p/plain': { says: 'Una frase.' } } }]
const say = createSay({ words, language: 'en', tape: tapes.sixteenths })
const metric = createSay({ words, language: 'en', tape: tapes.wholeMillimetres })

test('lengths are written in the reader’s unit, codes are said inside a sentence', () => {
  const values = { side: { code: 'p/left' }, top: { length: inches(86.5) } }
  expect(say.say('p/rod', values)).toBe('The rod on the left is 86 1/2.')
  expect(metric.say('p/rod', values)).toBe('The rod on the left is 2197 mm.')
})

test('counts choose the plural', () => {
  expect([1, 2, 1200].map((count) => say.say('p/rings', { count: { count } }))).toEqual(['1 ring', '2 rings', '1,200 rings'])
})

test('a text chooses a form, a ratio may be formatted by the sentence', () => {
  expect([
    say.say('p/way', { way: 'short' }),
    say.say('p/way', { way: 'over' }),
    say.say('p/share', { share: { ratio: 0.25 } }),
  ]).toEqual(['too short', 'too long', '25%'])
})

test('other quantities have the reader’s unit', () => {
  const all = [{ count: 1200 }, { mass: 3.175 }, { force: 88.96 }, { angle: Math.PI / 2 }, { ratio: 2.5 }, { count: -2 }] as const
  expect(all.map(say.quantity)).toEqual(['1,200', '7 lb', '20 lbf', '90°', '2.5', '−2'])
  expect(all.slice(1, 3).map(metric.quantity)).toEqual(['3.18 kg', '89 N'])
})

test('text from a job stays text', () => {
  const hostile = "<b>{count}</b> '{' # $&"
  expect(say.say('p/rod', { side: hostile, top: hostile })).toBe(`The rod ${hostile} is ${hostile}.`)
})

test('a sentence has no markup either', () => {
  expect(say.say('p/less', { n: { count: 2 } })).toBe('less than <2> & <b>so</b>')
})

test('a missing code is visible', () => {
  expect([say.say('p/none'), say.hasCode('p/none'), say.say('toString'), say.help('p/none')]).toEqual([
    '[p/none]',
    false,
    '[toString]',
    undefined,
  ])
})

test('a sentence that lacks a value, gets no number where it counts, or can’t be read, is visible', () => {
  expect([
    say.say('p/rod', { side: 'here' }),
    say.say('p/rings', { count: 'two' }),
    say.say('p/rings', { count: { length: inches(1) } }),
    say.say('p/broken'),
  ]).toEqual(['[p/rod]', '[p/rings]', '[p/rings]', '[p/broken]'])
})

test('help says what to do, with the same values', () => {
  expect([say.help('p/plain', { side: { code: 'p/left' } }), say.help('p/plain'), say.help('p/left')]).toEqual([
    'Do it on the left.',
    '[p/plain]',
    undefined,
  ])
})

test('a language without the code falls back to English', () => {
  const spanish = createSay({ words, language: 'es-MX', tape: tapes.sixteenths })
  expect([spanish.say('p/plain'), spanish.say('p/only-here')]).toEqual(['Una frase.', 'English'])
})

test('a length keeps its parts, so that a drawing builds the fraction', () => {
  expect(say.length(inches(86.5))).toMatchObject({ text: '86 1/2', whole: '86', numerator: 1, denominator: 2 })
})

test('the host has words for checks that could not be made and for what nobody reads', () => {
  const host = createSay({ words: wordsOf([pluginOf('p', [], { words: { en } })]), language: 'en', tape: tapes.sixteenths })
  expect(host.say('host/waits', { count: { count: 1 }, first: '/x' })).toBe('Not checked yet: one reading is missing.')
  expect(
    ['waits', 'faulted', 'not-given', 'unread.kind', 'unread.hardware', 'unread.with', 'unread.version'].filter(
      (code) => !host.hasCode(`host/${code}`),
    ),
  ).toEqual([])
  expect(host.hasCode('p/left')).toBe(true)
})
