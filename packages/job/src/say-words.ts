/** A sentence, and what else helps. */
export interface Said {
  readonly says: string
  readonly help?: string
}
/** What a sentence is filled with. */
export type Fillings = Readonly<Record<string, string | number>>
/** Says a code. Values from a job are put in as they are. */
export type Say = (code: string, values: Fillings) => Said

const fill = (sentence: string, values: Fillings): string =>
  sentence.replaceAll(/\{(\w+)\}/g, (gap, name: string) => (Object.hasOwn(values, name) ? String(values[name]) : gap))

/** Says codes by their words. The sentences have no plurals, so filling their gaps is enough. A code without words says itself. */
export const sayIn =
  (words: Readonly<Record<string, Said>>): Say =>
  (code, values) => {
    const said = Object.hasOwn(words, code) ? words[code] : undefined
    return { says: fill(said?.says ?? code, values), ...(said?.help && { help: fill(said.help, values) }) }
  }
