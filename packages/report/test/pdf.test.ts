import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { figuresOf } from '@evenhem/drawing'
import { writeLength } from '@evenhem/length'
import sharp from 'sharp'
import { beforeAll, expect, onTestFinished, test, vi } from 'vitest'
import type { Outline } from '../src/index.ts'
import type { Files } from '../src/pdf/blocks.ts'
import { type PdfWishes, pdfOf, pdfOfOutline } from '../src/pdf/index.ts'
import { photos } from '../src/pdf/photos.ts'
import { outlineFor } from '../src/report.ts'
import { example, handedOver, house, orderOf, textOf, window } from './example.ts'
import { type ReadPdf, readPdf } from './pdf-reader.ts'

const order = example('tern-hollow-found')
const many = house(['tern-hollow-found', 'rod-too-short', 'not-measured-yet'], { paper: 'letter' })
let bytes: Uint8Array
let one: ReadPdf
let several: ReadPdf
beforeAll(async () => {
  bytes = await pdfOf(order)
  ;[one, several] = await Promise.all([readPdf(bytes), readPdf(await pdfOf(many))])
})
const textOfAll = ({ pages }: ReadPdf): string => pages.map(({ text }) => text).join(' ')

test('the same order gives the same bytes', async () => {
  expect(Buffer.compare(await pdfOf(order), bytes)).toBe(0)
})

test('it says that it keeps PDF/UA-1', () => {
  expect(Buffer.from(bytes).toString('latin1')).toMatch(/pdfuaid:part>1</)
})

test('pages have the size of their paper, in points', () => {
  expect(one.pages.map(({ width, height }) => [Math.round(width), Math.round(height)])).toContainEqual([595, 842])
  expect(several.pages.map(({ width, height }) => [Math.round(width), Math.round(height)])).toContainEqual([612, 792])
})

test('title and language are those of the outline', () => {
  expect(one.title).toBe('Garden room, Window 1, House at Tern Hollow')
  expect(one.language).toBe('en')
})

test('every page says what it is of, that it is a draft, and its number of how many', () => {
  const { head, foot } = outlineFor(many)
  several.pages.forEach(({ text }, n) => {
    expect(text).toContain(head.job)
    expect(text).toContain(`Draft · ${head.kind}`)
    expect(text).toContain(`${foot.job}${foot.page[0]}`.trim())
    expect(text).toContain(`${n + 1} of ${several.pages.length}`)
  })
})

test('what is no draft does not say that it is one', async () => {
  const outline = outlineFor(order)
  const { pages } = await readPdf(await pdfOfOutline({ ...outline, head: { ...outline.head, state: 'Signed' } }))
  expect(pages[0]?.text).toContain('Signed · Completion report')
  expect(pages[0]?.text).not.toContain('Draft')
})

/** Every number that is set by the outline: in its sentences, and as figures of its drawings. */
function numbersOf(outline: Outline): readonly string[] {
  const texts: string[] = []
  const look = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return
    if ('written' in value && 'length' in value) texts.push((value.written as { text: string }).text)
    else for (const [name, each] of Object.entries(value)) if (!['checked', 'notes', 'scene', 'small'].includes(name)) look(each)
  }
  look(outline)
  // The slash of a drawing's fraction is a line.
  const drawn = outline.windows.flatMap(({ drawing }) => (drawing ? figuresOf(drawing.scene) : []))
  for (const { figure } of drawn)
    if (figure.value !== undefined) texts.push(writeLength(figure.value, order.tape).text.replace('/', ''))
  return texts
}
const close = (text: string): string => text.replace(/\s/g, '')

test.each(['one', 'several'] as const)('every number of the outline is read from the page: %s', (which) => {
  const text = close(textOfAll(which === 'one' ? one : several))
  const numbers = numbersOf(outlineFor(which === 'one' ? order : many))
  expect(numbers.length).toBeGreaterThan(20)
  expect(numbers.filter((number) => !text.includes(close(number)))).toEqual([])
})

test('every drawing says what it shows, and a sign what it means', () => {
  const outline = outlineFor(many)
  const said = several.pages.flatMap(({ figures }) => figures)
  const alternatives = outline.windows.flatMap(({ drawing }) => drawing?.alternative ?? [])
  expect(alternatives.length).toBeGreaterThan(1)
  expect(said).toEqual(expect.arrayContaining([...alternatives, outline.house?.frieze.words, ...['Well', 'Stop', 'Not known']]))
  expect(said.filter((alt) => !alt)).toEqual([])
})

