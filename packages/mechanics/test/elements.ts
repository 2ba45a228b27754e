import type { Beam, Loads } from '../src/index.ts'

/** A rod cut into elements with a place and a slope at each end, by stiffness: another way than that of the package, to check it by. Splices are doubled slopes. */
export function bentByElements(beam: Beam, loads: Loads) {
  const { supports, splices = [], stiffness } = beam
  const places = [
    ...new Set([
      ...[beam.from, beam.to, ...splices, ...supports.map(({ at }) => at), ...stiffness.map(({ from }) => from)],
      ...loads.spread.flatMap(({ from, to }) => [from, to]),
      ...loads.points.map(({ at }) => at),
    ]),
  ].sort((a, b) => a - b)
  // Slopes left and right of a place are one unknown but in a splice.
  let count = 0
  const unknowns = places.map((at) => {
    const [down, left] = [count++, count++]
    return { at, down, left, right: splices.includes(at) ? count++ : left }
  })
  const matrix = Array.from({ length: count }, () => new Array<number>(count).fill(0))
  const right = new Array<number>(count).fill(0)
  const add = (i: number, j: number, value: number) => {
    const row = matrix[i] as number[]
    row[j] = (row[j] as number) + value
  }
  const put = (i: number, value: number) => {
    right[i] = (right[i] as number) + value
  }
  for (const [n, b] of unknowns.slice(1).entries()) {
    const a = unknowns[n] as (typeof unknowns)[number]
    const long = b.at - a.at
    const middle = (a.at + b.at) / 2
    const ei = (stiffness.findLast(({ from }) => from <= middle) ?? stiffness[0])?.ei ?? 0
    const each = loads.spread.reduce((all, { from, to, each }) => (from < middle && middle < to ? all + each : all), 0)
    const own = [a.down, a.right, b.down, b.left]
    const rows = [
      [12, 6 * long, -12, 6 * long],
      [6 * long, 4 * long ** 2, -6 * long, 2 * long ** 2],
      [-12, -6 * long, 12, -6 * long],
      [6 * long, 2 * long ** 2, -6 * long, 4 * long ** 2],
    ]
    for (const [i, row] of rows.entries())
      for (const [j, value] of row.entries()) add(own[i] as number, own[j] as number, (ei / long ** 3) * value)
    for (const [i, share] of [long / 2, long ** 2 / 12, long / 2, -(long ** 2) / 12].entries())
      put(own[i] as number, each * share)
  }
  for (const { at, force } of loads.points) put(unknowns.find((each) => each.at === at)?.down ?? 0, force)
  const [free, forces] = [matrix.map((row) => [...row]), [...right]]
  for (const { at, down = 0 } of supports) {
    const i = unknowns.find((each) => each.at === at)?.down ?? 0
    for (const row of matrix) {
      forces[matrix.indexOf(row)] = (forces[matrix.indexOf(row)] as number) - (row[i] as number) * down
      row[i] = 0
    }
    ;(matrix[i] as number[]).fill(0)
    add(i, i, 1)
    forces[i] = down
  }
  const found = solved(matrix, forces)
  const held = (i: number): number =>
    (right[i] as number) - (free[i] as number[]).reduce((all, value, j) => all + value * (found[j] as number), 0)
  return {
    reactions: supports.map(({ at }) => held(unknowns.find((each) => each.at === at)?.down ?? 0)),
    places: unknowns.map(({ at, down }) => ({ at, down: found[down] as number })),
  }
}

function solved(matrix: readonly number[][], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, i) => [...row, right[i] as number])
  for (let k = 0; k < rows.length; k++) {
    const pivot = rows.slice(k).reduce((best, row) => (Math.abs(row[k] as number) > Math.abs(best[k] as number) ? row : best))
    rows.splice(rows.indexOf(pivot), 1)
    rows.splice(k, 0, pivot)
    for (const [i, row] of rows.entries())
      if (i !== k) {
        const factor = (row[k] as number) / (pivot[k] as number)
        for (let j = k; j < row.length; j++) row[j] = (row[j] as number) - factor * (pivot[j] as number)
      }
  }
  return rows.map((row, i) => (row.at(-1) as number) / (row[i] as number))
}
