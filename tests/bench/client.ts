// A client in a process of its own, so that the server's only serves.
import { Agent, get } from 'node:http'

/** What is asked of the client: so many requests of an address, over so many connections that are kept. */
export interface Errand {
  readonly address: string
  readonly requests: number
  readonly connections: number
  /** How long each answer has to be. */
  readonly bytes: number
}

const agent = new Agent({ keepAlive: true })

const fetched = (address: string) =>
  new Promise<number>((resolve, reject) => {
    get(address, { agent }, (answer) => {
      let bytes = 0
      answer.on('data', (part: Buffer) => {
        bytes += part.length
      })
      answer.on('end', () => (answer.statusCode === 200 ? resolve(bytes) : reject(new Error(`${answer.statusCode}: ${address}`))))
      answer.on('error', reject)
    }).on('error', reject)
  })

/** Requests in a second. */
async function rate({ address, requests, connections, bytes }: Errand): Promise<number> {
  let left = requests
  const connection = async () => {
    while (left-- > 0) {
      const got = await fetched(address)
      if (got !== bytes) throw new Error(`Unexpected ${got} bytes of ${address}, expected ${bytes}.`)
    }
  }
  const from = performance.now()
  await Promise.all(Array.from({ length: connections }, connection))
  return (1000 * requests) / (performance.now() - from)
}

process.on('message', (errand: Errand) =>
  rate(errand).then(
    (is) => process.send?.({ rate: is }),
    (error: Error) => process.send?.({ failed: error.message }),
  ),
)
