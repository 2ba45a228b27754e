import type { Fabric, JobHead, Place } from '@evenhem/job'
import { type Known, type Length, type LengthReckoning, number, type Reckoning, readQuantity } from '@evenhem/length'
import {
  clothNeeded,
  clothWeight,
  cutAndRepeat,
  cutAsNeeded,
  cutOfRepeats,
  cutsFor,
  cutsTogether,
  halfDropExtra,
  lessThanFace,
  repeatsIn,
  restOfCut,
  roundedWidths,
  type Size,
  usableWidth,
  widthsExact,
  widthsTogether,
} from '../arithmetic/index.ts'
import { ruleOf } from '../defaults.ts'
import type { ClothTakeoff, ClothUse } from '../facts/index.ts'
import { member, panelAt, perhaps } from '../given.ts'
import { choiceOf } from './takeoff-choices.ts'
import type { PanelCut } from './takeoff-panels.ts'

/** What a cloth is cut to, before its own width and repeat are looked at. */
export interface ClothOrder {
  readonly as: ClothUse
  readonly fabric: Fabric
  readonly panels: readonly { readonly panel: string; readonly cutWidth: LengthReckoning }[]
  readonly needed: LengthReckoning
  readonly finished: Size
}
interface Counted {
  readonly cloth: ClothTakeoff
  readonly working: readonly Reckoning[]
}
const fabricAt = ({ id }: Fabric): Place => `/fabrics/${id}`

/** Lining and interlining follow from the fabric's sizes, shorter and narrower by the workroom's rules. */
export function lined(
  as: 'lining' | 'interlining',
  fabric: Fabric,
  at: Place,
  job: JobHead,
  face: ClothOrder,
): { readonly order: ClothOrder; readonly working: readonly Reckoning[] } {
  const [shorter, narrower] = [ruleOf(job, `${as}Shorter`), ruleOf(job, `${as}Narrower`)]
  const needed = lessThanFace(`${at}#${as}-length-needed`, 'drapery/length-needed', face.needed, shorter)
  const panels = face.panels.map(({ panel, cutWidth }) => ({
    panel,
    cutWidth: lessThanFace(`${panelAt(at, panel)}#${as}-cut-width`, 'drapery/cut-width', cutWidth, narrower),
  }))
  return { order: { ...face, as, fabric, panels, needed }, working: [needed, ...panels.map(({ cutWidth }) => cutWidth)] }
}

/** The widths of every panel and of all of them, each rounded as the workroom does it. */
function widths(at: Place, job: JobHead, { as, fabric, panels }: ClothOrder) {
  const width = { value: fabric.width as Length, from: `${fabricAt(fabric)}/width` }
  const usable = usableWidth(`${at}#${as}-usable-width`, width, ruleOf(job, 'seam'))
  const rule = choiceOf(job, 'widthsRounded')
  const exact = panels.map(({ panel, cutWidth }) => widthsExact(`${panelAt(at, panel)}#${as}-widths-exact`, cutWidth, usable))
  if (choiceOf(job, 'widthsOf') === 'all panels') {
    const together = widthsTogether(`${at}#${as}-widths-exact`, 'drapery/widths-exact', exact)
    const all = roundedWidths(`${at}#${as}-widths`, together, rule)
    return { each: exact, all, working: [usable, ...exact, together, all] }
  }
  const each = exact.map((one, n) => roundedWidths(`${panelAt(at, panels[n]?.panel ?? '')}#${as}-widths`, one, rule))
  const all = widthsTogether(`${at}#${as}-widths`, 'drapery/widths', each)
  return { each, all, working: [usable, ...exact, ...each, all] }
}

/** The repeat of the cloth that came, else the one that was ordered. */
const repeatOf = (fabric: Fabric): Known<Length> | undefined =>
  perhaps(member(fabricAt(fabric), ['repeat', 'received'], fabric.repeat?.received)) ??
  perhaps(member(fabricAt(fabric), ['repeat', 'vertical'], fabric.repeat?.vertical))

/** One cut: as long as needed, or lengthened for its repeat as the workroom does it. */
function oneCut(at: Place, job: JobHead, { as, needed, finished }: ClothOrder, repeat: Known<Length> | undefined) {
  const name = `${at}#${as}-cut-length`
  if (!repeat) {
    const cut = cutAsNeeded(name, needed)
    return { cut, working: [cut] }
  }
  const ofWhole = choiceOf(job, 'repeatOf') === 'finished length' ? finished : needed
  const repeats = repeatsIn(`${at}#${as}-repeats`, ofWhole, repeat)
  const isQuick = choiceOf(job, 'repeatBy') === 'one repeat a cut'
  const cut = isQuick ? cutAndRepeat(name, needed, repeat) : cutOfRepeats(name, repeats, repeat)
  const rest = restOfCut(`${at}#${as}-rest-of-cut`, cut, needed)
  return { cut, rest, working: [...(isQuick ? [] : [repeats]), cut, rest] }
}

/** Counts one cloth of a treatment. */
export function counted(at: Place, job: JobHead, order: ClothOrder): Counted {
  const { as, fabric, panels, needed } = order
  const { each, all, working: ofWidths } = widths(at, job, order)
  const cuts = cutsFor(`${at}#${as}-cuts`, all)
  const repeat = repeatOf(fabric)
  const { cut, rest, working: ofCut } = oneCut(at, job, order, repeat)
  const together = cutsTogether(`${at}#${as}-cuts-together`, cut, cuts)
  const halfDrop =
    repeat && rest && fabric.repeat?.match === 'half drop'
      ? halfDropExtra(`${at}#${as}-half-drop`, choiceOf(job, 'halfDrop'), { cuts, rest, repeat })
      : undefined
  const cloth = clothNeeded(`${at}#${as}-cloth`, together, halfDrop)
  return {
    cloth: {
      as,
      fabric: fabric.id,
      panels: panels.map((panel, n) => ({ ...panel, widths: each[n] as Reckoning })),
      widths: all,
      cuts,
      needed,
      cut,
      ...(rest ? { rest } : {}),
      ...(halfDrop ? { halfDrop } : {}),
      cloth,
    },
    working: [...ofWidths, cuts, ...ofCut, together, ...(halfDrop ? [halfDrop] : []), cloth],
  }
}

/** What each cloth of a panel weighs; undefined when one has no weight. */
export function weights(at: Place, { panel }: PanelCut, orders: readonly ClothOrder[]): readonly Reckoning[] | undefined {
  const each = orders.map(({ as, fabric, panels, needed }) => {
    const read = fabric.weight === undefined ? undefined : readQuantity(fabric.weight, 'arealWeight')
    const width = panels.find((one) => one.panel === panel)?.cutWidth
    return read?.ok && width ? clothWeight(`${panelAt(at, panel)}#${as}-weight`, number(read.value), width, needed) : undefined
  })
  return each.every((one) => one !== undefined) ? each : undefined
}
