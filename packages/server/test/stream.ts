import { once } from 'node:events'
import { type ClientRequest, type IncomingMessage, request } from 'node:http'
import { onTestFinished } from 'vitest'

/** An event of a stream. */
export interface Told {
  readonly event: string
  // biome-ignore lint/suspicious/noExplicitAny: what a server sends, looked into by the test that asked for it
  readonly data: any
}
/** A client that listens to a stream. */
export interface Listener {
  readonly answer: IncomingMessage
  readonly told: readonly Told[]
  /** The next event of that name that is as wished for, of those that nobody asked for before. */
  readonly next: (event: string, is?: (data: Told['data']) => boolean) => Promise<Told['data']>
  /** Until the server ends it. */
  readonly ended: Promise<unknown>
  readonly close: () => void
}

const eventOf = (text: string): Told => {
  const [, event = '', data = ''] = /^event: (.+)\ndata: (.+)$/.exec(text) ?? []
  return { event, data: JSON.parse(data) }
}

/** Opens a stream at a path. Without `isHeard` it takes nothing in. */
export async function listen(port: number, path: string, headers: Readonly<Record<string, string>> = {}): Promise<Listener> {
  const sent: ClientRequest = request({ host: '127.0.0.1', port, path, headers, agent: false })
  onTestFinished(() => void sent.destroy())
  sent.end()
  const [answer] = (await once(sent, 'response')) as [IncomingMessage]
  const told: Told[] = []
  const waiting: (() => void)[] = []
  let rest = ''
  answer.setEncoding('utf8').on('data', (part) => {
    const texts = (rest + part).split('\n\n')
    rest = texts.pop() ?? ''
    told.push(...texts.map(eventOf))
    for (const again of waiting.splice(0)) again()
  })
  answer.on('error', () => undefined)
  const ended = new Promise((done) => answer.once('close', () => done(undefined)))
  let from = 0
  const next: Listener['next'] = async (event, is = () => true) => {
    for (;;) {
      const at = told.findIndex((each, i) => i >= from && each.event === event && is(each.data))
      if (at >= 0) {
        from = at + 1
        return told[at]?.data
      }
      await new Promise<void>((done) => waiting.push(done))
    }
  }
  return { answer, told, next, ended, close: () => sent.destroy() }
}
