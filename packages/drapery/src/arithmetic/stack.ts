import { type Known, type Length, type LengthReckoning, minus, most, number, plus, sum, times } from '@evenhem/length'

/** What a stack is worked out from. */
export interface StackBase {
  /** What the panel covers of the rod. */
  readonly share: LengthReckoning
  /** The window: its casing, outside. */
  readonly window: Known<Length>
  /** The glass that is seen; undefined: not measured. */
  readonly glass?: Known<Length> | undefined
  readonly isPair: boolean
  readonly lining: 'none' | 'lined' | 'blackout' | 'interlined'
}
/** A published rule for how wide a panel stacks: which part of what, for the whole window; a pair stacks half of it on each side. */
interface StackRule {
  readonly id: string
  /** How a workroom chooses it, in `job.workroom.rules.stackBy`. */
  readonly says: string
  readonly of: 'rod' | 'window' | 'glass'
  readonly part: (base: StackBase) => number
}

/** By lining: unlined 10 %, lined 15 %, blackout-lined 20 %, interlined 25 % of the window. */
const byLining = { none: 0.1, lined: 0.15, blackout: 0.2, interlined: 0.25 } as const

/**
 * Published rules, side by side; they reach from a tenth to a half of the window, so each is an estimate:
 * of the rod a third (Drapery Education, Drapery Stacking Space Requirements, trade article; read; case stack-03);
 * of the window a third (How to Calculate Stack Back Curtains, general how-to article, 2019; read; case stack-02), a fifth (How to work out curtain stack
 * back, general how-to article; read; case stack-04), a half (How to Calculate Drapery Stack, general how-to article; read; case stack-07), a tenth to a
 * quarter by lining (The way to figure out the Stack Back of Curtains, general how-to article; read; case stack-08);
 * of the glass a third (How to Measure for Drapery Hardware, general how-to article; read; case stack-06), three tenths (The Encyclopaedia of Curtains, Merrick
 * and Day, 1996, p. 114; read; case stack-09).
 */
export const stackRules: readonly StackRule[] = [
  { id: 'rod-third', says: 'a third of the rod', of: 'rod', part: () => 1 / 3 },
  { id: 'window-third', says: 'a third of the window', of: 'window', part: () => 1 / 3 },
  { id: 'window-fifth', says: 'a fifth of the window', of: 'window', part: () => 0.2 },
  { id: 'window-half', says: 'half of the window', of: 'window', part: () => 0.5 },
  { id: 'window-lining', says: 'of the window by lining', of: 'window', part: ({ lining }) => byLining[lining] },
  { id: 'glass-third', says: 'a third of the glass', of: 'glass', part: () => 1 / 3 },
  { id: 'glass-three-tenths', says: 'three tenths of the glass', of: 'glass', part: () => 0.3 },
]

const whats = { rod: 'drapery/share', window: 'drapery/casing-width', glass: 'drapery/glass-width' } as const

/** How wide a panel stacks by a rule, under a name; undefined: what the rule is of is not known. */
export function stackBy(name: string, base: StackBase, { id, of, part }: StackRule): LengthReckoning | undefined {
  const known = of === 'rod' ? base.share : of === 'window' ? base.window : base.glass
  if (!known) return undefined
  // A share of the rod is one panel's own; of window and glass a pair has half on each side.
  const whole = part(base) * (of !== 'rod' && base.isPair ? 0.5 : 1)
  return times(
    name,
    `drapery/stack-by-${id}`,
    plus(whats[of], known),
    plus('drapery/stack-part', number(Number(whole.toPrecision(12)))),
  )
}

/** How wide a panel stacks by each published rule that can be worked out, by its name after `#stack-by-`. */
export const stacksBy = (place: string, base: StackBase): readonly LengthReckoning[] =>
  stackRules.flatMap((each) => stackBy(`${place}#stack-by-${each.id}`, base, each) ?? [])

const none = number(0) as Known<Length>

/** How much of the glass a panel covers that stacks from its outer end inward by `stack`. Last, after how far it reaches over the glass's edge. */
export function glassCovered(
  place: string,
  outer: 'left' | 'right',
  end: LengthReckoning,
  stack: LengthReckoning,
  glass: { readonly left: Known<Length>; readonly right: Known<Length> },
): readonly [LengthReckoning, LengthReckoning] {
  const over =
    outer === 'left'
      ? sum(
          `${place}#over-glass`,
          'drapery/over-glass',
          plus('drapery/outer-end', end),
          plus('drapery/stack', stack),
          minus('drapery/glass-edge', glass.left),
        )
      : sum(
          `${place}#over-glass`,
          'drapery/over-glass',
          plus('drapery/glass-edge', glass.right),
          minus('drapery/outer-end', end),
          plus('drapery/stack', stack),
        )
  return [
    over,
    most(`${place}#glass-covered`, 'drapery/glass-covered', plus('drapery/nothing', none), plus('drapery/over-glass', over)),
  ]
}
