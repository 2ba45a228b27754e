import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** What the report says. */
export const reportWords = {
  'drapery/entry-lead': one(
    '{draw, select, pair {A pair of {lined, select, yes {lined, pleated} other {pleated}} panels. Closed, they pass the casing by {sides, select, alike {{left} on each side} other {{left} on the left and {right} on the right}} and {lies, select, yes {lie {clearance} on the floor} other {{to, select, sill {end {clearance} above the stool} apron {end {clearance} below the apron} other {{even, select, yes {clear the floor by {clearance}} other {clear the floor by at least {clearance}}}}}}}.} one {One {lined, select, yes {lined, pleated} other {pleated}} panel that draws to one side. Closed, it passes the casing by {sides, select, alike {{left} on each side} other {{left} on the left and {right} on the right}} and {lies, select, yes {lies {clearance} on the floor} other {{to, select, sill {ends {clearance} above the stool} apron {ends {clearance} below the apron} other {{even, select, yes {clears the floor by {clearance}} other {clears the floor by at least {clearance}}}}}}}.} other {{count, plural, one {One {lined, select, yes {lined, pleated} other {pleated}} panel that stays where it hangs. It {lies, select, yes {lies {clearance} on the floor} other {{to, select, sill {ends {clearance} above the stool} apron {ends {clearance} below the apron} other {{even, select, yes {clears the floor by {clearance}} other {clears the floor by at least {clearance}}}}}}}.} other {# {lined, select, yes {lined, pleated} other {pleated}} panels that stay where they hang. They {lies, select, yes {lie {clearance} on the floor} other {{to, select, sill {end {clearance} above the stool} apron {end {clearance} below the apron} other {{even, select, yes {clear the floor by {clearance}} other {clear the floor by at least {clearance}}}}}}}.}}}}',
  ),
  'drapery/entry-lead.short': one(
    '{draw, select, pair {A pair of {lined, select, yes {lined, pleated} other {pleated}} panels. They are meant to} other {One {lined, select, yes {lined, pleated} other {pleated}} panel. It is meant to}} {to, select, sill {end {clearance} above the stool.} apron {end {clearance} below the apron.} other {clear the floor by {clearance}.}}',
  ),
  'drapery/entry-panels': one('Panels: {count}, {pleats} pleats each'),
  'drapery/entry-length': one('Length, {side}: {length}'),
  'drapery/entry-fabric': one('Fabric: {fabric}{fibres, select, none {} other { ({fibres})}}'),
  'drapery/entry-lining': one('Lining: {lining}'),
  'drapery/entry-hem': one('Hem: {hem}'),
  'drapery/entry-hem-side': one('Hem, {side}: {hem}'),
  'drapery/entry-care': one(
    'Draw the panels by the leading edge, near the top. Dust them with a soft brush. Ask a cleaner who knows lined draperies before anything is washed.',
  ),
  'drapery/entry-safe': one('No cords. Keep the panels clear of heaters. Do not hang or climb on the rod.'),
} satisfies Words
