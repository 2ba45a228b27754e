import { below, type Job, type Place, placeInWords, valueAt } from '@evenhem/job'
import { type Length, readLength } from '@evenhem/length'
import type { Line } from './outline.ts'
import type { Said, Voice } from './voice.ts'

/** Where a decision stands, under which name, and its words, as the log has them. */
export interface Decision {
  /** The window or the treatment. */
  readonly at: Place
  readonly key: string
  readonly text: string
}

const choices = ['go on', 'reset pins', 'move the brackets', 'call the workroom']
const hems = ['pins', 'brackets', 'brackets and pins', 'goes back', 'read again']
const named = (text: string): string => text.replaceAll(' ', '-')

function lengthIn(text = ''): Length | undefined {
  const read = readLength(text, 'mm')
  return read.ok ? read.value : undefined
}

/** What a decision is about, in words: a member of a panel or an opening, a hem, a bracket, a part. What nobody here knows goes by its own name. */
function aboutOf({ at, key }: Decision, job: Job, within: Place, voice: Voice): string {
  if (key === 'hems' || key === 'panels') return voice.text(`report/about-${key}`)
  const [, what, id = ''] = /^(hem|bracket)-(.+)$/.exec(key) ?? []
  const [first = '', second = '', ...rest] = key.split('.')
  const places =
    what === 'bracket'
      ? [below(at, 'found', 'brackets', id)]
      : [
          below(at, 'panels', what ? id : first, ...(second ? [second] : []), ...rest),
          below(at, 'walls', first, 'openings', second, ...rest),
        ]
  const place = places.find((one) => what === 'bracket' || valueAt(job, one) !== undefined)
  if (place !== undefined) return capital(placeInWords(job, place, within, voice.language))
  const said = voice.text(key)
  return capital(said === `[${key}]` ? key : said)
}
const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`

/** `717.55 mm for 711.2 mm`, `1 of 2`: what was measured or counted against the order. Nothing where it is written otherwise. */
function differenceIn(text: string, voice: Voice): readonly Said[] {
  const [measured, ordered] = text.split(' for ').map(lengthIn)
  if (measured !== undefined && ordered !== undefined)
    return [voice.said('report/measured-for', { measured: { length: measured }, ordered: { length: ordered } })]
  const [, own, needed] = /^(\d+) of (\d+)$/.exec(text) ?? []
  return own && needed ? [voice.said('report/came-of', { own: { count: Number(own) }, needed: { count: Number(needed) } })] : []
}

/** `up 15.875 mm, to 2301.875 mm`. */
function moveIn(text: string, voice: Voice): readonly Said[] {
  const [, way = '', by, to] = /^(up|down) ([^,]+), to (.+)$/.exec(text) ?? []
  const [far, mark] = [lengthIn(by), lengthIn(to)]
  if (far === undefined || mark === undefined) return []
  return [voice.said('report/bracket-moved', { way, by: { length: far }, to: { length: mark } })]
}

/** What was decided. Words that are nobody's here stand as they are. */
function decidedIn({ key, text }: Decision, voice: Voice): readonly Said[] {
  const moved = moveIn(text, voice)
  if (moved.length > 0) return moved
  const [how = ''] = text.split('; ', 1)
  if (hems.includes(how)) return [voice.said(`report/hem-${named(how)}`)]
  const choice = choices.find((one) => text.startsWith(`${one}: `))
  if (!choice) return [[text]]
  const differs = key === 'hems' || key === 'panels' ? [] : differenceIn(text.slice(choice.length + 2), voice)
  return [voice.said(`report/decided-${named(choice)}`), ...differs]
}

/** A decision as a fact: what it is about, said from below `within`, and what was decided. */
export const decisionLine = (decision: Decision, job: Job, within: Place, voice: Voice): Line => ({
  name: [aboutOf(decision, job, within, voice)],
  says: decidedIn(decision, voice),
})
