/** A part of a parsed ICU message, as far as its arguments are concerned. */
interface Element {
  readonly type: number
  readonly value?: unknown
  readonly options?: Readonly<Record<string, { readonly value: readonly Element[] }>>
  readonly children?: readonly Element[]
}
// Kinds of elements in a parsed message.
const [argument, numeric, date, time, select, plural] = [1, 2, 3, 4, 5, 6] as const

/** How a message uses an argument: as text, as a number that it formats or counts by, or to choose among texts. */
export type ArgumentUse = 'text' | 'number' | 'choice'

/** The arguments of a parsed ICU message, each with the ways it is used, those in plural and select forms included. */
export function argumentsOf(message: readonly unknown[]): ReadonlyMap<string, ReadonlySet<ArgumentUse>> {
  const found = new Map<string, Set<ArgumentUse>>()
  const visit = ({ type, value, options, children }: Element): void => {
    const use = useOf(type)
    if (use) found.set(String(value), (found.get(String(value)) ?? new Set()).add(use))
    for (const option of Object.values(options ?? {})) option.value.forEach(visit)
    children?.forEach(visit)
  }
  ;(message as readonly Element[]).forEach(visit)
  return found
}

function useOf(type: number): ArgumentUse | undefined {
  if (type === argument) return 'text'
  if (type === select) return 'choice'
  return type === numeric || type === plural || type === date || type === time ? 'number' : undefined
}
