import { below } from '@evenhem/drapery'
import { hangLine, hookMap, topOfRod } from '@evenhem/drapery/facts'
import { inch, minus, number, plus, type Reckoning, sum, type Term } from '@evenhem/length'
import { type Job, reckonings, rule, type Treatment } from '@evenhem/plugin'
import type { FabricCare } from './fabric.generated.ts'
import { fabrics, heading, type Known, steaming, wanted } from './facts.ts'
import { type FibreName, fibreCare, fibreOf } from './fibres.ts'
import { labelOf } from './label.ts'
import type { Finishing } from './part.generated.ts'
import { type Cloth, isUnknown, steamingOf } from './steaming.ts'
import type { FinishingWish } from './window.generated.ts'

const partOf = <T>(item: { readonly with?: unknown } | undefined): T | undefined =>
  (item?.with as { readonly finishing?: T } | undefined)?.finishing

const knownOf = (fabric: NonNullable<Job['fabrics']>[number]): Known => {
  const care = partOf<FabricCare>(fabric)
  const fibres = (fabric.fibres ?? []).map(({ fibre }) => fibre)
  return { id: fabric.id, name: fabric.name, fibres, ...(care ? { care } : {}) }
}
/** The fabrics of a job with their fibres and care, since a treatment may name three of them. */
export const fabricsRule = rule({ id: 'fabrics', on: 'job', needs: {}, gives: { fabrics } }).run(({ it }) =>
  it.fabrics && it.fabrics.length > 0 ? { fabrics: it.fabrics.map(knownOf) } : {},
)

/** Folds stay tied for two days where the order does not say it: inside the usual 24 to 72 h (common practice, no source). */
const usualTie = 48
/** What is wanted, where anybody wants it: the treatment before its window. */
export const wantedRule = rule({
  id: 'wanted',
  on: 'treatment',
  needs: { fabrics: { maybe: fabrics } },
  gives: { wanted },
}).run(({ it, fabric, window, mine, mineAt }, facts) => {
  const own = mine as Finishing | undefined
  const ofWindow = partOf<FinishingWish>(window)
  if (!own && !ofWindow && !partOf(fabric)) return {}
  const steam = own?.steam ?? ofWindow?.steam
  return {
    wanted: {
      ...(steam === undefined ? {} : { steam }),
      tie: own?.tieHours ?? ofWindow?.tieHours ?? usualTie,
      tieAt: below(mineAt, 'tieHours'),
      cloths: clothsOf(it, facts.fabrics ?? []),
    },
  }
})

/** The cloths of a treatment, its face first. A lining that the fabric only names in words has no fibres here, and does not count. */
function clothsOf(it: Treatment, all: readonly Known[]): readonly Cloth[] {
  return (['face', 'lining', 'interlining'] as const).flatMap((as) => {
    const cloth = all.find(({ id }) => id === it[as === 'face' ? 'fabric' : as])
    return cloth ? [{ ...cloth, as }] : []
  })
}

/** How it is steamed, with the coolest of the irons that label and fibres allow. */
export const steamingRule = rule({
  id: 'steaming',
  on: 'treatment',
  needs: { wanted: { maybe: wanted } },
  gives: { steaming, reckonings },
}).run(({ at, mine }, { wanted: wish }) => {
  if (!wish) return {}
  const how = steamingOf(wish.cloths, wish.steam, (mine as Finishing | undefined)?.found?.steamTried)
  return { steaming: how, reckonings: plateOf(`${at}#plate-limit`, wish.cloths) }
})

/**
 * The hottest plate that all cloths bear, in whole degrees Celsius: what the label shows, and without one what was published for each fibre. None where an
 * iron is crossed out, or where neither a label nor every fibre tells what a cloth bears.
 */
function plateOf(name: string, cloths: readonly Cloth[]): readonly Reckoning[] {
  const all = cloths.map(platesOf)
  if (all.length === 0 || all.some((plates) => plates.length === 0)) return []
  const terms = all.flat()
  const value = Math.min(...terms.map((term) => term.value))
  return [{ name, what: 'finishing/plate-limit', value, unit: 'count', how: 'least', terms, source: 'finishing/source-plates' }]
}
/** The plates that a cloth bears, its label before its fibres; none where that is not known, or an iron is crossed out. */
function platesOf(cloth: Cloth): readonly Term[] {
  const { plate } = labelOf(cloth.care)
  if (plate !== undefined) return [plus(`finishing/plate-${plate}`, number(plate))]
  if (cloth.care?.iron === 'crossed out' || isUnknown(cloth)) return []
  return cloth.fibres.map((each) => {
    const fibre = fibreOf(each) as FibreName
    return plus(`finishing/plate-${fibre}`, number(fibreCare[fibre].plate))
  })
}

/** Nearer than this to the top of the rod a heading may stand in front of it or hang under it: 1/2 in (common practice, no source). */
const unclear = inch / 2
/**
 * Where the heading hangs: under rings, and else by whether it reaches above the top of the rod or ends below it. It follows from shared facts alone, so
 * for any hardware.
 */
export const headingRule = rule({
  id: 'heading',
  on: 'treatment',
  needs: {
    wanted: { maybe: wanted },
    hangLine: { maybe: hangLine },
    topOfRod: { maybe: topOfRod },
    hookMap: { maybe: hookMap },
  },
  gives: { heading, reckonings },
}).run(({ at }, { wanted: wish, hangLine: hung, topOfRod: rod, hookMap: map }) => {
  if (!wish || !hung || !rod) return {}
  const top = plus('finishing/top-of-drapery', hung.top)
  const over = sum(`${at}#heading-over-rod`, 'finishing/heading-over-rod', top, minus('finishing/top-of-rod', rod))
  const isRinged = map !== undefined && map.drawnAs !== 'carriers'
  return { heading: { over, at: isRinged ? ('under' as const) : hangsAt(over.value) }, reckonings: [over] }
})
const hangsAt = (over: number): 'front' | 'under' | 'unclear' => (over >= 0 ? 'front' : over <= -unclear ? 'under' : 'unclear')
