import { type Tape, tapes, writeLength } from '@evenhem/length'
import { type ComposeOptions, screen, words } from '../../src/index.ts'

const said: Readonly<Record<string, { readonly says: string }>> = words.en
/** Captions of these scenes are their own words; the drawing's words are English. */
export const say = (code: string): string => said[code]?.says ?? code

/** A tablet's drawing, read in sixteenths of an inch. */
export const onTablet = (more: Partial<ComposeOptions> = {}, tape: Tape = tapes.sixteenths): ComposeOptions => ({
  view: 'elevation',
  state: 'stacked',
  width: 820,
  height: 726,
  sizes: screen,
  write: (length) => writeLength(length, tape),
  say,
  ...more,
})
