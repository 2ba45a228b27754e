import type { Job } from '@evenhem/job'
import type { Section } from './outline.ts'
import type { Photos } from './photos.ts'
import { type PrintedPoint, printedPoint } from './punch-list.ts'
import { inOrder, isToMend, type ListedPoint, ownerOf } from './punch-points.ts'
import type { Voice } from './voice.ts'

export interface LeftOpen extends Section<PrintedPoint> {
  readonly lead: string
}

/** What is still to be mended at the house, each point with its place, its owner, the day and its photos. */
export function leftOpenOf(points: readonly ListedPoint[], found: Job, photos: Photos, voice: Voice): LeftOpen {
  const left = points.filter(isToMend).toSorted(inOrder)
  return {
    title: voice.text('report/left-open'),
    lead: voice.text(left.length === 0 ? 'report/punch-nothing' : 'report/left-open-lead', { count: { count: left.length } }),
    of: left.map((point) =>
      printedPoint(point, found, photos, voice, [
        { name: [voice.text('report/punch-owner')], says: [[ownerOf(point, voice.text)]] },
      ]),
    ),
  }
}
