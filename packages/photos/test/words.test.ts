import { expect, test } from 'vitest'
import { type PhotoCode, photoWords, refusedFor, sayRefused } from '../src/index.ts'

const codes = Object.keys(photoWords.en) as PhotoCode[]
const gaps = (sentence: string): readonly string[] => [...sentence.matchAll(/\{(\w+)\}/g)].map(([, name = '']) => name).sort()

test('every refusal has a sentence with the same values in both languages', () => {
  expect(Object.keys(photoWords.es).sort()).toEqual([...codes].sort())
  expect(codes.filter((code) => gaps(photoWords.en[code]).join() !== gaps(photoWords.es[code]).join())).toEqual([])
  expect(codes.filter((code) => !/^Unexpected .*, expected .*; .*\.$/.test(photoWords.en[code]))).toEqual([])
})

test('a sentence is filled with the numbers that decided it', () => {
  expect(sayRefused(refusedFor('photo/too-big', { size: 41, most: 40 }))).toEqual({
    en: 'Unexpected size of 41 MB, expected at most 40 MB; send a smaller copy.',
    es: 'Tamaño inesperado de 41 MB; se esperaban 40 MB como máximo; mande una copia más pequeña.',
  })
})
