import type { Hardware, Job, Room, Treatment, Window } from '@evenhem/job'
import { expect, expectTypeOf, test } from 'vitest'
import {
  type Addition,
  type Answer,
  type Ask,
  type Check,
  checks,
  type Fact,
  type Kind,
  type Plugin,
  type Read,
  type Rule,
  rule,
  type Subject,
} from '../src/index.ts'

interface Pole extends Hardware {
  readonly radius: number
}
interface Part {
  readonly rings: number
}
const width = { id: 'test/width@1', of: 'treatment', many: false, schema: {} } as const as unknown as Fact<
  number,
  'treatment'
> & { readonly many: false }
const names = { id: 'test/names@1', of: 'treatment', many: true, schema: {} } as const as unknown as Fact<string, 'treatment'> & {
  readonly many: true
}
const pole: Kind<Pole, Part> = { kind: 'pole', schema: {} }
const inRoom: Addition<'room', Part> = { to: 'room', schema: {} }

test('a need is read as its value, a list as all values, maybe with undefined, each with places', () => {
  expectTypeOf<Read<typeof width>>().toEqualTypeOf<number>()
  expectTypeOf<Read<typeof names>>().toEqualTypeOf<readonly string[]>()
  expectTypeOf<Read<{ readonly maybe: typeof width }>>().toEqualTypeOf<number | undefined>()
  expectTypeOf<Read<{ readonly maybe: typeof names }>>().toEqualTypeOf<readonly string[] | undefined>()
  expectTypeOf<Read<{ readonly each: typeof width }>>().toEqualTypeOf<
    readonly { readonly at: string; readonly value: number }[]
  >()
  expectTypeOf<Read<{ readonly each: typeof names }>>().toEqualTypeOf<
    readonly { readonly at: string; readonly value: readonly string[] }[]
  >()
})

test('an answer gives what was declared, or asks', () => {
  type Given = Answer<{ readonly width: typeof width; readonly names: typeof names }>
  expectTypeOf<Given>().toEqualTypeOf<{ readonly width?: number; readonly names?: readonly string[] } | Ask>()
  expectTypeOf<{ readonly checks: readonly Check[] }>().toExtend<Answer<{ readonly checks: typeof checks }>>()
})

test('a rule on a level is about its item', () => {
  rule({ id: 'j', on: 'job', needs: {}, gives: {} }).run((subject) => {
    expectTypeOf(subject.it).toEqualTypeOf<Job>()
    return {}
  })
  rule({ id: 'r', on: 'room', needs: {}, gives: {} }).run((subject) => {
    expectTypeOf(subject.it).toEqualTypeOf<Room>()
    return {}
  })
  rule({ id: 'w', on: 'window', needs: {}, gives: {} }).run((subject) => {
    expectTypeOf(subject.ordered).toEqualTypeOf<Window>()
    return {}
  })
  rule({ id: 't', on: 'treatment', needs: {}, gives: {} }).run((subject) => {
    expectTypeOf(subject.hardware).toEqualTypeOf<Hardware | undefined>()
    return {}
  })
})

test('a rule on a kind has its hardware and its part, one on a part that part', () => {
  rule({ id: 'k', on: pole, needs: {}, gives: {} }).run((subject) => {
    expectTypeOf(subject).toEqualTypeOf<Subject<Treatment, Pole, Part>>()
    return {}
  })
  rule({ id: 'a', on: inRoom, needs: {}, gives: {} }).run((subject) => {
    expectTypeOf(subject).toEqualTypeOf<Subject<Room, Hardware | undefined, Part>>()
    return {}
  })
})

test('a rule is told by the compiler what it reads and gives', () => {
  rule({ id: 'x', on: 'treatment', needs: { width, names: { maybe: names } }, gives: { width } }).run((_, facts) => {
    expectTypeOf(facts).toEqualTypeOf<{ readonly width: number; readonly names: readonly string[] | undefined }>()
    return { width: facts.width }
  })
  // @ts-expect-error a fact that is a number is given as one
  rule({ id: 'x', on: 'treatment', needs: {}, gives: { width } }).run(() => ({ width: 'wide' }))
  // @ts-expect-error a list is given as one
  rule({ id: 'x', on: 'treatment', needs: {}, gives: { names } }).run(() => ({ names: 'name' }))
  // @ts-expect-error nothing else can be reached
  rule({ id: 'x', on: 'treatment', needs: { width }, gives: {} }).run((_, facts) => ({ seen: facts.height }))
})

test('kinds, parts and rules of every type stand in one plugin', () => {
  const rules: readonly Rule[] = [rule({ id: 'k', on: pole, needs: { width }, gives: { checks } }).run(() => ({ checks: [] }))]
  const plugin: Plugin = { contract: 1, id: 'p', format: 1, kinds: [pole], additions: [inRoom], upgrades: [], rules, words: {} }
  expect(plugin.rules[0]).toMatchObject({ id: 'k', on: { kind: 'pole' }, needs: { width: { id: 'test/width@1' } } })
})
