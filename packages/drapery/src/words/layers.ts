import type { Words } from '@evenhem/plugin'
import { one } from './sentence.ts'

/** Words of hems that hang one behind the other. */
export const layerWords = {
  'drapery/along-the-walls': one('end to end along the walls'),
  'drapery/hem-above': one('hem above the one in front'),
  'drapery/hem-in-front': one('hem in front'),
  'drapery/layer-hems': one(
    'The hem of this layer is {way, select, level {level with} lower {{above} lower than} other {{above} higher than}} the one in front of it.',
  ),
  'drapery/layer-hems.warn': one(
    'The hem of this layer is {way, select, level {level with} lower {{above} lower than} other {{above} higher than}} the one in front of it; {least} to {most} higher is usual.',
    'A hem that is not higher shows below the drapery, one that is much higher shows in the light. Pins take up a little; ask the workroom about more before it is hung.',
  ),
  'drapery/layer-hems.unknown': one('Not known yet whether the hem of this layer stays behind the one in front.'),
} satisfies Words
