import type { Layer, Mark } from './marks.ts'

const toPutOnTheWall: ReadonlySet<Mark['kind']> = new Set(['cross', 'height', 'dimension', 'detail'])
const ofMarking: ReadonlySet<string> = new Set(['mark', 'dimension', 'centre'])
const isMarking = (mark: Mark): boolean => toPutOnTheWall.has(mark.kind) || ('role' in mark && ofMarking.has(mark.role))

/** The layers of a window where nothing may be marked yet: its marks sheet shows the wall, and nothing that a hand could pencil on it. */
export const closedMarks = (layers: readonly Layer[]): readonly Layer[] =>
  layers.map((layer) => (layer.view === 'marks' ? { ...layer, marks: layer.marks.filter((mark) => !isMarking(mark)) } : layer))
