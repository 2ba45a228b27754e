import { below, type JobHead, type Panel, type Place, type Treatment } from '@evenhem/job'
import { type Known, known, type Length, type LengthReckoning, plus, type Reckoning } from '@evenhem/length'
import {
  cutWidth,
  finishedOfShare,
  flatOfCovered,
  flatOfFinished,
  fullnessOfPercent,
  lengthNeeded,
  sideHemsOf,
  turned,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import type { Coverage, MakeUp } from '../facts/index.ts'
import { type Member, member, outerSide, panelAt, perhaps } from '../given.ts'
import { choiceOf, layersOf } from './takeoff-choices.ts'

/** What the sizes of a panel follow from. */
export interface Cutting {
  readonly it: Treatment
  readonly at: Place
  readonly job: JobHead
  readonly makeUp?: MakeUp | undefined
  readonly coverage?: Coverage | undefined
}
/** How the fabric of a panel is cut. */
export interface PanelCut {
  readonly panel: string
  readonly outer: 'left' | 'right'
  readonly finishedWidth: Known<Length>
  readonly finishedLength: Known<Length>
  readonly flat: Known<Length>
  readonly ordered?: Known<Length> | undefined
  readonly cutWidth: LengthReckoning
  readonly needed: LengthReckoning
  readonly working: readonly Reckoning[]
}
export interface Lacking {
  readonly lacks: readonly Place[]
}

/** A value, and the reckonings that lead to it. */
interface Worked<K = Known<Length>> {
  readonly value: K
  readonly working: readonly Reckoning[]
}
const worked = (...working: readonly [...Reckoning[], LengthReckoning]): Worked => ({
  value: known(working.at(-1) as LengthReckoning),
  working,
})
const plain = (value: Known<Length>): Worked => ({ value, working: [] })

/** As it is made up; where that is not ordered yet, its share of the rod and its own return (UFGS-12491N, 2.2.1.1; read). */
function finishedWidth({ at, makeUp, coverage }: Cutting, panel: Panel): Worked | undefined {
  const made = makeUp?.panels.find((each) => each.panel === panel.id)
  if (made) return plain(known(made.finishedWidth))
  const place = panelAt(at, panel.id)
  const share = coverage?.shares.find((each) => each.panel === panel.id)
  const back = perhaps(member(place, ['return'], panel.return))
  if (!share || !back) return undefined
  return worked(finishedOfShare(`${place}#finished-width-wanted`, share.width, back))
}

/** The fullness that is asked for; undefined where the order does not say it. */
function fullness({ it, at, job }: Cutting, panel: Panel): Worked<Known<number>> | undefined {
  const ratio = perhaps(member(at, ['fullness'], it.fullness))
  if (ratio) return { value: ratio, working: [] }
  const percent = perhaps(member(at, ['fullnessPercent'], it.fullnessPercent))
  if (!percent) return undefined
  const found = fullnessOfPercent(`${panelAt(at, panel.id)}#fullness`, percent, choiceOf(job, 'percentMeans'))
  return { value: { value: found.value, from: found.name }, working: [found] }
}

/** The flat width: what fullness asks for; without one, that of the order. */
function flatWidth(cutting: Cutting, panel: Panel, finished: Known<Length>): Worked | undefined {
  const place = panelAt(cutting.at, panel.id)
  const full = fullness(cutting, panel)
  if (!full) {
    const ordered = perhaps(member(place, ['flatWidth'], panel.flatWidth))
    return ordered && plain(ordered)
  }
  const back = perhaps(member(place, ['return'], panel.return))
  const isOfCovered = choiceOf(cutting.job, 'fullnessOf') === 'covered width' && back !== undefined
  const steps = isOfCovered ? flatOfCovered(place, finished, back, full.value) : flatOfFinished(place, finished, full.value)
  return worked(...full.working, ...steps)
}

/** Where the order says what is cut beyond the finished sizes. Hem and heading are not asked for where the whole allowance is said. */
function members({ it, at }: Cutting, panel: Panel): Readonly<Record<string, Member<Length>>> {
  const place = panelAt(at, panel.id)
  const said = (name: keyof NonNullable<Treatment['cutting']>, otherwise: Member<Length>): Member<Length> =>
    it.cutting?.[name] === undefined ? otherwise : member(at, ['cutting', name], it.cutting[name])
  const hem = said('hem', member(place, ['hem'], panel.hem))
  const heading = said('heading', member(place, ['heading', 'height'], panel.heading?.height))
  return {
    finishedLength: member(place, ['finishedLength'], panel.finishedLength),
    sideHems: said('sideHems', member(place, ['sideHem'], panel.sideHem)),
    ...(it.cutting?.length === undefined ? { hem, heading } : { length: said('length', hem) }),
  }
}

/** What is turned over: as the order says it for cutting, or what follows from a height. */
const turnedOver = ({ at }: Cutting, size: Known<Length>, from: (size: Known<Length>) => LengthReckoning): Worked =>
  size.from.startsWith(`${below(at, 'cutting')}/`) ? plain(size) : worked(from(size))

type Filled = Readonly<Partial<Record<string, Known<Length>>>>
/** The length that must be cut for a panel: all that is allowed beyond its finished length at once, or part by part. */
function length(
  cutting: Cutting,
  place: Place,
  finished: Known<Length>,
  filled: Filled,
): readonly [...Reckoning[], LengthReckoning] {
  const name = `${place}#length-needed`
  if (filled.length) return [lengthNeeded(name, finished, plus('drapery/length-allowance', filled.length))]
  const parts = (['hem', 'heading'] as const).flatMap((part) => {
    const [size, what] = [filled[part], `drapery/${part}-allowance`]
    const over = (size: Known<Length>) => turned(`${place}#${part}-allowance`, what, size, layersOf(cutting.job, `${part}Turns`))
    return size ? [{ what, ...turnedOver(cutting, size, over) }] : []
  })
  const extra = plus('drapery/cut-extra', ruleOf(cutting.job, 'cutExtra'))
  const needed = lengthNeeded(name, finished, ...parts.map(({ what, value }) => plus(what, value)), extra)
  return [...parts.flatMap(({ working }) => working), needed]
}

/** How the fabric of a panel is cut, or the places that must be filled before that is known. */
export function panelCut(cutting: Cutting, panel: Panel): PanelCut | Lacking {
  const { it, at, job, coverage } = cutting
  const place = panelAt(at, panel.id)
  const wide = finishedWidth(cutting, panel)
  const flat = flatWidth(cutting, panel, wide?.value ?? { value: 0 as Length, from: place })
  const wanted = members(cutting, panel)
  const lacks = [
    ...Object.values(wanted).flatMap(({ value, from }) => (value === undefined ? [from] : [])),
    ...(wide ? [] : [coverage ? below(place, 'return') : below(at, 'rod', 'width')]),
    ...(flat ? [] : [below(at, 'fullness')]),
  ]
  if (!wide || !flat || lacks.length > 0) return { lacks }
  const { finishedLength, sideHems, ...filled } = wanted as unknown as Readonly<Record<string, Known<Length>>>
  const hems = turnedOver(cutting, sideHems as Known<Length>, (size) =>
    sideHemsOf(`${place}#side-hems`, size, layersOf(job, 'sideHemTurns')),
  )
  const cut = cutWidth(`${place}#face-cut-width`, flat.value, plus('drapery/side-hems', hems.value))
  const long = length(cutting, place, finishedLength as Known<Length>, filled)
  const ordered = flat.working.length > 0 ? perhaps(member(place, ['flatWidth'], panel.flatWidth)) : undefined
  return {
    panel: panel.id,
    outer: outerSide(it, panel.id),
    finishedWidth: wide.value,
    finishedLength: finishedLength as Known<Length>,
    flat: flat.value,
    ...(ordered ? { ordered } : {}),
    cutWidth: cut,
    needed: long.at(-1) as LengthReckoning,
    working: [...wide.working, ...flat.working, ...hems.working, cut, ...long],
  }
}
