import { below, check } from '@evenhem/drapery'
import { daysAfter } from '@evenhem/drapery/arithmetic'
import { type Check, checks, type Place, rule, type Treatment } from '@evenhem/plugin'
import { steaming, type Wanted, wanted } from './facts.ts'
import { fibreOf } from './fibres.ts'
import { contradicts, labelOf } from './label.ts'
import type { Finishing } from './part.generated.ts'
import { type Cloth, isUnknown, isVelvet, type Steaming, spotsOf } from './steaming.ts'
import { firstWord, valuesOf } from './steps.ts'

const fabricAt = (cloth: Cloth, ...members: readonly string[]): Place => below('/fabrics', cloth.id, ...members)

/** What is known of the cloth against the steam that is wanted. */
export const careChecks = rule({
  id: 'care',
  on: 'treatment',
  needs: { wanted: { maybe: wanted }, steaming: { maybe: steaming } },
  gives: { checks },
  codes: ['finishing/fabric-known', 'finishing/care-label', 'finishing/pile', 'finishing/water-spots'],
}).run(({ at, mine, mineAt }, { wanted: wish, steaming: how }) => {
  if (!wish || !how) return {}
  if (how.by === 'unnamed')
    return { checks: [check('finishing/fabric-known', 'unknown', below(at, 'fabric'), { how: 'none', cloth: 'none' })] }
  const tried = (mine as Finishing | undefined)?.found?.steamTried
  return {
    checks: [
      ...(isSettled(wish) ? [] : [fabricKnown(wish, how)]),
      ...careLabel(wish, how),
      ...pile(wish, how),
      ...waterSpots(wish, how, tried, below(mineAt, 'found', 'steamTried')),
    ],
  }
})

/** Nobody wants steam, or a label forbids it whatever the fibres. */
const isSettled = ({ steam, cloths }: Wanted): boolean =>
  steam === false || cloths.some(({ care }) => labelOf(care).steam === 'none')
/** Steaming has to know every fibre, or a label that decides without them. */
function fabricKnown({ cloths }: Wanted, how: Steaming): Check {
  const code = 'finishing/fabric-known'
  const strange = cloths.find(isUnknown)
  if (!strange) return check(code, 'pass', fabricAt(cloths[0] as Cloth), { cloth: how.cloth, fibre: valuesOf(how).fibre })
  const place = fabricAt(strange, 'fibres')
  const values = { cloth: strange.name, label: labelOf(strange.care).steam === 'unsaid' ? 'no' : 'yes' }
  const name = strange.fibres.find((each) => fibreOf(each) === undefined)
  return name === undefined
    ? check(code, 'unknown', place, { how: 'unsaid', cloth: strange.name })
    : check(code, 'warn', place, { ...values, name })
}

/** The label of each cloth against the steam that is ordered: the one that says most about it. */
function careLabel({ cloths, steam }: Wanted, how: Steaming): readonly Check[] {
  const code = 'finishing/care-label'
  const said = (cloth: Cloth) => labelOf(cloth.care)
  const values = (cloth: Cloth) => ({ cloth: cloth.name, by: said(cloth).by, source: { code: said(cloth).source } })
  const twofold = cloths.find(({ care }) => contradicts(care))
  if (twofold) return [{ ...check(code, 'warn', fabricAt(twofold, 'with', 'finishing'), values(twofold)) }]
  const forbids = cloths.find((cloth) => said(cloth).steam === 'none')
  if (forbids) {
    const verdict = steam === true ? 'fail' : 'pass'
    const place = fabricAt(forbids, 'with', 'finishing')
    return [{ ...check(code, verdict, place, values(forbids)), ...(verdict === 'pass' ? { says: `${code}.not` } : {}) }]
  }
  if (steam === false) return []
  const bare = cloths.find((cloth) => said(cloth).steam === 'unsaid')
  if (bare) return [check(code, 'unknown', fabricAt(bare), { cloth: bare.name, steam: how.steam ? 'yes' : 'no' })]
  const [face] = cloths
  return face ? [check(code, 'pass', fabricAt(face, 'with', 'finishing'), values(face))] : []
}

