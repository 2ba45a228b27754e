import type { Words } from '@evenhem/plugin'

const one = (says: string) => ({ says })

/** What the report itself says. Everything about a window comes from the plan, in the words of the plugins that planned it. */
const en: Words = {
  'report/kind': one('Completion report'),
  'report/draft': one('Draft'),
  'report/title': one('{window}, {job}'),
  'report/window': one('{room}, {window}'),
  'report/job': one('Job {number}'),
  'report/page': one('{page} of {pages}'),
  'report/what-hangs-here': one('What hangs here'),
  'report/set-on-the-day': one('Planned, above the floor'),
  'report/care': one('Care'),
  'report/safe-use': one('Safe use'),
  'report/drawing': one('Front view of {window}.'),
  'report/not-drawn': one('There is no drawing yet: what it needs is not known.'),
  'report/read-from-a-tape': one('read from a tape at the window, {days}'),
  'report/read-from-a-tape-undated': one('read from a tape at the window'),
  'report/worked-out': one('worked out'),
  'report/not-known': one('not known yet, and not to scale'),
  'report/in': one('Inches{rounded, select, yes {, rounded} other {}}. Drawn to scale.'),
  'report/ft-in': one('Feet and inches{rounded, select, yes {, rounded} other {}}. Drawn to scale.'),
  'report/mm': one('Millimetres{rounded, select, yes {, rounded} other {}}. Drawn to scale.'),
  'report/cm': one('Centimetres{rounded, select, yes {, rounded} other {}}. Drawn to scale.'),
  'report/days': one('{first} to {last}'),
  'report/still-open': one('Still open'),
  'report/unsigned': one('This is a draft. Nobody has signed for this window yet.'),
  'report/nothing-open': one('Nothing that was checked is open.'),
  'report/to-measure': one('Not measured yet: {place}.'),
  'report/could-not': one('Could not work this out: {rule}, at {place}.'),
  'report/set-aside': one('Gone on all the same: {reason}'),
  'report/checked': one('Checked'),
  'report/pass': one('Well'),
  'report/warn': one('Look'),
  'report/fail': one('Stop'),
  'report/unknown': one('Not known'),
  'report/for': one('For'),
  'report/made-by': one('Made by'),
  'report/measured-by': one('Measured by'),
  'report/installation': one('Installation'),
}

export const words: Readonly<Record<string, Words>> = { en }
