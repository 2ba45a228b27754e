import { type Place, tokens } from '@evenhem/job'
import { type Length, readLength } from '@evenhem/length'
import { forms } from '@evenhem/plugins/forms'

/** What a place takes. `least` and `most`: what is plausible there; more is a slip of the pen or the wrong unit. */
export type Form =
  | { readonly is: 'length'; readonly least?: Length; readonly most?: Length }
  | { readonly is: 'count' | 'number'; readonly least?: number; readonly most?: number }
  | { readonly is: 'choice'; readonly choices: readonly string[] }
  | { readonly is: 'tick' | 'date' | 'text' }

interface Branch {
  readonly on: Map<string, Branch>
  form?: Form
}
const branch = (): Branch => ({ on: new Map() })

const lengthOf = (text: unknown): Length | undefined => {
  const read = typeof text === 'string' && text !== '' ? readLength(text, 'in') : undefined
  return read?.ok ? read.value : undefined
}
const ends = <T>(least: T | undefined, most: T | undefined) => ({
  ...(least === undefined ? {} : { least }),
  ...(most === undefined ? {} : { most }),
})
const number = (value: unknown): number | undefined => (typeof value === 'number' ? value : undefined)

function formOf(takes: string, more: readonly unknown[]): Form {
  switch (takes) {
    case 'length':
      return { is: 'length', ...ends(lengthOf(more[0]), lengthOf(more[1])) }
    case 'count':
    case 'number':
      return { is: takes, ...ends(number(more[0]), number(more[1])) }
    case 'choice':
      return { is: 'choice', choices: more[0] as readonly string[] }
    default:
      return { is: takes as 'tick' | 'date' | 'text' }
  }
}

const root = branch()
for (const [place, takes, ...more] of forms) {
  let at = root
  for (const token of tokens(place)) {
    const next = at.on.get(token) ?? branch()
    at.on.set(token, next)
    at = next
  }
  at.form = formOf(takes, more)
}

/** What stands at a place of a job, by its format; undefined where no single value stands. */
export function formAt(place: Place): Form | undefined {
  let at: readonly Branch[] = [root]
  for (const token of tokens(place))
    at = at.flatMap(({ on }) => [on.get(token), on.get('*')].filter((next) => next !== undefined))
  return at.find(({ form }) => form)?.form
}
