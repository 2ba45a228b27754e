import { type Bounds, type Box, boxOf, type Frame, holds } from '../space.ts'

/** `{ clip }` for what leaves the drawing; nothing for what lies inside. */
export const clipOf = (bounds: Bounds | undefined, frame: Frame, within: Box): { readonly clip?: Box } =>
  bounds === undefined || holds(within, boxOf(frame, bounds)) ? {} : { clip: within }
