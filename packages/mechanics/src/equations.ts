/** A square set of linear equations, taken apart once and solved for many right-hand sides. */
export type Solver = (right: readonly number[]) => readonly number[]

/** Elimination with the largest pivot of each column; undefined when the equations settle nothing. The rows must be of one size, as pivots below 10⁻¹¹ of the largest entry count as nothing. */
export function solverOf(rows: readonly (readonly number[])[]): Solver | undefined {
  const [size, lu] = [rows.length, rows.map((row) => [...row])]
  const order = rows.map((_, i) => i)
  const nothing = 1e-11 * Math.max(0, ...lu.flat().map(Math.abs))
  for (let k = 0; k < size; k++) {
    const pivot = largestFrom(lu, k)
    swap(lu, k, pivot)
    swap(order, k, pivot)
    if (Math.abs(entry(lu, k, k)) <= nothing) return undefined
    for (let i = k + 1; i < size; i++) eliminate(lu, k, i)
  }
  return (right) =>
    back(
      lu,
      forward(
        lu,
        order.map((i) => right[i] ?? 0),
      ),
    )
}
const entry = (rows: readonly (readonly number[])[], i: number, j: number): number => rows[i]?.[j] ?? 0
function largestFrom(rows: readonly (readonly number[])[], k: number): number {
  let best = k
  for (let i = k + 1; i < rows.length; i++) if (Math.abs(entry(rows, i, k)) > Math.abs(entry(rows, best, k))) best = i
  return best
}
function swap<T>(list: T[], a: number, b: number): void {
  ;[list[a], list[b]] = [list[b] as T, list[a] as T]
}
function eliminate(rows: number[][], k: number, i: number): void {
  const [row, above] = [rows[i] as number[], rows[k] as number[]]
  const factor = (row[k] as number) / (above[k] as number)
  for (let j = k + 1; j < row.length; j++) row[j] = (row[j] as number) - factor * (above[j] as number)
  row[k] = factor
}
function forward(rows: readonly (readonly number[])[], right: readonly number[]): number[] {
  const found: number[] = []
  for (const [i, value] of right.entries()) found.push(found.reduce((sum, x, j) => sum - entry(rows, i, j) * x, value))
  return found
}
function back(rows: readonly (readonly number[])[], found: number[]): readonly number[] {
  for (let i = found.length - 1; i >= 0; i--) {
    let value = found[i] as number
    for (let j = i + 1; j < found.length; j++) value -= entry(rows, i, j) * (found[j] as number)
    found[i] = value / entry(rows, i, i)
  }
  return found
}
