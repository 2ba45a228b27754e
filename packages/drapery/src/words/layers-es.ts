import type { Words } from '@evenhem/plugin'
import type { layerWords } from './layers.ts'
import { one } from './sentence.ts'

/** Palabras de los dobladillos que cuelgan uno detrás de otro. */
export const layerWordsEs: Words & Readonly<Record<keyof typeof layerWords, { readonly says: string; readonly help?: string }>> =
  {
    'drapery/along-the-walls': one('de extremo a extremo por las paredes'),
    'drapery/hem-above': one('dobladillo sobre el de delante'),
    'drapery/hem-in-front': one('dobladillo de delante'),
    'drapery/layer-hems': one(
      'El dobladillo de esta capa queda {way, select, level {a la misma altura que} lower {{above} más bajo que} other {{above} más alto que}} el de delante.',
    ),
    'drapery/layer-hems.warn': one(
      'El dobladillo de esta capa queda {way, select, level {a la misma altura que} lower {{above} más bajo que} other {{above} más alto que}} el de delante; lo usual es de {least} a {most} más alto.',
      'Un dobladillo que no queda más alto asoma bajo la cortina; uno mucho más alto se ve a contraluz. Los ganchos corrigen un poco; para más, consulte al taller antes de colgar.',
    ),
    'drapery/layer-hems.unknown': one('Aún no se sabe si el dobladillo de esta capa queda detrás del de delante.'),
  }
