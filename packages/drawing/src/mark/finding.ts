import { element, escaped, rectOf, short, strokeData } from '../element.ts'
import type { Finding } from '../marks.ts'
import type { PlacedFinding } from '../scene.ts'
import { type At, boundsOf, boxAt } from '../space.ts'
import type { MarkTable } from './table.ts'

/** Told apart by shape before colour; shapes are read off the concept for a radius of 10.5. */
export const findingShape: Readonly<Record<PlacedFinding['verdict'], (at: At, radius: number) => string>> = {
  pass: ([x, y], r) =>
    element('circle', { class: 'ring', cx: x, cy: y, r }) +
    element('path', {
      class: 'check',
      d: `M${short(x - 0.45 * r)} ${short(y + 0.02 * r)}L${short(x - 0.13 * r)} ${short(y + 0.38 * r)}L${short(x + 0.45 * r)} ${short(y - 0.36 * r)}`,
    }),
  warn: ([x, y], r) => {
    const far = 1.2 * r
    return (
      element('path', {
        class: 'lozenge',
        d: `${strokeData([
          [
            [x, y - far],
            [x + far, y],
            [x, y + far],
            [x - far, y],
          ],
        ])}Z`,
      }) +
      element('path', {
        class: 'half',
        d: `${strokeData([
          [
            [x, y - far],
            [x, y + far],
            [x - far, y],
          ],
        ])}Z`,
      })
    )
  },
  fail: (at, r) =>
    rectOf(boxAt(at, 2 * r, 2 * r), { class: 'square' }) +
    element('path', {
      class: 'bar',
      d: strokeData([
        [
          [at[0] - 0.55 * r, at[1]],
          [at[0] + 0.55 * r, at[1]],
        ],
      ]),
    }),
  unknown: ([x, y], r) =>
    element('circle', { class: 'broken', cx: x, cy: y, r }) +
    element(
      'text',
      { class: 'question', x, y: y + 0.5 * r, 'font-size': 1.45 * r, 'font-weight': 700, 'text-anchor': 'middle' },
      escaped('?'),
    ),
}

export const finding: MarkTable<Finding, PlacedFinding, At> = {
  bounds: (mark) => boundsOf([mark.at]),
  place: (mark, { spot, options }) => ({
    kind: 'finding',
    verdict: mark.verdict,
    at: spot,
    radius: options.sizes.finding,
    code: mark.code,
    words: finding.words(mark, options).join(''),
  }),
  svg: ({ verdict, at, radius, code, words }, { interactive }) =>
    element(
      'g',
      { class: `finding ${verdict}`, ...(interactive ? { role: 'img', 'data-code': code, 'aria-label': words } : {}) },
      findingShape[verdict](at, radius),
    ),
  words: (mark, options) => [`${options.say(`drawing/${mark.verdict}`)}: ${options.say(mark.code)}`],
}
