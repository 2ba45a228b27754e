import { html, type TemplateResult } from 'lit'
import { pointBy, pointsIn } from '../data/points.ts'
import type { Sheet } from '../data/sheet.ts'
import type { SitePhoto } from '../data/site-photos.ts'
import type { SiteTools } from '../data/tools.ts'
import type { Way } from '../data/way.ts'
import './ladder-view.ts'
import './pad-view.ts'
import './photo-view.ts'
import './point-view.ts'

/** What a view of the whole page is given. */
export interface Given {
  readonly sheet: Sheet
  readonly photos: readonly SitePhoto[]
  readonly tools: SiteTools
  readonly back: () => void
}

/** What stands in the place of the sheet: the ladder, the pad, a photo or a point to mend; undefined: the sheet itself. */
export function wholePage({ view, over }: Way, { sheet, photos, tools, back }: Given): TemplateResult | undefined {
  if (view === 'ladder') return html`<ladder-view .sheet=${sheet} @go-back=${back}></ladder-view>`
  if (over.is === 'pad') return html`<pad-view .sheet=${sheet} .at=${over.at} .tools=${tools} @go-back=${back}></pad-view>`
  if (over.is === 'photo') {
    const photo = photos.find(({ hash }) => hash === over.hash)
    return html`<photo-view .sheet=${sheet} .photo=${photo} .tools=${tools} @go-back=${back}></photo-view>`
  }
  if (over.is !== 'point') return undefined
  const point = pointBy(over.id, pointsIn(sheet.plan), sheet.place)
  return html`<point-view .sheet=${sheet} .point=${point} .photos=${photos} .tools=${tools} @go-back=${back}></point-view>`
}
