#!/usr/bin/env node
import { existsSync } from 'node:fs'

const built = new URL('../dist/index.js', import.meta.url)
if (existsSync(built)) await import(built.href)
else {
  console.error('Evenhem is not built yet; run `npm run build` in its folder.')
  process.exitCode = 2
}
