import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect } from 'vitest'

/** Fonts, and the sum that follows from them, are the packages'; everything else is ours to keep. */
export const withoutFonts = (page: string): string =>
  page.replaceAll(/base64,[A-Za-z0-9+/=]+/g, 'base64,…').replaceAll(/sha256-[A-Za-z0-9+/=]+/g, 'sha256-…')

/** Compares a text with the file that holds it as it should be. Where they differ what came is written beside it, as `-changed`: look, and rename it. */
export function compare(name: string, text: string): void {
  const [stem, end] = [name.slice(0, name.lastIndexOf('.')), name.slice(name.lastIndexOf('.'))]
  const path = (file: string) => fileURLToPath(new URL(`golden/${file}`, import.meta.url))
  const changed = path(`${stem}-changed${end}`)
  const kept = existsSync(path(name)) ? readFileSync(path(name), 'utf8') : undefined
  if (kept === text) rmSync(changed, { force: true })
  else writeFileSync(changed, text)
  expect(text === kept, `${name} differs from what came; that is in ${stem}-changed${end}`).toBe(true)
}
