import { schemaOf } from '@evenhem/job/read'
import type { Command } from './command.ts'
import { extensions } from './job.ts'

export const schema: Command = {
  name: 'schema',
  says: 'Write the schema of job files, for an editor.',
  more: 'One JSON Schema (2020-12) of the format and of every kind and part that plugins add. Save it beside job.json and name it there as "$schema".',
  options: {},
  run: async (_asked, { out }) => {
    out(`${JSON.stringify(schemaOf(extensions), null, 2)}\n`)
    return 0
  },
}
