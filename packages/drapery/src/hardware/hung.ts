import type { Place, Treatment } from '@evenhem/job'
import { given, type Known, type Length, type LengthReckoning, plus, type Reckoning } from '@evenhem/length'
import { alongRod, alongWalls, stackOfShare } from '../arithmetic/index.ts'
import type { Coverage, HeldAtWall, MakeUp, PanelMakeUp, Share } from '../facts/index.ts'
import { member, panelAt, perhaps } from '../given.ts'

/** A panel as it hangs: how it is made, what it covers, and whether its outer edge is held at the wall and needs no ring or carrier. */
export interface HungPanel extends PanelMakeUp {
  readonly share: Share
  readonly place: Place
  readonly atWall: boolean
  readonly isStationary: boolean
}
/** The panels of a treatment that have a share of the rod. */
export const hungPanels = (
  it: Treatment,
  at: Place,
  facts: {
    readonly coverage: Coverage
    readonly makeUp: MakeUp
    readonly heldAtWall?: readonly HeldAtWall[] | undefined
  },
): readonly HungPanel[] =>
  facts.makeUp.panels.flatMap((panel) => {
    const share = facts.coverage.shares.find((one) => one.panel === panel.panel)
    const atWall = (facts.heldAtWall ?? []).some((held) => held.side === panel.outer && held.takesHook)
    return share ? [{ ...panel, share, place: panelAt(at, panel.panel), atWall, isStationary: it.draw === 'stationary' }] : []
  })

type StackRules = readonly { readonly panel: string; readonly width: LengthReckoning }[]
/** How wide a panel stacks, as the last of these: measured, or else estimated by the workroom's rule and at least its bearers (rings, carriers) side by side. */
export function stackOf(
  it: Treatment,
  at: Place,
  { panel, place, share }: HungPanel,
  bearers: number,
  bearerWidth: Known<Length>,
  rules: StackRules,
): readonly LengthReckoning[] {
  const measured = perhaps(member(at, ['found', 'stacks', panel], it.found?.stacks?.[panel]))
  return measured
    ? [given(`${place}#stack`, 'drapery/stack-measured', plus('drapery/stack-measured', measured))]
    : stackOfShare(place, share.width, bearers, bearerWidth, rules.find((one) => one.panel === panel)?.width)
}

/** What the stacks of panels came to, as a hook map tells them. */
export const stacksOf = (panels: readonly HungPanel[], stacks: readonly (readonly LengthReckoning[])[]) =>
  panels.flatMap(({ panel }, i) => {
    const width = stacks[i]?.at(-1)
    return width ? [{ panel, width }] : []
  })

/** What a stack came to. */
export const stackWidth = (stack: readonly Reckoning[]): Length => (stack.at(-1)?.value ?? 0) as Length

/** Places along the walls as lengths along the rod, counted from the left end of what is covered, and back; the same but for that end where no corner is. */
export function unbent({ left, corners = [] }: Coverage): {
  readonly toRod: (x: Length) => Length
  readonly toWalls: (along: Length) => Length
} {
  return {
    toRod: (x) => alongRod(left.value, corners, x) as Length,
    toWalls: (along) => Math.round(alongWalls(left.value, corners, along)) as Length,
  }
}
