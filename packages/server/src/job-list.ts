import { basename } from 'node:path'
import { windowsOf } from '@evenhem/job'
import type { ServedJob } from './jobs.ts'
import { logOwner } from './site.ts'

/** A job in a list. `entries`: how many its log holds; `last`: the latest clock among them. */
export interface ListedJob {
  readonly at: string
  readonly name: string
  readonly number: string
  readonly customer?: string
  readonly install?: string
  readonly windows: number
  readonly entries: number
  readonly last?: string
  /** `broken`: it cannot be read; `ordered`: nothing was entered yet. */
  readonly state: 'broken' | 'ordered' | 'begun'
}

/** Those to be installed first come first, those without a day last. */
export async function listed(jobs: readonly ServedJob[]): Promise<readonly ListedJob[]> {
  const list: ListedJob[] = []
  for (const job of jobs) list.push(await listedJob(job).catch(() => broken(job)))
  return list.sort((a, b) => compare(dayOf(a), dayOf(b)) || compare(a.name, b.name) || compare(a.at, b.at))
}
const dayOf = ({ install = '~' }: ListedJob): string => install
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)

const broken = ({ at, path }: ServedJob): ListedJob => ({
  at,
  name: basename(path),
  number: '',
  windows: 0,
  entries: 0,
  state: 'broken',
})

async function listedJob(served: ServedJob): Promise<ListedJob> {
  const { file, read } = await served.source.read()
  if (!read.job) return broken(served)
  const { name, number, customer, install } = read.job.job
  const folder = logOwner(file)
  const lines = folder === undefined ? [] : (await served.logs(folder)).flatMap((each) => each.lines)
  const last = latest(lines.map(({ event }) => event.clock))
  return {
    at: served.at,
    name,
    number,
    ...(customer && { customer: customer.name }),
    ...(install && { install }),
    windows: windowsOf(read.job).length,
    entries: lines.length,
    ...(last && { last }),
    state: lines.length > 0 ? 'begun' : 'ordered',
  }
}

/** A clock that says the second 60, as some do once in years, is passed over: no clock here knows it. */
const latest = (clocks: readonly string[]): string | undefined =>
  clocks
    .filter((clock) => !Number.isNaN(Date.parse(clock)))
    .reduce<string | undefined>(
      (most, clock) => (most !== undefined && Date.parse(most) >= Date.parse(clock) ? most : clock),
      undefined,
    )
