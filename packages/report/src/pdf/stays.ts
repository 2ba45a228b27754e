import type { Closing, FabricCare } from '../closing.ts'
import type { Section } from '../outline.ts'
import type { Note } from '../shown.ts'
import type { Block } from './blocks.ts'
import { links } from './house.ts'
import { row, rows, said } from './text.ts'
import { heading, paragraph } from './window.ts'

/** What begins a part of the closing, with its title. */
export const begin = ({ id, title }: { readonly id: string; readonly title: string }): readonly Block[] => [
  { kind: 'space', height: 10 },
  { kind: 'heading', rank: 2, text: title, look: 'title', id },
  { kind: 'space', height: 2 },
]

const written = ({ notes, notGiven }: FabricCare): readonly Block[] => [
  ...notes.map((each): Block => ({ kind: 'paragraph', text: said(each), look: 'plain' })),
  ...(notGiven ? [paragraph(notGiven), { kind: 'to-write' } as const] : []),
]
function fabric(one: FabricCare): readonly Block[] {
  const { name, facts, windows } = one
  const at = { name: [windows.title], says: [windows.instead ? [windows.instead] : links(windows.of)] }
  return [
    { kind: 'space', height: 3 },
    { kind: 'rule', look: 'ink' },
    heading(3, name),
    { kind: 'columns', widths: [84.3], gap: 7.4, of: [[rows([...facts.map(row), at], 'care')], written(one)] },
  ]
}

const note = ({ says, where, windows }: Note): Block => ({
  kind: 'paragraph',
  text: [...said(says), ...(where ? [' ', { quiet: [where, ' ', ...links(windows)] }] : [])],
  look: 'plain',
})
export const notes = ({ of, instead }: Section<Note> & { readonly instead?: string }): readonly Block[] =>
  instead ? [paragraph(instead)] : of.flatMap((each) => [note(each), { kind: 'space', height: 2 } as const])

/** What stays with the customer: care, safe use, and whom to call. */
export const staysBlocks = ({ care, safety, contacts }: Closing): readonly Block[] => [
  ...begin(care),
  ...care.of.flatMap(fabric),
  ...begin(safety),
  ...notes(safety),
  paragraph(safety.rules),
  ...begin(contacts),
  contacts.instead ? paragraph(contacts.instead) : rows(contacts.of.map(row), 'contacts'),
]
