import { type Job, type Place, tokens, valueAt } from '@evenhem/job'

const words = (token: string) => token.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()

/** A place in words, by the names that the job gives: “Garden room, Window 1, over, left panel, finished length”. */
export function placeInWords(job: Job, place: Place): string {
  const steps = tokens(place)
  const named = steps.map((token, n) => {
    const item = valueAt(job, `/${steps.slice(0, n + 1).join('/')}`)
    const holder = n === 0 ? job : valueAt(job, `/${steps.slice(0, n).join('/')}`)
    const isItem = Array.isArray(holder)
    const name = (item as { name?: string } | null | undefined)?.name
    const after = Array.isArray(item) || token === 'with' ? '' : words(token)
    return isItem ? (name ?? `${words(steps[n - 1] ?? '').replace(/s$/, '')} ${words(token)}`) : after
  })
  return named.filter(Boolean).join(', ')
}
