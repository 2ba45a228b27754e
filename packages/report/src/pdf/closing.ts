import type { Closing, FabricCare, SafetyNotes } from '../closing.ts'
import type { Block } from './blocks.ts'
import { links } from './house.ts'
import { row, said } from './text.ts'
import { heading, paragraph } from './window.ts'

const title = (text: string, id: string): Block => ({ kind: 'heading', rank: 2, text, look: 'title', id })
const plain = (text: string): Block => paragraph(text)

const fabric = ({ name, facts, windows, notes, notGiven }: FabricCare): readonly Block[] => [
  { kind: 'space', height: 5 },
  { kind: 'rule', look: 'ink' },
  heading(3, name),
  {
    kind: 'columns',
    widths: [84.3],
    gap: 7.4,
    of: [
      [
        {
          kind: 'rows',
          of: [...facts.map(row), { name: [windows.title], says: [windows.instead ? [windows.instead] : links(windows.of)] }],
          look: 'care',
        },
      ],
      [
        ...notes.map((each): Block => ({ kind: 'paragraph', text: said(each), look: 'plain' })),
        ...(notGiven ? [plain(notGiven), { kind: 'to-write' } as const] : []),
      ],
    ],
  },
]

const note = ({ says, where, windows }: SafetyNotes['of'][0]): Block => ({
  kind: 'paragraph',
  text: [...said(says), ...(where ? [' ', { quiet: [where, ' ', ...links(windows)] }] : [])],
  look: 'plain',
})

/** What stays with the customer: care, safe use, and whom to call. */
export const closingBlocks = ({ care, safety, contacts }: Closing): readonly Block[] => [
  { kind: 'page' },
  title(care.title, care.id),
  ...care.of.flatMap(fabric),
  { kind: 'space', height: 10 },
  title(safety.title, safety.id),
  { kind: 'space', height: 2 },
  ...(safety.instead ? [plain(safety.instead)] : safety.of.map(note)),
  plain(safety.rules),
  { kind: 'space', height: 10 },
  title(contacts.title, contacts.id),
  contacts.instead ? plain(contacts.instead) : { kind: 'rows', of: contacts.of.map(row), look: 'contacts' },
]
