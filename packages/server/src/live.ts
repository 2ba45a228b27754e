import type { Place } from '@evenhem/job'
import type { Extensions } from '@evenhem/job/read'
import { isDevice } from '@evenhem/site-log'
import type { FastifyReply } from 'fastify'
import { type JobOnDisk, type News, newsOf } from './news.ts'
import type { SentEntry } from './sent-entry.ts'
import type { Pace, Stream, Streams } from './streams.ts'

/** Who has a job open: a device of the log, at which window, and what it is called where it was paired. */
export interface Here {
  readonly by: string
  readonly at: Place | ''
  readonly name?: string
}
/** Who wants to be told, and the paired device that asks, where it is one. */
export interface Guest extends Here {
  readonly paired?: string
}
/** What is told about a job to everybody who has it open. */
export interface Live {
  /** Answers with a stream; `full` when there are too many. What is on the disk by then is not told. */
  readonly join: (reply: FastifyReply, guest: Guest) => Promise<'open' | 'full'>
  /** Tells entries that were just written, without waiting for the next look at the disk. */
  readonly tell: (entries: readonly SentEntry[]) => void
}

/** A look at the disk now and then, while somebody is there to be told. */
interface Watch {
  readonly news: News
  readonly ready: Promise<unknown>
  readonly stop: () => void
}

export function liveOf(disk: JobOnDisk, extensions: Extensions, streams: Streams, pace: Pace): Live {
  const guests = new Map<Stream, Here>()
  let joining = 0
  let watch: Watch | undefined

  const tell = (event: string, data: object): void => {
    for (const stream of guests.keys()) stream.send(event, data)
  }
  const tellEntries = (entries: readonly SentEntry[]): void => {
    if (entries.length > 0) tell('log', { entries })
  }
  const tellHere = (): void => tell('here', { here: [...new Map([...guests.values()].map((each) => [each.by, each])).values()] })
  const look = async ({ look }: News): Promise<void> => {
    const { entries, isOtherJob } = await look()
    if (isOtherJob) tell('job', {})
    tellEntries(entries)
  }
  const rest = (): void => {
    if (guests.size + joining > 0) return
    watch?.stop()
    watch = undefined
  }

  async function join(reply: FastifyReply, { paired, ...here }: Guest): Promise<'open' | 'full'> {
    joining++
    watch ??= watching(newsOf(disk, extensions), look, pace)
    await watch.ready
    joining--
    // Who went meanwhile is not there any more.
    const stream = reply.raw.destroyed
      ? undefined
      : streams.open(reply, { by: here.by, paired }, () => {
          guests.delete(stream as Stream)
          rest()
          tellHere()
        })
    if (stream) guests.set(stream, here)
    else rest()
    tellHere()
    return stream ? 'open' : 'full'
  }
  return { join, tell: (entries) => tellEntries(watch?.news.take(entries) ?? []) }
}

function watching(news: News, look: (news: News) => Promise<void>, { lookMs }: Pace): Watch {
  const ready = news.look()
  let timer: NodeJS.Timeout
  let isOver = false
  const again = (): void => {
    if (isOver) return
    timer = setTimeout(() => void look(news).finally(again), lookMs).unref()
  }
  void ready.then(again)
  const stop = (): void => {
    isOver = true
    clearTimeout(timer)
  }
  return { news, ready, stop }
}

const longestPlace = 500

/** Who asks to be told, by an address; in words what is wrong with it. */
export function guestIn({ by, at = '' }: Readonly<Record<string, unknown>>): Here | string {
  if (typeof by !== 'string' || !isDevice(by))
    return 'Unexpected device, expected small letters, digits and hyphens, up to 40; write it as ?by=tablet-1.'
  const isPlace = typeof at === 'string' && (at === '' || (/^\/rooms\/(?:[^~]|~[01])+$/s.test(at) && at.length <= longestPlace))
  return isPlace
    ? { by, at }
    : `Unexpected place, expected none or a pointer below /rooms of up to ${longestPlace} characters; write it as &at=/rooms/den/windows/w1.`
}
