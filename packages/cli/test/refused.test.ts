import { Refusal } from '@evenhem/planner'
import { expect, test } from 'vitest'
import { orTrouble } from '../src/run.ts'
import { voiceIn } from '../src/voice.ts'

test('plugins that do not fit are told to their maker without a trace of our code', async () => {
  const said: string[] = []
  const language = 'en'
  const session = {
    out: () => {},
    err: (text: string) => said.push(text),
    colours: false,
    language,
    voice: voiceIn(language),
  } as const
  const refused = new Refusal([
    { what: 'cycle', plugin: 'pole', message: 'Unexpected cycle, expected an order: pole/a → pole/b' },
  ])
  expect(await orTrouble(session, () => Promise.reject(refused))).toBe(2)
  expect(said.join('')).toBe(
    'Unexpected plugins, expected ones that fit together; mend them, or leave one out of plugins/index.ts:\n' +
      '  Unexpected cycle, expected an order: pole/a → pole/b\n',
  )
})
