import type { PlanAnswer, Planned, PlanOrder } from '../worker.ts'

/** A worker that plans, one window after the other. Started once, it needs no network. */
export interface Planning {
  readonly plan: (order: PlanOrder) => Promise<Planned>
}

/** Starts the worker in which the tablet plans, so that a touch is never late because of a sum. */
export function startPlanning(): Planning {
  const worker = new Worker('/assets/worker.js', { type: 'module', name: 'plan' })
  let before: Promise<unknown> = Promise.resolve()
  const plan = (order: PlanOrder): Promise<Planned> => {
    const now = before.then(() => ask(worker, order))
    before = now.catch(() => undefined)
    return now
  }
  return { plan }
}

const ask = (worker: Worker, order: PlanOrder): Promise<Planned> =>
  new Promise((resolve, reject) => {
    const ended = new AbortController()
    const settle = (end: () => void) => {
      ended.abort()
      end()
    }
    const { signal } = ended
    worker.addEventListener(
      'message',
      ({ data }: MessageEvent<PlanAnswer>) => settle(() => ('plan' in data ? resolve(data) : reject(new Error(data.failed)))),
      { signal },
    )
    worker.addEventListener(
      'error',
      (event) => settle(() => reject(new Error(event.message || 'the plan’s worker could not be loaded'))),
      { signal },
    )
    worker.postMessage(order)
  })
