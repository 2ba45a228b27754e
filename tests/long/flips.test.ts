import { readdirSync, readFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { runFlips } from '../tools/flip-runs.ts'
import { type Flip, flipped, flipsOf, shown } from '../tools/flips.ts'
import { effort } from '../tools/long.ts'
import allowed from './flips.allowed.json' with { type: 'json' }

// Each sign, each least and most, each comparison and boolean operator of the arithmetic and of the mechanics is turned over, one at a time: a test
// must fail, or the change must stand in flips.allowed.json with the reason why it is equal in effect.

const root = fileURLToPath(new URL('../..', import.meta.url))
/** A folder whose files are changed, and the tests that must notice. CI takes at most `slice` changes, spread over all files; all are run when all is asked for. */
interface Subject {
  readonly folder: string
  readonly tests: readonly string[]
  readonly slice: number
  /** After how many milliseconds its tests never end; undefined: as runFlips takes it. */
  readonly patience?: number
}
const subjects: readonly Subject[] = [
  {
    folder: 'packages/drapery/src/arithmetic',
    // Not all of tests/together: what reads every example has the same numbers again, and takes long.
    tests: ['packages/drapery/test', 'plugins/*/test', 'tests/together/{demo,house}.test.ts'],
    slice: 7,
  },
  {
    folder: 'packages/mechanics/src',
    // Without the program that not every machine has.
    tests: ['packages/mechanics/test/!(outside).test.ts'],
    slice: 4,
    patience: 60_000,
  },
]

interface Change extends Flip {
  readonly file: string
  readonly text: string
  readonly shown: string
}
const changesOf = (file: string): readonly Change[] => {
  const text = readFileSync(root + file, 'utf8')
  return flipsOf(text).map((flip) => ({ ...flip, file, text: flipped(text, flip), shown: shown(text, flip) }))
}
const filesOf = ({ folder }: Subject) => readdirSync(root + folder).map((name) => `${folder}/${name}`)
const isAllowed = ({ file, shown }: Change): boolean => allowed.some((each) => each.file === file && each.shown === shown)
const told = ({ file, line, shown }: Change): string => `${file}:${line} ${shown}`
const ready = subjects.map((subject) => {
  const files = filesOf(subject)
  const all = files.flatMap(changesOf)
  const step = effort === 'all' ? 1 : Math.ceil(all.length / subject.slice)
  return { ...subject, files, all, taken: all.filter((_, i) => i % step === 0) }
})

const turned = (text: string) => flipsOf(text).map((flip) => `${flip.line} ${shown(text, flip)}`)
test('a change is found by the syntax, in all its kinds, and in nothing but code', () => {
  expect(turned('const a = (b /* + */ + c) <= -1 // <')).toEqual([
    '1 const a = (b /* + */ ⟨+ → -⟩ c) <= -1 // <',
    '1 const a = (b /* + */ + c) ⟨<= → <⟩ -1 // <',
    '1 const a = (b /* + */ + c) ⟨<= → >⟩ -1 // <',
    '1 const a = (b /* + */ + c) <= ⟨- → +⟩1 // <',
  ])
  expect(turned("const x: Map<string, A & B> = !b + '|| <'")).toEqual(["1 const x: Map<string, A & B> = ⟨! → nothing⟩b + '|| <'"])
  expect(turned('i++\na === b && Math.max(c, d.max)')).toEqual([
    '1 i⟨++ → --⟩',
    '2 a ⟨=== → !==⟩ b && Math.max(c, d.max)',
    '2 a === b ⟨&& → ||⟩ Math.max(c, d.max)',
    '2 a === b && Math.⟨max → min⟩(c, d.max)',
  ])
})
test('a function with a counterpart is changed wherever its name is used, and the counterpart is imported', () => {
  const text = "import { minus as less, plus } from 'l'\nconst f = (up ? plus : less)({ plus }, plus.plus)"
  expect(turned(text)).toEqual([
    '2 const f = (up ? ⟨plus → minus⟩ : less)({ plus }, plus.plus)',
    '2 const f = (up ? plus : ⟨less → plus⟩)({ plus }, plus.plus)',
    '2 const f = (up ? plus : less)({ ⟨plus → plus: minus⟩ }, plus.plus)',
    '2 const f = (up ? plus : less)({ plus }, ⟨plus → minus⟩.plus)',
  ])
  expect(flipped(text, flipsOf(text)[1]!)).toBe(
    "import { plus as flipped } from 'l';import { minus as less, plus } from 'l'\nconst f = (up ? plus : flipped)({ plus }, plus.plus)",
  )
})
test('a change that never ends is told from one that fails a test and from one that none notices', async () => {
  const file = `${root}packages/length/src/spread.ts`
  const text = readFileSync(file, 'utf8')
  const changes = [`${text}\nwhile (true) {}`, text, text.replace('whole * i +', 'whole * i -')].map((changed) => ({
    file,
    text: changed,
  }))
  const fates = await runFlips(changes, { files: [file], tests: ['packages/length/test'] }, 1, 15_000)
  expect(fates).toEqual(['(the tests never end)', undefined, 'three spaces in ten nanometres are 3, 4 and 3, and add up'])
})
test.each(ready)('$folder has many of them', ({ all }) => expect(all.length).toBeGreaterThan(150))

test('every change that is allowed is one that can be made, and has a reason', () => {
  const made = new Set(ready.flatMap(({ all }) => all.map((change) => `${change.file} ${change.shown}`)))
  expect(allowed.filter(({ file, shown, because }) => !made.has(`${file} ${shown}`) || because.length < 20)).toEqual([])
})

test.each(ready)('each of $taken.length changes of $folder fails a test, or is allowed', async (subject) => {
  const { folder, files, all, taken, tests, patience } = subject
  const runs = taken.map(({ file, text }) => ({ file: root + file, text }))
  const fates = await runFlips(runs, { files: files.map((file) => root + file), tests }, availableParallelism(), patience)
  const passed = taken.filter((_, i) => fates[i] === undefined)
  const survived = passed.filter((change) => !isAllowed(change))
  const counts = { changes: taken.length, killed: taken.length - passed.length, allowed: passed.length - survived.length }
  console.log(`flips: ${JSON.stringify({ ...counts, survived: survived.length })} of ${all.length} in ${folder}`)
  expect(survived.map(told), 'no test notices these; write one').toEqual([])
  const noticed = taken.filter((change) => isAllowed(change) && !passed.includes(change))
  expect(noticed.map(told), 'a test notices these; take them off the list').toEqual([])
})
