import type { Plugin } from '../contract.ts'
import type { Plan } from './host.ts'

/** No window is as far from the left edge of its casing: 200 m, in millimetres. */
const far = 200_000

/** Marks beyond every wall: most often lengths, which are whole nanometres, that nobody made millimetres. */
export const farAway = (plugin: Plugin, plans: readonly Plan[]): readonly string[] =>
  plans.flatMap(({ layers }) =>
    layers
      .filter(({ by }) => by.startsWith(`${plugin.id}/`))
      .flatMap(({ by, view, marks }) => {
        const furthest = Math.max(0, ...marks.flatMap(numbersIn).map(Math.abs))
        return furthest > far
          ? [`${by} draws at ${furthest} in the view "${view}", expected millimetres; make them with \`mm\` of @evenhem/drapery`]
          : []
      }),
  )

/** The numbers of a mark that are places and sizes; those of its figure are lengths. */
function numbersIn(value: unknown): readonly number[] {
  if (typeof value === 'number') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.entries(value).flatMap(([name, inner]) => (name === 'figure' ? [] : numbersIn(inner)))
}
