import { below } from '@evenhem/drapery'
import { type Capture, type Place, rule, type Step, steps, type Treatment } from '@evenhem/plugin'
import { heading, steaming, type Wanted, wanted } from './facts.ts'
import type { Finishing } from './part.generated.ts'
import type { Steaming } from './steaming.ts'

const ladder = 'drapery/caution-ladder'
const spotCautions = ({ spots, pile }: Steaming): readonly string[] => [
  ...(spots ? ['finishing/caution-spots'] : []),
  ...(pile ? ['finishing/caution-pile'] : []),
]
/** Wherever a hot steamer is in somebody's hand. */
const hot = [
  'finishing/caution-burn',
  'finishing/caution-hot-head',
  'finishing/caution-wet-floor',
  'finishing/caution-cord',
  ladder,
]

/**
 * What is done with the folds. What changes how long the cloth hangs comes right after it was hung, before its hem is read; folds are broken before they
 * are dressed, and trained and tied when the hem is right.
 */
export const work = rule({
  id: 'work',
  on: 'treatment',
  needs: { wanted: { maybe: wanted }, steaming: { maybe: steaming }, heading: { maybe: heading } },
  gives: { steps },
}).run(({ it, at, mine, mineAt, fabric }, { wanted: wish, steaming: how, heading: head }) => {
  if (!wish) return {}
  const found = below(mineAt, 'found')
  const list: readonly Step[] = [
    letDown,
    ...(how ? steamingSteps(how, found) : []),
    breaking(head?.at),
    training(how),
    ...(wish.tie > 0 ? tying(wish, how, found, (mine as Finishing | undefined)?.found?.untieOn) : []),
    ...(fabric?.settling ? [readAgain(it, at)] : []),
    content(found),
  ]
  return { steps: list }
})

const letDown: Step = {
  id: 'let-down',
  stage: 'hang',
  after: ['drapery/hang'],
  code: 'finishing/let-down',
  cautions: [ladder],
}

/** A choice of the format as a word that sentences choose by. */
export const firstWord = (choice: string): string => choice.split(' ')[0] as string

/** What a sentence on steam needs to know. */
export const valuesOf = (how: Steaming) => ({
  cloth: how.cloth,
  level: how.level,
  from: how.from,
  off: how.off ? 'yes' : 'no',
  still: how.still ? 'yes' : 'no',
  fibre: { code: `finishing/fibre-${how.fibre}` },
  by: how.by,
  source: { code: how.source },
  relaxer: firstWord(how.relaxer),
})

/** In a hidden place first; or what is done instead. */
function steamingSteps(how: Steaming, found: Place): readonly Step[] {
  const tried: Capture = { at: below(found, 'steamTried'), as: 'choice', choices: ['no mark', 'mark'] }
  const values = valuesOf(how)
  const both = { stage: 'hang' as const, values }
  // Steam that left a mark is not tried again, but somebody may have to put right what was recorded.
  const again = how.by === 'marked' ? { captures: [tried] } : {}
  if (!how.steam)
    return [
      {
        ...both,
        id: 'no-steam',
        after: ['let-down'],
        code: 'finishing/no-steam',
        cautions: [...spotCautions(how), ladder],
        ...again,
      },
    ]
  const cautions = [...hot, ...spotCautions(how)]
  const tools = ['finishing/steamer', 'finishing/white-cloth']
  return [
    { ...both, id: 'try-steam', after: ['let-down'], code: 'finishing/try-steam', cautions, tools, captures: [tried] },
    { ...both, id: 'steam', after: ['try-steam'], code: 'finishing/steam', cautions, tools },
  ]
}

const breaking = (at: 'front' | 'under' | 'unclear' | undefined): Step => ({
  id: 'break-buckram',
  stage: 'dress',
  code: 'finishing/break-buckram',
  values: { at: at ?? 'unclear' },
  cautions: [ladder],
})

const training = (how: Steaming | undefined): Step => ({
  id: 'train',
  stage: 'finish',
  code: 'finishing/train',
  values: { pile: how?.pile ? 'yes' : 'no' },
  cautions: how?.pile ? ['finishing/caution-pile', ladder] : [ladder],
})

function tying({ tie }: Wanted, how: Steaming | undefined, found: Place, day: string | undefined): readonly Step[] {
  const values = { hours: { count: tie }, pile: how?.pile ? 'yes' : 'no', date: day ?? 'none' }
  const both = { stage: 'finish' as const, values }
  return [
    {
      ...both,
      id: 'tie',
      after: ['train'],
      code: 'finishing/tie',
      cautions: [ladder],
      tools: ['finishing/ties'],
      captures: [{ at: below(found, 'foldsTied'), as: 'tick' }],
    },
    {
      ...both,
      id: 'untie',
      after: ['tie'],
      code: 'finishing/untie',
      captures: [{ at: below(found, 'untieOn'), as: 'note' }],
    },
  ]
}

/** Cloth that settles is read again: drapery says whether its settling is too much, and proposes the day. */
const readAgain = (it: Treatment, at: Place): Step => ({
  id: 'read-again',
  stage: 'finish',
  after: ['untie', 'train'],
  code: 'finishing/read-again',
  values: { date: it.found?.lookAgain ?? 'none' },
  captures: [{ at: below(at, 'found', 'lookAgain'), as: 'note' }],
})

const content = (found: Place): Step => ({
  id: 'content',
  stage: 'hand-over',
  after: ['drapery/hand-over'],
  code: 'finishing/stand-back',
  captures: [{ at: below(found, 'content'), as: 'choice', choices: ['both', 'installer only', 'customer only', 'neither'] }],
})
