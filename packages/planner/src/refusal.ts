/** One reason why plugins can't work together. */
export interface Misfit {
  readonly what:
    | 'contract'
    | 'plugin-twice'
    | 'rule-twice'
    | 'kind-twice'
    | 'addition'
    | 'name'
    | 'declaration'
    | 'level'
    | 'collected'
    | 'two-givers'
    | 'cycle'
    | 'gathered'
  readonly plugin: string
  readonly rule?: string
  readonly message: string
}

/** Thrown at start, before any window is planned. `faults` are all of them, each naming plugin and rule. */
export class Refusal extends Error {
  readonly faults: readonly Misfit[]
  constructor(faults: readonly Misfit[]) {
    super(`These plugins can’t work together:\n${faults.map((fault) => `- ${fault.message}`).join('\n')}`)
    this.name = 'Refusal'
    this.faults = faults
  }
}
