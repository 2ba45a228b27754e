// No command here takes a second; one that is never answered must say which it was.
const patienceMs = 20_000

/** Sends a command of the WebDriver standard below a session and gives its value. Throws what the driver refuses, with its words. */
export type Command = <Value = null>(method: 'GET' | 'POST' | 'DELETE', path: string, body?: object) => Promise<Value>

const driverOf =
  (driver: string): Command =>
  async (method, path, body) => {
    const sent = body === undefined ? {} : { body: JSON.stringify(body), headers: { 'content-type': 'application/json' } }
    const signal = AbortSignal.timeout(patienceMs)
    const answer = await fetch(`${driver}${path}`, { method, signal, ...sent }).catch((error) => {
      throw new Error(`The driver gave no answer to ${method} ${path}: ${error.message}`)
    })
    const { value } = (await answer.json()) as { value: never }
    if (answer.ok) return value
    const { error, message } = value as { error: string; message: string }
    throw new Error(`The driver refused ${method} ${path}: ${error}. ${message}`)
  }

/** Opens a session with these capabilities; returns the commands of it. */
export async function openSession(driver: string, capabilities: object): Promise<Command> {
  const command = driverOf(driver)
  const { sessionId } = await command<{ sessionId: string }>('POST', '/session', { capabilities: { alwaysMatch: capabilities } })
  return (method, path, body) => command(method, `/session/${sessionId}${path}`, body)
}