test('nothing is left of what was set, also when it could not be', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'evenhem-'))
  vi.stubEnv('TMPDIR', folder)
  onTestFinished(() => {
    vi.unstubAllEnvs()
    rmSync(folder, { recursive: true })
  })
  await pdfOf(order)
  await expect(pdfOfOutline(mute())).rejects.toThrow()
  const lost = () => {
    throw new Error('enough')
  }
  expect(() => pdfOfOutline({ ...outlineFor(order), title: '宅' }, { lost })).toThrow('enough')
  expect(readdirSync(folder)).toEqual([])
})

test('it says how far it is', async () => {
  const said: string[] = []
  await pdfOf({ ...many, told: (stage) => said.push('done' in stage ? `${stage.is} ${stage.done} of ${stage.total}` : stage.is) })
  const through = (is: string) => [1, 2, 3].map((n) => `${is} ${n} of 3`)
  expect(said).toEqual([...through('planned'), ...through('drawn'), 'setting'])
})

/** An outline whose drawing has no words. */
function mute(): Outline {
  const { windows, ...outline } = outlineFor(order)
  const [window] = windows as [Outline['windows'][0]]
  return { ...outline, windows: [{ ...window, drawing: window.drawing && { ...window.drawing, alternative: '' } }] }
}

test('a drawing without words is refused', async () => {
  await expect(pdfOfOutline(mute())).rejects.toThrow(/^Unexpected .*missing alt text/s)
})

test('a bookmark leads to each window and to what comes before and after; links lead somewhere', () => {
  const { windows, closing, house: own } = outlineFor(many)
  expect(several.bookmarks).toEqual([
    outlineFor(many).title,
    own?.contents.title,
    own?.summary.title,
    ...windows.map(({ title }) => title),
    ...[closing.open, closing.shown, closing.care, closing.safety, closing.contacts, closing.technical].map(({ title }) => title),
  ])
  expect([...one.lost, ...several.lost]).toEqual([])
})

test('headings begin at the first rank and leave none out', () => {
  const ranks = several.pages.flatMap(({ roles }) => roles.filter((role) => /^H\d$/.test(role)).map((role) => Number(role[1])))
  expect(ranks[0]).toBe(1)
  expect(ranks.filter((rank, n) => n > 0 && rank > (ranks[n - 1] as number) + 1)).toEqual([])
})

test('who signed stands with the drawn signature, the words of the seal and its hash; nothing says draft', async () => {
  const read = await readPdf(await pdfOf(handedOver()))
  const [, second] = outlineFor(handedOver()).closing.signed.of
  const { words, hash } = second?.fingerprint ?? { words: [], hash: '' }
  expect(textOfAll(read)).toContain(words.join(' '))
  expect(close(textOfAll(read))).toContain(hash)
  expect(read.pages.flatMap(({ figures }) => figures)).toContain('Signature of The household')
  expect(textOfAll(read)).not.toContain('Draft')
})

test('a photo stands with its caption, its marks and the words for who cannot see it; one that is not here is said to be missing', async () => {
  const [here, gone] = ['a'.repeat(64), 'b'.repeat(64)]
  const found = {
    [`${window}/found/photos/${here}`]: { value: 'The pair' },
    [`${window}/found/photoMarks/${here}/m1`]: { value: { kind: 'point', x: 0.2, y: 0.4, says: 'chipped' } },
    [`${window}/found/photos/${gone}`]: { value: 'The wall' },
  }
  const jpeg = await sharp({ create: { width: 40, height: 30, channels: 3, background: '#abc' } })
    .jpeg()
    .toBuffer()
  const text = JSON.stringify({ ...JSON.parse(textOf('tern-hollow')), found })
  const photo = ({ hash }: { hash: string }) => (hash === here ? jpeg : undefined)
  const read = await readPdf(await pdfOf(orderOf(text, { photos: () => ({ src: '', width: 40, height: 30 }) }), { photo }))
  const all = textOfAll(read)
  expect([all.includes('The pair'), all.includes('chipped'), all.includes('Photo not here yet (bbbbbbbb…)')]).toEqual([
    true,
    true,
    true,
  ])
  expect(read.pages.flatMap(({ figures }) => figures)).toContain('Photo. The pair. Marked: chipped')
})

