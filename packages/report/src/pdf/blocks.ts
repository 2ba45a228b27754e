import type { Verdict } from '@evenhem/plugin'
import type { ShownPhoto } from '../photos.ts'

/** A piece of a sentence: plain text, a number with its fractions apart, a place of the report, or words in second ink. */
export type Piece =
  | string
  | { readonly number: readonly (string | { readonly fraction: string })[] }
  | { readonly to: string; readonly text: string }
  | { readonly quiet: Text }
export type Text = readonly Piece[]

/** A fact: its name, and what is so, a line for each. `isLong`: the name takes more than its column, and is wrapped in it. */
export interface Row {
  readonly isLong?: boolean
  readonly name: Text
  readonly says: readonly Text[]
}
/** A point: its sign, what the sign means, and what is said. */
export interface Item {
  readonly sign: Verdict
  readonly word: string
  readonly of: readonly Block[]
}
/** What a number's look on a drawing means, with such a number. */
export interface Sample {
  readonly state: 'measured' | 'computed' | 'unknown'
  readonly number: Text
  readonly says: string
}

/** What a document is made of. The template has a function for each kind, and sets it; lengths are mm. */
export type Block =
  | { readonly kind: 'heading'; readonly rank: number; readonly text: string; readonly look: Look; readonly id?: string }
  | { readonly kind: 'lead'; readonly text: Text; readonly look: 'cover' | 'title' | 'point' }
  | { readonly kind: 'paragraph'; readonly text: Text; readonly look: 'plain' | 'bold' | 'quiet' | 'struck' | 'fact' }
  | { readonly kind: 'stands'; readonly sign: Verdict; readonly word: string; readonly says: readonly string[] }
  /** Columns of these widths, with a gap between them; the last takes the rest. */
  | {
      readonly kind: 'columns'
      readonly widths: readonly number[]
      readonly gap: number
      readonly of: readonly (readonly Block[])[]
    }
  /** As many columns as are said, filled one after the other; what stands together is not torn. */
  | { readonly kind: 'flow'; readonly columns: number; readonly of: readonly (readonly Block[])[] }
  | {
      readonly kind: 'picture'
      readonly file: string
      readonly alternative: string
      readonly width: number
      readonly height: number
    }
  | { readonly kind: 'key'; readonly of: readonly Sample[]; readonly note: string }
  | { readonly kind: 'rows'; readonly of: readonly Row[]; readonly look: RowsLook }
  | { readonly kind: 'photos'; readonly of: readonly Photo[] }
  | { readonly kind: 'signatures'; readonly of: readonly Signature[] }
  /** What is kept on one page. */
  | { readonly kind: 'together'; readonly of: readonly Block[] }
  | { readonly kind: 'points'; readonly of: readonly Item[] }
  /** A point in a line. */
  | { readonly kind: 'counted'; readonly rank: number; readonly sign: Verdict; readonly word: string; readonly text: string }
  | { readonly kind: 'entries'; readonly of: readonly Entry[] }
  | { readonly kind: 'space'; readonly height: number }
  | { readonly kind: 'rule'; readonly look: 'ink' | 'faint' }
  /** An empty line to write on. */
  | { readonly kind: 'to-write' }
  | { readonly kind: 'page' }

/** How rows look: beside a drawing, of a fabric, of a correction, of a point, small ones in columns, and parties side by side. */
export type RowsLook = 'facts' | 'care' | 'corrections' | 'point' | 'small' | 'about' | 'contacts'

/** A photo in its frame, with what is marked on it; `file` is absent where it is not here. */
export interface Photo {
  readonly file?: string
  readonly alternative: string
  readonly name: string
  readonly when: string
  readonly says: string
  readonly notHere: string
}
/** A signature; `file` is absent where the name was typed. */
export interface Signature {
  readonly file?: string
  readonly alternative: string
  readonly name: string
  readonly says: readonly string[]
  readonly words: string
  readonly hash: string
}

/** `cover`: the name of a house; `title`: of a window or of what begins a page; `plain`: within a page; `small`: of a list in small type. */
export type Look = 'cover' | 'title' | 'plain' | 'small'

/** A line of the contents, with the page of its place. */
export interface Entry {
  readonly sign?: Verdict
  readonly word?: string
  readonly to: string
  readonly text: string
  readonly more: string
}

/** A file that a document shows, by its name in the document. */
export interface Files {
  /** The bytes of a photo, JPEG; undefined when it is not here. */
  readonly photo: (photo: ShownPhoto) => Uint8Array | undefined
  readonly add: (name: string, bytes: string | Uint8Array) => string
}
