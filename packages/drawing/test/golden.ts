import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect } from 'vitest'

/** Compares a drawing with the file that holds it as it should be. Where they differ what came is written beside it, as `-changed`: look at both, and rename it. */
export function compare(name: string, drawing: string): void {
  const svg = `${drawing.replaceAll('><', '>\n<')}\n`
  const path = (end: string) => fileURLToPath(new URL(`golden/${name}${end}.svg.txt`, import.meta.url))
  const kept = existsSync(path('')) ? readFileSync(path(''), 'utf8') : undefined
  if (kept === svg) rmSync(path('-changed'), { force: true })
  else writeFileSync(path('-changed'), svg)
  expect(svg === kept, `${name}.svg.txt differs from what came, which is in ${name}-changed.svg.txt`).toBe(true)
}
