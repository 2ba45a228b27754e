import { type Refused, refusedFor } from './refused.ts'

/** What is asked of one photo, and what it may cost. */
export interface Limits {
  /** Bytes. */
  readonly mostBytes: number
  readonly mostPixels: number
  /** How long one photo may take, in milliseconds. */
  readonly mostMs: number
  /** Bytes that the process of the decoders may hold, all in all. */
  readonly mostMemory: number
  /** So long after the last photo that process ends, in milliseconds: what it holds is given back. */
  readonly restMs: number
}

const mega = 1_000_000
export const usualLimits: Limits = {
  mostBytes: 40 * mega,
  mostPixels: 60 * mega,
  mostMs: 20_000,
  mostMemory: 600 * mega,
  restMs: 30_000,
}

const megabytes = (bytes: number): number => Math.ceil(bytes / mega)
/** What is said of a photo of so many bytes; undefined when it may have them. */
export const bigger = (size: number, { mostBytes }: Pick<Limits, 'mostBytes'>): Refused | undefined =>
  size > mostBytes ? refusedFor('photo/too-big', { size: megabytes(size), most: Math.floor(mostBytes / mega) }) : undefined
