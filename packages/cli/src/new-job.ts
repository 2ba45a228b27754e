import { ownSchema } from './folder.ts'
import { type Answers, sidesOf } from './questions.ts'
import type { Voice } from './voice.ts'

type Json = Readonly<Record<string, unknown>>

/** A name as an id: small letters, digits and hyphens; `otherwise` when nothing of it is left. */
const idOf = (name: string, otherwise: string): string => {
  const plain = name.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()
  return (
    plain
      .replaceAll(/[^a-z0-9]+/g, '-')
      .replaceAll(/^-|-$/g, '')
      .slice(0, 40)
      .replace(/-$/, '') || otherwise
  )
}
/** Without the members that nobody said. */
const said = (members: Json): Json => Object.fromEntries(Object.entries(members).filter(([, value]) => value !== undefined))

const panelsOf = (draw: string): readonly string[] =>
  draw === 'one-way left' ? ['left'] : draw === 'one-way right' ? ['right'] : ['left', 'right']

function treatmentOf({ draw = 'pair', rod, top, length, pleats }: Answers): Json {
  const panel = { finishedLength: length, pleats: pleats === undefined ? undefined : Number(pleats) }
  return said({
    id: 'over',
    hardware: 'rod',
    draw,
    rod: rod === undefined && top === undefined ? undefined : said({ width: rod, top }),
    panels: panelsOf(draw).map((id) => said({ id, ...panel })),
  })
}

function windowOf(name: string, answers: Answers): Json {
  const [width, top] = sidesOf(answers.opening ?? '')
  const opening = said({ id: 'o', casing: width === undefined ? undefined : { width, top } })
  const treatments = answers['rod-diameter'] === undefined ? [] : [treatmentOf(answers)]
  return { id: idOf(name, 'w1'), name, walls: [{ id: 'a', openings: [opening] }], treatments }
}

const hardwareOf = (diameter: string, name: string): Json => ({
  id: 'rod',
  kind: 'rod-and-ring',
  name,
  rod: { diameter },
  ring: {},
  bracket: {},
})

/** A job file with these answers; what nobody said is left out, for `check` to ask. */
export function newJobText(answers: Answers, voice: Voice): string {
  const { number, name, country, units, customer, room, window } = answers
  const diameter = answers['rod-diameter']
  const windows = window === undefined ? [] : [windowOf(window, answers)]
  const job = said({
    $schema: ownSchema,
    format: 'evenhem-job/1',
    uses: diameter === undefined ? undefined : { 'rod-and-ring': 1 },
    units,
    job: said({ number, name, country, customer: customer === undefined ? undefined : { name: customer } }),
    hardware: diameter === undefined ? undefined : [hardwareOf(diameter, voice('say.rod'))],
    rooms: room === undefined ? [] : [{ id: idOf(room, 'room'), name: room, windows }],
  })
  return `${JSON.stringify(job, null, 2)}\n`
}
