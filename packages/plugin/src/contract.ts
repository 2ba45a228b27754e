import type { Layer } from '@evenhem/drawing'
import type { Fabric, Hardware, Job, JobHead, Place, Room, Treatment, Window } from '@evenhem/job'
import type { Length, Reckoning } from '@evenhem/length'

declare const value: unique symbol
/** A JSON Schema, draft 2020-12, as plain data. */
export type JsonSchema = Readonly<Record<string, unknown>>

/** What a rule can be about. A rule reads its own level and those above; from below it may only gather. */
export interface Items {
  readonly job: Job
  readonly room: Room
  readonly window: Window
  readonly treatment: Treatment
}
export type Level = keyof Items

/** A named, typed value that rules give and read. Compared by `id`, never by identity. */
export interface Fact<T = unknown, L extends Level = Level> {
  readonly id: `${string}/${string}@${number}`
  readonly of: L
  /** false: a second giver for the same subject is refused. true: every giver adds to a list, and readers get the list. */
  readonly many: boolean
  /** Its owner's schema; in the kit every value given is checked against it. */
  readonly schema: JsonSchema
  readonly [value]?: T
}
/** `maybe`: undefined when nobody gives it, or its giver waits. `each`: of every subject below this one, with its place. */
export type Need = Fact | { readonly maybe: Fact } | { readonly each: Fact }

/** A sort of hardware. Rules `on` it run for every treatment that hangs on an entry of this kind. `part` is this plugin's own part of a treatment, under `with`. */
export interface Kind<H = unknown, P = unknown> {
  readonly kind: string
  /** Of an entry under `hardware`: begins with the `$ref` to the format's hardware, is closed, describes every member. */
  readonly schema: JsonSchema
  readonly part?: JsonSchema
  readonly [value]?: [H, P]
}
/** What a plugin adds under `with` at one level, or at a fabric. Rules `on` it run for every item of that level that has it; on one to fabrics there are none. */
export interface Addition<L extends Level | 'fabric' = Level | 'fabric', P = unknown> {
  readonly to: L
  readonly schema: JsonSchema
  readonly [value]?: P
}

export interface Subject<T, H, P> {
  /** As found: the order, with what was measured laid over it. */
  readonly it: T
  /** As the workroom wrote it. */
  readonly ordered: T
  /** This plugin's own part, `it.with[plugin]`; other plugins' parts are not shown. */
  readonly mine: P | undefined
  /** Of the treatment; undefined above treatments. */
  readonly hardware: H
  readonly fabric: Fabric | undefined
  /** Undefined above them. */
  readonly window: Window
  readonly room: Room
  readonly job: JobHead
  /** The absolute place of `it`; of its hardware; of its own part. */
  readonly at: Place
  readonly hardwareAt: Place
  readonly mineAt: Place
}
/** The answer of a rule that must wait for a person: these absolute places are not filled yet. */
export interface Ask {
  readonly ask: readonly Place[]
}

export type On = Level | Kind | Addition<Level>
type It<O> = O extends Level ? Items[O] : O extends Addition<infer L extends Level> ? Items[L] : Treatment
type HardwareOf<O> = O extends Kind<infer H> ? H : Hardware | undefined
type PartOf<O> = O extends Kind<unknown, infer P> ? P : O extends Addition<Level, infer P> ? P : never
type ValueOf<F> = F extends Fact<infer T> ? T : never
/** What a rule gets for a need. A fact of `many` is read as the list of all that was given. */
export type Read<N> = N extends { readonly maybe: infer F }
  ? One<F> | undefined
  : N extends { readonly each: infer F }
    ? readonly { readonly at: Place; readonly value: One<F> }[]
    : One<N>
type One<F> = F extends { readonly many: true } ? readonly ValueOf<F>[] : ValueOf<F>
/** What a rule gives for a fact: one value, or with `many` a list to add. */
type Given<F> = F extends { readonly many: true } ? readonly ValueOf<F>[] : ValueOf<F>

type Needs = Readonly<Record<string, Need>>
type Gives = Readonly<Record<string, Fact>>
interface About<O, N, G> {
  readonly id: string
  readonly on: O
  readonly needs: N
  readonly gives: G
  /** Codes of the checks it can give: each is shown as `unknown` while the rule waits or asks, with the words of `code.unknown` where there are some. */
  readonly codes?: readonly string[]
}
export interface Rule extends About<On, Needs, Gives> {
  // The host's one boundary: it calls rules of every type.
  // biome-ignore lint/suspicious/noExplicitAny: what a rule gets follows from its own declaration, which a list of rules cannot hold
  readonly run: (subject: any, facts: any) => object
}
export type Answer<G> = { readonly [K in keyof G]?: Given<G[K]> } | Ask
type Run<O, N, G> = (
  subject: Subject<It<O>, HardwareOf<O>, PartOf<O>>,
  facts: { readonly [K in keyof N]: Read<N[K]> },
) => Answer<G>
/** Declares a rule; `.run(…)` closes it. What it needs and gives is all that it can reach. */
export const rule = <const O extends On, const N extends Needs, const G extends Gives>(about: About<O, N, G>) => ({
  run: (run: Run<O, N, G>): Rule => ({ ...about, run }),
})

