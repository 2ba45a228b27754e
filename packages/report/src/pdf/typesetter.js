// Sets the document that lies in a folder: `node typesetter.js <folder>`. In a process of its own, whose memory goes back as it ends.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler'

const folder = process.argv[2]
const { fonts, timestamp } = JSON.parse(readFileSync(join(folder, 'setting.json'), 'utf8'))
// A document reads nothing outside of its folder.
const compiler = NodeCompiler.create({ workspace: folder, fontArgs: [{ fontBlobs: fonts.map((font) => readFileSync(font)) }] })

function bytesOf() {
  const compiled = compiler.compile({ mainFilePath: join(folder, 'report.typ') })
  const trouble = [compiled.takeError(), compiled.takeWarnings()].flatMap((one) => (one ? compiler.fetchDiagnostics(one) : []))
  if (trouble.length > 0 || !compiled.result) throw trouble.map(({ message }) => message).join('; ')
  // All that was read is in what was compiled.
  compiler.evictCache(0)
  return compiler.pdf(compiled.result, { pdfStandard: 'ua-1', creationTimestamp: timestamp })
}

try {
  writeFileSync(join(folder, 'report.pdf'), bytesOf())
} catch (trouble) {
  process.stderr.write(String(trouble))
  process.exitCode = 1
}
