import { expect, test } from 'vitest'
import { nearest } from '../src/read/near.ts'

const members = ['id', 'bag', 'finishedLength', 'pleats', 'firstToLast', 'pin']

test('a word with a letter too many, too few, wrong or out of order is taken for the right one', () => {
  for (const slip of ['finishedLenght', 'finishLength', 'finishedLengths', 'FinishedLength', 'finished-length'])
    expect([slip, nearest(slip, members)]).toEqual([slip, 'finishedLength'])
  expect([nearest('plets', members), nearest('pni', members), nearest('di', members)]).toEqual(['pleats', 'pin', 'id'])
})

test('a word that is none of them is taken for none', () => {
  for (const word of ['wallpaper', 'x', '', 'height', 'a'.repeat(10_000)])
    expect([word, nearest(word, members)]).toEqual([word, undefined])
})
