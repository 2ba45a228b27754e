import { schemaOf } from '@evenhem/job/read'
import type { Command } from './command.ts'
import { extensions } from './job.ts'

export const schema: Command = {
  name: 'schema',
  says: 'schema',
  more: 'schema.more',
  options: {},
  run: async (_asked, { out }) => {
    out(`${JSON.stringify(schemaOf(extensions), null, 2)}\n`)
    return 0
  },
}