test('a photo that stands twice has each time its own marks', async () => {
  const hash = 'a'.repeat(64)
  const found = {
    [`${window}/found/photos/${hash}`]: { value: 'The casing' },
    [`${window}/found/photoMarks/${hash}/m1`]: { value: { kind: 'words', x: 0.2, y: 0.4, says: 'chipped' } },
    [`${window}/with/punch-list/points/p001/what`]: { value: 'Paint chipped' },
    [`${window}/with/punch-list/points/p001/photo`]: { value: hash },
    [`${window}/with/punch-list/points/p001/spot`]: { value: { x: 0.2, y: 0.4 } },
  }
  const text = JSON.stringify({ ...JSON.parse(textOf('tern-hollow')), found })
  const photo = () => Uint8Array.from([])
  const outline = outlineFor(orderOf(text, { photos: () => ({ src: '', width: 40, height: 30 }) }))
  const files = new Map<string, string>()
  const add: Files['add'] = (name, bytes) => {
    expect(files.get(name) ?? String(bytes)).toBe(String(bytes))
    files.set(name, String(bytes))
    return name
  }
  const shown = [...(outline.windows[0]?.photos?.of ?? []), ...outline.closing.open.of.flatMap(({ photos: of }) => of)]
  photos(shown, { add, photo })
  const rings = [...files.values()].filter((svg) => svg.startsWith('<svg')).map((svg) => svg.match(/class="over"/g)?.length ?? 0)
  expect(rings.toSorted()).toEqual([0, 1])
})

/** The window with points to mend, each with a note. */
const withPoints = (notes: readonly string[]) => {
  const found = notes.flatMap((note, n) => {
    const at = `${window}/with/punch-list/points/p${String(n + 1).padStart(3, '0')}`
    return [[`${at}/what`, { value: `Mend this ${n + 1}.` }] as const, [`${at}/note`, { value: note }] as const]
  })
  return orderOf(JSON.stringify({ ...JSON.parse(textOf('tern-hollow')), found: Object.fromEntries(found) }))
}

test('a point stands on one page, with all its facts', async () => {
  const notes = Array.from({ length: 20 }, (_, n) => `Note ${n + 1}.`)
  const { pages } = await readPdf(await pdfOf(withPoints(notes)))
  const pagesWith = (text: string) => pages.flatMap((page, n) => (page.text.includes(text) ? [n] : []))
  const torn = notes.filter((note, n) => pagesWith(note).at(-1) !== pagesWith(`Mend this ${n + 1}.`).at(-1))
  expect([pagesWith('Note 20.').length, torn]).toEqual([1, []])
})

test('of a point that is longer than a page nothing falls off', async () => {
  for (const between of [' ', '\n']) {
    const words = Array.from({ length: 200 }, (_, n) => `word-${n}`)
    const read = new Set(textOfAll(await readPdf(await pdfOf(withPoints([words.join(between)])))).split(' '))
    expect(words.filter((word) => !read.has(word))).toEqual([])
  }
})

test('text of a job stays text', async () => {
  const name = '#panic("x") $a$ *b* <c> \\"@d'
  const text = textOf('tern-hollow').replace('House at Tern Hollow', name.replaceAll('\\', '\\\\').replaceAll('"', '\\"'))
  const { title, pages } = await readPdf(await pdfOf(orderOf(text)))
  expect(title).toContain(name)
  expect(pages[0]?.text).toContain(name)
})

test('a letter that the fonts lack is told once, and a question mark stands for it', async () => {
  const lost: (readonly string[])[] = []
  const wishes: PdfWishes = { lost: (letters) => lost.push(letters) }
  const read = await readPdf(await pdfOf(orderOf(textOf('tern-hollow').replace('House at Tern Hollow', 'Dom Łąki 宅宅')), wishes))
  expect(lost).toEqual([['宅']])
  expect(read.pages[0]?.text).toContain('Dom Łąki ??')
})

test('a word that is longer than a line is broken', async () => {
  const word = 'x'.repeat(300)
  const { pages } = await readPdf(await pdfOf(orderOf(textOf('tern-hollow').replace('House at Tern Hollow', word))))
  expect(close(textOfAll({ ...one, pages }))).toContain(word)
})

test('Spanish is said in Spanish', async () => {
  const { language, pages } = await readPdf(await pdfOf({ ...order, language: 'es' }))
  expect(language).toBe('es')
  expect(pages[0]?.text).toContain('Borrador · Informe de entrega')
})

test('the template fetches nothing', () => {
  const template = readFileSync(new URL('../src/pdf/report.typ', import.meta.url), 'utf8')
  expect(template).not.toMatch(/#?(import|include)\b|@preview|https?:|\beval\b|plugin\(/)
})

test('what brackets carry is drawn and told for the next installer, with what was taken for granted', async () => {
  const read = await readPdf(await pdfOf(example('will-it-hold')))
  expect(textOfAll(read)).toContain('193 % of what its maker allows')
  expect(textOfAll(read)).toContain('An estimate, not an engineer’s certificate')
  expect(read.pages.flatMap(({ figures }) => figures).filter((words) => words?.startsWith('Loads of')).length).toBeGreaterThan(8)
})