/** Velvet is steamed from its back or not at all; cloth that is called velvet should say that it has a pile. */
function pile({ cloths }: Wanted, how: Steaming): readonly Check[] {
  const velvet = cloths.find(isVelvet)
  if (!velvet) return []
  const reason = velvet.care?.pile === undefined ? 'unsaid' : how.by === 'side' ? 'side' : 'good'
  const values = { cloth: velvet.name, how: reason, steam: how.steam ? 'yes' : 'no' }
  return [check('finishing/pile', reason === 'good' ? 'pass' : 'warn', fabricAt(velvet, 'with', 'finishing', 'pile'), values)]
}

/** What water may spot is tried in a hidden place; what steam marked there is not steamed. */
function waterSpots({ cloths }: Wanted, how: Steaming, tried: 'mark' | 'no mark' | undefined, place: Place): readonly Check[] {
  const code = 'finishing/water-spots'
  const spotting = cloths.find(spotsOf)
  if (tried === 'mark') return [check(code, 'warn', place, { cloth: spotting?.name ?? how.cloth })]
  if (!spotting || !how.steam) return []
  return [check(code, tried === undefined ? 'unknown' : 'pass', place, { cloth: spotting.name })]
}

/** What has to be recorded of the finishing: how long folds stay tied, when they are untied, who is content. */
export const recordChecks = rule({
  id: 'records',
  on: 'treatment',
  needs: { wanted: { maybe: wanted } },
  gives: { checks },
  codes: ['finishing/tie-hours', 'finishing/untie-day', 'finishing/content'],
}).run(({ it, mine, mineAt }, { wanted: wish }) => {
  if (!wish) return {}
  const found = (mine as Finishing | undefined)?.found
  return {
    checks: [
      ...(wish.tie > 0 ? [tieHours(wish), ...untieDay(wish, it, found, below(mineAt, 'found', 'untieOn'))] : []),
      ...contents(it, found, below(mineAt, 'found', 'content')),
    ],
  }
})

/** Usual are 24 to 72 h (common practice, no source). */
const [leastHours, mostHours] = [24, 72]
function tieHours({ tie, tieAt }: Wanted): Check {
  const isUsual = tie >= leastHours && tie <= mostHours
  const values = { hours: { count: tie }, least: { count: leastHours }, most: { count: mostHours } }
  return check('finishing/tie-hours', isUsual ? 'pass' : 'warn', tieAt, values)
}

type Found = Finishing['found']
/** Folds that are tied need a day on which the ties come off: so many whole days after they were hung as the hours ask for. */
function untieDay({ tie }: Wanted, it: Treatment, found: Found, place: Place): readonly Check[] {
  const code = 'finishing/untie-day'
  if (found?.untieOn !== undefined) return [check(code, 'pass', place, { date: found.untieOn })]
  const hung = it.found?.hungOn
  if (hung === undefined && found?.foldsTied !== true) return []
  const date = hung === undefined ? 'none' : daysAfter(hung, Math.ceil(tie / 24))
  const values = { date, hours: { count: tie } }
  const ways = hung === undefined ? {} : { ways: [{ code: 'finishing/way-untie', values, put: [{ at: place, value: date }] }] }
  return [{ ...check(code, 'warn', place, values), ...ways }]
}

/** Said once the draperies hang. */
function contents(it: Treatment, found: Found, place: Place): readonly Check[] {
  const who = found?.content
  if (who === undefined && it.found?.hungOn === undefined) return []
  const verdict = who === undefined ? 'unknown' : who === 'both' ? 'pass' : 'warn'
  return [check('finishing/content', verdict, place, { who: firstWord(who ?? 'unsaid') })]
}
