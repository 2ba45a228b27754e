import type { PlanAnswer, PlanAnswers, PlanOrder } from '../worker.ts'

/** A worker that plans, one question after the other. Started once, it needs no network. */
export interface Planning {
  readonly plan: <O extends PlanOrder>(order: O) => Promise<PlanAnswers[O['ask']]>
}

/** Starts the worker in which the tablet plans, so that a touch is never late because of a sum. */
export function startPlanning(): Planning {
  const worker = new Worker('/assets/worker.js', { type: 'module', name: 'plan' })
  let before: Promise<unknown> = Promise.resolve()
  const plan = <O extends PlanOrder>(order: O): Promise<PlanAnswers[O['ask']]> => {
    const now = before.then(() => ask(worker, order))
    before = now.catch(() => undefined)
    return now as Promise<PlanAnswers[O['ask']]>
  }
  return { plan }
}

const ask = (worker: Worker, order: PlanOrder): Promise<PlanAnswers[keyof PlanAnswers]> =>
  new Promise((resolve, reject) => {
    const ended = new AbortController()
    const settle = (end: () => void) => {
      ended.abort()
      end()
    }
    const { signal } = ended
    worker.addEventListener(
      'message',
      ({ data }: MessageEvent<PlanAnswer>) => settle(() => ('is' in data ? resolve(data.is) : reject(new Error(data.failed)))),
      { signal },
    )
    worker.addEventListener(
      'error',
      (event) => settle(() => reject(new Error(event.message || 'the plan’s worker could not be loaded'))),
      { signal },
    )
    worker.postMessage(order)
  })
