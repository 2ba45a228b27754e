import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { examples } from '../tools/examples.ts'
import { galleryPage } from './page.ts'

/** `npm run gallery` writes the page into a folder that git ignores, and says where it is. */
const folder = fileURLToPath(new URL('../../dist/', import.meta.url))
mkdirSync(folder, { recursive: true })
writeFileSync(`${folder}gallery.html`, galleryPage(examples))
process.stdout.write(`${folder}gallery.html\n`)
