import { catalogueSchemaOf, schemaOf } from '@evenhem/job/read'
import type { Command } from './command.ts'
import { extensions } from './job.ts'

export const schema: Command = {
  name: 'schema',
  says: 'schema',
  more: 'schema.more',
  options: { catalogue: { says: '--catalogue' } },
  run: async ({ options }, { out }) => {
    const written = 'catalogue' in options ? catalogueSchemaOf(extensions) : schemaOf(extensions)
    out(`${JSON.stringify(written, null, 2)}\n`)
    return 0
  },
}