export interface Plugin {
  readonly contract: 1
  /** Small letters, digits and hyphens. Codes and facts of its own begin with it. */
  readonly id: string
  /** The number under `uses` in a job file: 1 at first, one more whenever a member changes its meaning, with an upgrade to each. */
  readonly format: number
  readonly kinds: readonly Kind[]
  readonly additions: readonly Addition[]
  readonly upgrades: readonly Upgrade[]
  readonly rules: readonly Rule[]
  /** By language: `en` and `es`, each with the same codes. */
  readonly words: Readonly<Record<string, Words>>
}
/** Makes an item of the format before into one of format `to`. Runs on the value read, never on the text. */
export interface Upgrade {
  readonly to: number
  readonly because: string
  readonly up: (item: object) => object
}
/** Sentences by code, in ICU message form. A code is `plugin/name`. */
export type Words = Readonly<Record<string, { readonly says: string; readonly help?: string }>>

/** A number with its unit, wherever a number leaves a rule for a person. `code` is a word of the plugin's, translated. */
export type Quantity =
  | { readonly length: Length }
  | { readonly count: number }
  | { readonly mass: number }
  | { readonly force: number }
  | { readonly angle: number }
  | { readonly ratio: number }
  | { readonly code: string }
export type Values = Readonly<Record<string, Quantity | string>>

export type Verdict = 'pass' | 'warn' | 'fail' | 'unknown'
export const stages = ['unpack', 'check-in', 'mark', 'drill', 'mount', 'hang', 'true-up', 'dress', 'finish', 'hand-over'] as const
export type Stage = (typeof stages)[number]

// What only the host reads; any rule may add to them, none may read them.
export interface Check {
  readonly code: string
  /** The code of the sentence, when it is not `code` itself: one check may have something different to say when it fails. */
  readonly says?: string
  readonly verdict: Verdict
  readonly at: Place
  /**
   * Tells it from others of its code on the same item, and says what it was judged by: `left.finishedLength 2247.9 mm for 2260.6 mm`. A reason given for
   * it holds while this stays the same. Left out: it is the only one of its code.
   */
  readonly about?: string
  readonly values: Values
  /** Steps from this stage on are closed while the check fails; with `unknown` while nobody has recorded what it must know. */
  readonly stops?: Stage
  /** Somebody could be hurt: no reason lifts it, and what it stops stays closed until it is well. */
  readonly isFirm?: true
  /** One value that would do it. */
  readonly put?: readonly { readonly at: Place; readonly value: Quantity }[]
  /** What somebody on site may decide about it, the best first. */
  readonly ways?: readonly WayOut[]
}
/** A decision about a finding: its sentence, and what stands where once it is taken. */
export interface WayOut {
  readonly code: string
  readonly values: Values
  readonly put: readonly { readonly at: Place; readonly value: Quantity | string | boolean }[]
}
export interface Step {
  readonly id: string
  readonly stage: Stage
  /** Ids of steps of this stage that come first. */
  readonly after?: readonly string[]
  /** Code of the title; `code` + `.why` says why, `code` + `.done` names what will be true. */
  readonly code: string
  readonly values?: Values
  /** The numbers of the step, shown large. `of` opens the working. */
  readonly numbers?: readonly { readonly what: string; readonly value: Length; readonly of: string }[]
  readonly cautions?: readonly string[]
  readonly tools?: readonly string[]
  readonly captures?: readonly Capture[]
}
export interface Capture {
  readonly at: Place
  readonly as: 'length' | 'count' | 'tick' | 'choice' | 'photo' | 'note'
  readonly expected?: Quantity
  readonly tolerance?: Quantity
  readonly choices?: readonly string[]
}
/** `count` things for the pull list. `what` is a code. */
export interface Part {
  readonly what: string
  readonly count: number
  readonly length?: Length
  readonly hardware?: Place
  readonly of?: string
  /** How many more the order packs as spares; left out where it says nothing about them. */
  readonly spares?: number
}
/** A line of the completion report about a window: a sentence under `lead`, `care` and `safe-use`, elsewhere a fact that may begin with its name and a colon. */
export interface Entry {
  readonly section: 'lead' | 'what-hangs-here' | 'set-on-the-day' | 'care' | 'safe-use'
  readonly code: string
  readonly values: Values
}
export type { Job, Layer, Place, Reckoning, Treatment, Window }
